package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Base64;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.print.PrintOptions;

/** The whole way of an officer without a mouse: describe, advise, try a change, print. */
@Tag("ci")
class KeyboardJourneyTest extends OnThePage {
    @BeforeEach
    void freshPage() {
        browser.size(1280, 1000);
        browser.show(server, "describe", "bench-stainless");
    }

    private static void step(String name) {
        for (int i = 0;
                i < 60 && !browser.driver().switchTo().activeElement().getText().startsWith(name);
                i++) {
            browser.press(Keys.TAB);
        }
        browser.press(Keys.ENTER);
        browser.untilText("#step", name);
    }

    /** Manganese, respirable: 12 mg/m3 against the EH40/2005 limit of 0.05 mg/m3 (8 h) needs 12 / 0.05 = 240. */
    @Test
    void describeAdviseTryPrint() throws IOException {
        step("What was measured");
        browser.tabTo("[data-path='exposures.2.twa'] input.amount");
        browser.typeOver("12");
        browser.untilText("#heard", "240 (manganese, respirable)");
        browser.tabTo(".bar .press");
        browser.press(Keys.ENTER);
        browser.until(() -> sheet().contains("factor 240 (manganese, respirable)"), "the sheet");
        assertEquals("Advice", browser.driver().switchTo().activeElement().getText(), "the focus goes with the reader");
        browser.tabTo("#advice .why > summary");
        browser.press(Keys.ENTER);
        browser.tabTo("#advice details.sentence > summary");
        browser.press(Keys.ENTER);
        browser.untilText("#advice .rests", "Clause");

        String paper = print("advice", 1);
        assertTrue(paper.contains("240"), paper);
        assertTrue(paper.contains("Local codes and a licensed or competent person decide."), paper);
        assertFalse(paper.contains("Try a change"), "the areas are not printed");

        browser.tabTo("nav a[href='#try']");
        browser.press(Keys.ENTER);
        browser.tabTo("#what");
        browser.press("manganese");
        browser.press(Keys.TAB, Keys.ENTER);
        browser.tabTo("#try [data-path='exposures.2.twa'] input.amount");
        browser.typeOver("0.12");
        browser.untilText("#try .both", "240 (manganese, respirable)");
        browser.untilText("#try .both", "20 (welding fume)");
        String tried = print("try", 0);
        assertTrue(tried.contains("With the change") && tried.contains("240"), "what is on view is printed: " + tried);
    }

    private static String sheet() {
        return (String) browser.run("return document.querySelector('.sheet')?.shadowRoot?.textContent ?? ''");
    }

    @Test
    void theAnnexIsPrintedWhenItIsOnView() throws IOException {
        browser.run("location.hash = 'advice'");
        browser.find("#annex");
        browser.run("document.querySelector('#annex').click()");
        browser.until(
                () -> (Boolean) browser.run(
                        "return Boolean(document.querySelector('.sheet')?.shadowRoot?.querySelector('.annex'))"),
                "annex");
        String paper = print("advice-annex", 0);
        assertTrue(paper.length() > 6000 && paper.contains("Not suitable"), paper);
    }

    @Test
    void theSameLevelCanBeWrittenInAnotherUnit() {
        step("What was measured");
        browser.tabTo("[data-path='exposures.2.twa'] .same button");
        browser.press(Keys.ENTER);
        assertEquals(
                "120",
                browser.find("[data-path='exposures.2.twa'] input.amount").getDomProperty("value"));
        assertEquals(
                "ug/m3",
                browser.find("[data-path='exposures.2.twa'] select.unit").getDomProperty("value"));
        browser.untilText("#heard", "20 (welding fume)");
    }

    @Test
    void everyQuestionOfTheRuleBaseCanBeReached() {
        int questions = Library.shipped(() -> LocalDate.of(2026, 3, 2))
                .advisor("gb")
                .base()
                .book()
                .vocabulary()
                .questions()
                .size();
        long rows = 0;
        Number steps = (Number) browser.run("return document.querySelectorAll('.steps button').length");
        for (int i = 0; i < steps.intValue(); i++) {
            browser.run(
                    "document.querySelectorAll('.steps button')[arguments[0]].click();"
                            + "document.querySelectorAll('.asking details.more').forEach(d => { d.open = true; })",
                    i);
            browser.until(
                    () -> (Boolean)
                            browser.run(
                                    "return [...document.querySelectorAll('.asking > details.more')].every(d => d.childElementCount > 1)"),
                    "opened");
            rows += ((Number) browser.run(
                            "return document.querySelectorAll('.asking .row[data-path]:not(.level)').length"))
                    .longValue();
        }
        assertEquals(questions, rows);
    }

    /** What is on view is printed whole, on few sheets of A4, with the closing words and without the controls. */
    @ParameterizedTest
    @CsvSource({"try, .moves, 1", "trail, .sentence, 16", "drill, #round, 1", "describe, .asking .row, 1"})
    void everyPlaceIsPrintedOnFewSheets(String place, String there, int most) throws IOException {
        browser.run("location.hash = arguments[0]", place);
        if (place.equals("try")) {
            browser.push(".levers button", "");
        }
        browser.find("#" + place + " " + there);
        String paper = print(place, 0);
        assertTrue(pages <= most, place + " is " + pages + " pages");
        assertTrue(paper.contains("Local codes and a licensed or competent person decide."), paper);
        assertTrue(!place.equals("describe") || paper.contains("no extraction"), "the answers are printed: " + paper);
        assertFalse(paper.contains("Get advice") || paper.contains("Begin alone"), "no controls: " + paper);
    }

    private static int pages;

    private static String print(String name, int expected) throws IOException {
        byte[] pdf = Base64.getDecoder()
                .decode(browser.driver().print(new PrintOptions()).getContent());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Files.write(Path.of("target", "screens", "printed-" + name + ".pdf"), pdf);
            pages = document.getNumberOfPages();
            if (expected > 0) {
                assertEquals(expected, document.getNumberOfPages(), name);
            }
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
