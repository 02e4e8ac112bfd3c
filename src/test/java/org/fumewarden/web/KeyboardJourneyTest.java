package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Base64;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.print.PrintOptions;

/** The whole way of an officer without a mouse: describe, advise, what if, print. */
class KeyboardJourneyTest {
    private static WebServer server;
    private static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        server = WebServer.start(0, Library.shipped(() -> LocalDate.of(2026, 3, 2)), Duration.ofSeconds(60));
        browser = Browser.shared();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @BeforeEach
    void freshPage() {
        browser.size(1280, 1000);
        browser.open(server.address().toString());
        browser.run("localStorage.clear()");
        browser.driver().navigate().refresh();
        browser.untilText(".answer-now", "TH3 P");
    }

    /** Manganese, respirable: 12 mg/m3 against the EH40/2005 limit of 0.05 mg/m3 (8 h) needs 12 / 0.05 = 240. */
    @Test
    void describeAdviseWhatIfPrint() throws IOException {
        browser.tabTo("[data-path='exposures.2.twa'] input.amount");
        browser.typeOver("12");
        browser.untilText(".answer-now", "240 (manganese, respirable)");

        browser.tabTo("nav a[href='#advice']");
        browser.press(Keys.ENTER);
        browser.untilText("#advice", "Manganese, respirable needs a protection factor of at least 240");
        assertEquals("Advice", browser.driver().switchTo().activeElement().getText(), "the focus goes with the reader");

        browser.tabTo("#advice details.sentence > summary");
        browser.press(Keys.ENTER);
        browser.untilText("#advice .rests", "Clause");

        String paper = print();
        assertTrue(paper.contains("240"), paper);
        assertTrue(paper.contains("Local codes and a licensed or competent person decide."), paper);
        assertFalse(paper.contains("What if"), "the places are not printed");

        browser.tabTo("nav a[href='#what-if']");
        browser.press(Keys.ENTER);
        browser.tabTo("#what");
        browser.press("manganese");
        browser.press(Keys.TAB, Keys.ENTER);
        browser.tabTo("#what-if [data-path='exposures.2.twa'] input.amount");
        browser.typeOver("0.12");
        browser.untilText("#what-if .both", "20 for welding-fume");
        browser.untilText("#what-if .pair", "TH3 P");
        assertTrue(browser.text("#what-if .both").contains("240 for manganese-respirable"), "both sides are shown");
        assertTrue(print().contains("240"), "on paper stands the advice, whatever place is open");
    }

    @Test
    @Tag("ci")
    void aSliderMovesByArrowKeysAndSaysItsValue() {
        browser.tabTo("nav a[href='#what-if']");
        browser.press(Keys.ENTER);
        browser.tabTo("#vary");
        browser.press("manganese");
        browser.press(Keys.TAB, Keys.ENTER);
        browser.find("#slide");
        browser.tabTo("#slide");
        String before = browser.find("#slide").getDomAttribute("aria-valuetext");
        browser.press(Keys.ARROW_RIGHT);
        String after = browser.find("#slide").getDomAttribute("aria-valuetext");
        assertTrue(number(after) > number(before), before + " to " + after);
        assertTrue(browser.text(".tipping").contains("2 mg/m3"), "TH3 with 40 holds up to 40 x 0.05 = 2 mg/m3");
    }

    @Test
    @Tag("ci")
    void aWrongValueIsNamedBesideItsField() {
        browser.tabTo("[data-path='exposures.2.twa'] input.amount");
        browser.typeOver("a lot");
        browser.untilText("[data-path='exposures.2.twa'] .fault", "must be a concentration");
        assertEquals(
                "a lot",
                browser.find("[data-path='exposures.2.twa'] input.amount").getDomProperty("value"));
    }

    @Test
    @Tag("ci")
    void theSameLevelCanBeWrittenInAnotherUnit() {
        browser.tabTo("[data-path='exposures.2.twa'] .same button");
        browser.press(Keys.ENTER);
        assertEquals(
                "120",
                browser.find("[data-path='exposures.2.twa'] input.amount").getDomProperty("value"));
        assertEquals(
                "ug/m3",
                browser.find("[data-path='exposures.2.twa'] select.unit").getDomProperty("value"));
        browser.untilText(".answer-now", "20 (welding fume)");
    }

    @Test
    void everyQuestionOfTheRuleBaseCanBeShown() {
        int questions = Library.shipped(() -> LocalDate.of(2026, 3, 2))
                .advisor("gb")
                .base()
                .book()
                .vocabulary()
                .questions()
                .size();
        String shown =
                "return [...document.querySelectorAll('#describe fieldset[data-group] .row')].filter(r => r.offsetParent).length";
        long some = (Long) browser.run(shown);
        browser.run("[...document.querySelectorAll('#describe input[type=checkbox]')].pop().click()");
        assertEquals((long) questions, browser.run(shown));
        assertTrue(some < questions, "only what matters is shown at first");
    }

    @Test
    @Tag("ci")
    void germanReachesEveryHeading() {
        browser.tabTo("#language");
        browser.press("Deutsch");
        browser.untilText("nav", "Beschreiben");
        browser.untilText("#describe", "Welches Verfahren wird benutzt?");
        assertEquals("de", browser.run("return document.documentElement.lang"));
        browser.untilText(".answer-now", "Geforderter Schutzfaktor");
    }

    @Test
    @Tag("ci")
    void theTrailIsSearchedByClauseAndReplayedUnchanged() {
        browser.tabTo("nav a[href='#trail']");
        browser.press(Keys.ENTER);
        browser.tabTo("#sought");
        browser.press("hsg53 para 65");
        browser.untilText("#trail", "unpowered tight mask is for 60 min at most");
        browser.tabTo("#trail .boxed button");
        browser.press(Keys.ENTER);
        browser.untilText("#trail .boxed", "Replayed, unchanged");
    }

    private static double number(String text) {
        return Double.parseDouble(text.split(" ")[0]);
    }

    private static String print() throws IOException {
        byte[] pdf = Base64.getDecoder()
                .decode(browser.driver().print(new PrintOptions()).getContent());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Files.write(Path.of("target", "screens", "printed.pdf"), pdf);
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
