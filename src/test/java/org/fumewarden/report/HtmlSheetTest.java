package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.lang3.StringUtils;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Suitability;
import org.fumewarden.report.answer.AdviceSheet;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.HtmlForm;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

/** The sheet as a file: it says what the advice says, needs nothing else, and no text becomes markup. */
class HtmlSheetTest {
    private static final int TOLERANCE_LINE = 0x2f4f8a;
    private static final Path TOUR = Path.of("scenarios/tours/stainless-brackets.yaml");

    private static Bench bench(String text) {
        return Bench.ofText("task", text, Advisor::shipped);
    }

    private static String tour() throws IOException {
        return Files.readString(TOUR);
    }

    private static String sheet(Bench bench, String language) {
        return HtmlForm.write(AdviceSheet.of(bench, bench.advise(), Words.in(language), true));
    }

    /** Well-formed XML has no element left open and no stray sign: the strictest reading of a page. */
    private static Document parsed(String html) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
    }

    private static String words(String html) throws Exception {
        return parsed(html)
                .getElementsByTagName("body")
                .item(0)
                .getTextContent()
                .replaceAll("[\\s\u00a0]+", " ");
    }

    @Test
    void everyClassThatIsNotSuitableStandsOnceWithTheLettersOfAllItsReasons() throws Exception {
        Advice advice = bench(tour()).advise();
        String words = words(sheet(bench(tour()), "en"));
        String part = words.substring(words.indexOf("Not suitable, and why"), words.indexOf("Checks and records"));
        for (Respirator respirator : advice.with(Suitability.BARRED)) {
            assertEquals(1, StringUtils.countMatches(part, respirator.name()), respirator.name());
            String row = part.substring(
                    part.indexOf(respirator.name()) + respirator.name().length());
            for (Reason reason : respirator.reasons()) {
                assertEquals(1, StringUtils.countMatches(part, reason.says()), reason.says());
                String letter = part.substring(part.indexOf(reason.says()) - 3).substring(0, 1);
                assertTrue(row.substring(0, 20).contains(letter), respirator.name() + " " + reason.says());
                assertTrue(words.contains(reason.rule()), reason.rule());
                assertTrue(StringUtils.containsIgnoreCase(words, reason.clause()), reason.clause());
            }
        }
    }

    @Test
    void theAnswerComesBeforeTheReasons() throws Exception {
        String words = words(sheet(bench(tour()), "en"));
        List<String> order = List.of(
                "All questions answered",
                "TH3 P",
                "Set up extraction",
                "Ratio",
                "Keep up",
                "The blower stops",
                "Issued by",
                Advice.CLOSING,
                "Why: what is in the air",
                "Not suitable",
                "Notes");
        for (int i = 1; i < order.size(); i++) {
            assertTrue(words.indexOf(order.get(i - 1)) < words.indexOf(order.get(i)), order.get(i) + ": " + words);
        }
    }

    @Test
    void whatWasNotComparedWithItsTextIsCountedOnThePageAndListedBehindIt() throws Exception {
        Advice advice = bench(tour()).advise();
        String words = words(sheet(bench(tour()), "en"));
        long unseen = advice.compareBeforeSigning().size() - advice.disputed();
        assertEquals(unseen == 0, words.contains("was compared with a published text."), words);
        advice.turning().forEach(v -> assertTrue(words.contains(v.document() + ", " + v.place()), v.value()));
    }

    @Test
    void itNeedsNoScriptAndNoNetwork() throws Exception {
        String html = sheet(bench(tour()), "en");
        Document page = parsed(html);
        for (String tag : List.of("script", "link", "img", "iframe", "object", "form")) {
            assertEquals(0, page.getElementsByTagName(tag).getLength(), tag);
        }
        assertFalse(Pattern.compile("url\\(|@import|href=|src=").matcher(html).find());
    }

    @Test
    void textOfTheFileNeverBecomesMarkup() throws Exception {
        String hostile = "</title><script>alert(1)</script><b a=\"'>&amp; \\u0001 ]]>";
        String text = tour().replaceFirst(
                        "title: .*", Matcher.quoteReplacement("title: '" + hostile.replace("'", "''") + "'"))
                .replace("shielding gas with", "<script>alert(2)</script>");
        Document page = parsed(sheet(bench(text), "en"));
        assertEquals(0, page.getElementsByTagName("script").getLength());
        assertEquals(0, page.getElementsByTagName("b").getLength());
        assertTrue(
                page.getElementsByTagName("h1").item(0).getTextContent().contains("</title><script>alert(1)</script>"));
    }

    @Test
    void openQuestionsAndClosedGatesStandInTheState() throws Exception {
        String open = tour().replace("oxygen: 20.9 %", "oxygen: unknown");
        assertTrue(words(sheet(bench(open), "en")).contains("Do not start yet. Answer the open questions first"));
        String closed = tour().replace("immediately-dangerous: false", "immediately-dangerous: true");
        Advice advice = bench(closed).advise();
        String words = words(sheet(bench(closed), "en"));
        advice.stops().forEach(s -> assertTrue(words.contains(s.says()), s.says()));
    }

    @Test
    void thePdfHoldsTheSameWordsTaggedForReaders() throws Exception {
        String title = "Łódź \u2265 \u03a9 stainless, bench";
        Bench bench = bench(tour().replaceFirst("title: .*", "title: " + title));
        byte[] pdf = PdfSheet.write(sheet(bench, "de"));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
            assertTrue(text.contains(title), text);
            assertTrue(text.contains("Mindestens erforderlicher Schutzfaktor"), text);
            assertTrue(text.contains("GB-EXCLUSION-020"), text);
            assertTrue(text.contains("Person entscheiden."), text);
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked(), "tagged");
            assertEquals("de", document.getDocumentCatalog().getLanguage());
        }
    }

    /** Factors by hand from the comment of the tour: 0.04674 / 0.01 and 0.011 / 0.01. */
    @Test
    void theSamplesStandInATableByStatisticAndInAPlotThatWordsDescribe() throws Exception {
        Document page = parsed(sheet(bench(tour()), "en"));
        assertEquals(3, page.getElementsByTagName("svg").getLength(), "our mark, the plot and the code of the hash");
        assertTrue(page.getElementsByTagName("desc").item(0).getTextContent().contains("limit 0.005 mg/m3"));
        String words = words(sheet(bench(tour()), "en"));
        assertTrue(words.contains("with an assumed spread (governs)0.047 9.4"), words);
        assertTrue(words.contains("highest sample0.011 2.2"), words);
        String german = words(sheet(bench(tour()), "de"));
        assertTrue(german.contains("mit angenommener Streuung (maßgebend)"), german);
        String bare = sheet(bench(tour().replaceAll("samples: \\[.*?\\], averaging: PT8H", "twa: 0.004 mg/m3")), "en");
        assertEquals(2, parsed(bare).getElementsByTagName("svg").getLength());
    }

    @Test
    void thePlotIsDrawnInThePdf() throws Exception {
        try (PDDocument document = Loader.loadPDF(PdfSheet.write(sheet(bench(tour()), "en")))) {
            PDFRenderer renderer = new PDFRenderer(document);
            boolean drawn = false;
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage picture = renderer.renderImage(page);
                int[] pixels =
                        picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
                drawn |= IntStream.of(pixels).anyMatch(p -> (p & 0xffffff) == TOLERANCE_LINE);
            }
            assertTrue(drawn, "no page shows the tolerance line");
        }
    }

    @Test
    void everyLanguageHasTheSameKeysWithTheSameGaps() {
        Map<String, String> english = Words.in("en").all();
        Map<String, String> german = Words.in("de").all();
        TreeSet<String> untranslated = new TreeSet<>(english.keySet());
        untranslated.removeAll(german.keySet());
        assertEquals(new TreeSet<>(), untranslated);
        english.forEach((key, text) -> assertEquals(gaps(text), gaps(german.get(key)), key));
    }

    @Test
    void germanIsNotEnglishUnderAnotherName() {
        Map<String, String> english = Words.in("en").all();
        Map<String, String> german = Words.in("de").all();
        long same = english.entrySet().stream()
                .filter(e -> e.getKey().startsWith("ui.") || e.getKey().startsWith("sheet."))
                .filter(e -> e.getValue().equals(german.get(e.getKey())))
                .count();
        assertTrue(same <= 3, same + " texts are the same in both languages");
    }

    @Test
    void theSheetOfACaseIsTheSameEachTime() throws IOException {
        assertEquals(sheet(bench(tour()), "de"), sheet(bench(tour()), "de-AT"));
    }

    private static TreeSet<String> gaps(String text) {
        TreeSet<String> gaps = new TreeSet<>();
        Matcher matcher = Pattern.compile("\\{\\d}").matcher(text);
        while (matcher.find()) {
            gaps.add(matcher.group());
        }
        return gaps;
    }
}
