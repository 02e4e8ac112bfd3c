package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.fumewarden.Extent;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Status;
import org.fumewarden.check.Scenario;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.report.answer.AdviceSheet;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.HtmlForm;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.report.sheet.TextForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever stops the work, whoever may not do it and whatever is open: one page, in every code and language. */
final class OnePageTest {
    /** "About 60 lines", with room for the longest sheets: a unit that must not be used beside what is worn instead. */
    private static final int LINES = 67;

    /** The smallest letter of the first page of the paper, in points: what is read at arm's length at a gate. */
    private static final double SMALLEST = 9;

    private static final Path BENCH = Path.of("scenarios/tours/stainless-brackets.yaml");
    private static final Map<String, Advice> ADVICE = new HashMap<>();

    private static final Map<String, Map<String, String>> KINDS = Map.of(
            "stop", Map.of("atmosphere.oxygen", "17.5 %"),
            "entry", Map.of("atmosphere.explosive", "true", "atmosphere.immediately-dangerous", "true"),
            "unfit",
                    Map.of(
                            "wearer.medically-cleared",
                            "false",
                            "wearer.trained",
                            "false",
                            "wearer.facial-hair",
                            "true"),
            "confined", Map.of("task.place", "confined-space", "task.vessel", "none", "task.ventilation", "none"),
            "lead", Map.of("task.process", "oxyfuel-cutting", "task.coating", "lead-paint", "task.place", "outdoors"),
            "rescue", Map.of("task.place", "confined-space", "task.purpose", "rescue"));

    private record Case(String name, Path file, Map<String, String> changes, Optional<String> code) {
        Bench bench() {
            return new Bench(file, changes, code, Optional.empty(), Advisor::shipped);
        }

        Advice advise() {
            return ADVICE.computeIfAbsent(name, n -> bench().advise());
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Case> kinds() {
        List<Case> cases = new ArrayList<>();
        for (String code : RuleFolder.at(Path.of("rules")).codes()) {
            KINDS.forEach((kind, changes) -> cases.add(new Case(kind + " " + code, BENCH, changes, Optional.of(code))));
        }
        return Extent.sample(cases, Case::name, Extent.of(12, Extent.ALL, Extent.ALL));
    }

    private static List<Case> tours() throws IOException {
        List<Case> tours = new ArrayList<>();
        for (Path tour : Scenario.files(Path.of("scenarios/tours"))) {
            tours.add(new Case(tour.toString(), tour, Map.of(), Optional.empty()));
        }
        return tours;
    }

    private static List<Case> cases() throws IOException {
        List<Case> stories = new ArrayList<>();
        for (Path story : Scenario.files(Path.of("scenarios"))) {
            stories.add(new Case(story.toString(), story, Map.of(), Optional.empty()));
        }
        List<Case> cases = new ArrayList<>(kinds());
        cases.addAll(Extent.sample(stories, Case::name, Extent.of(12, 60, Extent.ALL)));
        return cases;
    }

    private static Sheet sheet(Case of, Advice advice, String language) {
        return AdviceSheet.of(of.bench(), advice, Words.in(language), false);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void itIsOnePage(Case of) {
        Advice advice = of.advise();
        for (String language : Words.LANGUAGES) {
            List<String> lines =
                    TextForm.write(sheet(of, advice, language)).lines().toList();
            assertTrue(lines.size() <= LINES, of + " " + language + " has " + lines.size() + " lines");
            lines.forEach(l -> assertTrue(l.length() <= TextForm.WIDTH, of + ": " + l));
        }
    }

    /** In the gate a few of all; in the larger extent every tour and more of the others. */
    private static List<Case> onPaper() throws IOException {
        List<Case> all = new ArrayList<>(Extent.sample(tours(), Case::name, Extent.of(2, Extent.ALL, Extent.ALL)));
        all.addAll(Extent.sample(cases(), Case::name, Extent.of(2, 24, Extent.ALL)));
        return all;
    }

    @ParameterizedTest
    @MethodSource("onPaper")
    void itIsOneSheetOfPaper(Case of) throws IOException {
        Advice advice = of.advise();
        for (String language : Words.LANGUAGES) {
            byte[] pdf = PdfSheet.write(HtmlForm.write(sheet(of, advice, language)));
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertEquals(1, document.getNumberOfPages(), of + " " + language);
                assertEquals(
                        PDRectangle.A4.getWidth(),
                        document.getPage(0).getMediaBox().getWidth(),
                        1);
                assertEquals(
                        PDRectangle.A4.getHeight(),
                        document.getPage(0).getMediaBox().getHeight(),
                        1);
                Letters letters = new Letters();
                letters.getText(document);
                assertTrue(letters.smallest >= SMALLEST, of + " " + language + ": " + letters.smallest + letters.where);
                assertTrue(letters.read > 1000, of + " has hardly a letter");
            }
        }
    }

    /** Reads the size of each letter as it is printed, whatever style and scale came before. */
    private static final class Letters extends PDFTextStripper {
        private double smallest = Double.MAX_VALUE;
        private String where = "";
        private int read;

        @Override
        protected void processTextPosition(TextPosition letter) {
            double points = Math.round(letter.getTextMatrix().getScalingFactorY() * 100) / 100.0;
            read++;
            if (points < smallest) {
                smallest = points;
                where = " pt at '" + letter.getUnicode() + "', " + letter.getYDirAdj() + " from the top";
            }
            super.processTextPosition(letter);
        }
    }

    /** Alarms and daily duties are for people at work; who was exposed before the stop still needs help. */
    @Test
    void whereNobodyWorksNoRoutineIsTold() {
        for (Case of : kinds()) {
            Advice advice = of.advise();
            List<String> keys =
                    sheet(of, advice, "en").page().stream().map(Part::key).toList();
            boolean rescue = of.name().startsWith("rescue");
            assertEquals(rescue || advice.status() != Status.DO_NOT_ENTER, keys.contains("leave"), of + ": " + keys);
            if (rescue) {
                assertEquals(Status.DO_NOT_ENTER, advice.status(), of.name());
            }
            if (of.name().startsWith("stop")) {
                String text = TextForm.write(sheet(of, advice, "en")).replaceAll("\\s+", " ");
                assertTrue(text.contains("get medical help"), text);
                assertTrue(!text.contains("(wearer"), text);
            }
        }
    }
}
