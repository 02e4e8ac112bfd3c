package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** The place Upkeep by keyboard alone, in both themes, at phone width, and without a store. */
class UpkeepPlaceTest {
    @TempDir
    static Path folder;

    private static WebServer server;
    private static WebServer bare;
    private static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        Library library = Library.shipped(() -> Yard.TODAY);
        Workshop yard = Yard.in(folder);
        Yard.more(yard);
        server = WebServer.start(0, library, Optional.of(yard), Duration.ofSeconds(60));
        bare = WebServer.start(0, library, Duration.ofSeconds(60));
        browser = Browser.shared();
    }

    @AfterAll
    static void stop() {
        server.close();
        bare.close();
    }

    @BeforeEach
    void fresh() {
        browser.size(1280, 1000);
        browser.open(server.address().toString());
        browser.run("localStorage.clear()");
        show(server);
        browser.untilText("#upkeep", "U-014");
    }

    private static void show(WebServer shown) {
        browser.open(shown.address() + "#upkeep");
        browser.driver().navigate().refresh();
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    @Tag("ci")
    void noViolationInEitherTheme(String theme) {
        browser.prefers(theme, true);
        browser.run("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        browser.run("[...document.querySelectorAll('.hang button')].pop().click()");
        browser.find(".entries li");
        browser.screen("upkeep-" + theme);
        assertEquals(List.of(), browser.violations());
    }

    @Test
    void aPhoneNeverScrollsSideways() {
        browser.size(360, 800);
        browser.screen("upkeep-360");
        assertTrue(((Number) browser.run("return document.documentElement.scrollWidth")).intValue() <= 360);
    }

    @Test
    void anOwedExaminationIsLoggedAndLookedUpByKeyboardAlone() {
        assertTrue(browser.text(".board .hang").contains("18 day(s) over"), browser.text(".board .hang"));
        browser.tabTo(".hang.overdue button");
        browser.press(Keys.ENTER);
        browser.tabTo("#upkeep form .row:nth-child(4) input");
        browser.press("Sanna Teller");
        browser.tabTo("#upkeep form button[type=submit]");
        browser.press(Keys.ENTER);
        browser.untilText("#upkeep form .wrong .fault", "is missing");
        browser.tabTo("#upkeep form input[type=radio][value=passed]");
        browser.press(Keys.SPACE);
        browser.tabTo("#upkeep form textarea");
        browser.press("good <b>as new</b>");
        browser.tabTo("#upkeep form button[type=submit]");
        browser.press(Keys.ENTER);
        browser.untilText(".notice", "is written: passed");
        browser.until(
                () -> browser.driver()
                        .findElements(By.cssSelector(".hang.overdue"))
                        .isEmpty(),
                "nothing overdue");
        browser.run("[...document.querySelectorAll('#upkeep section button')].pop().focus()");
        browser.press(Keys.ENTER);
        browser.untilText(".entries", "Registered");
        assertEquals(
                0,
                browser.driver()
                        .findElements(By.cssSelector("#upkeep b b, #upkeep img"))
                        .size());
    }

    private static void fill(String label, String words) {
        browser.run(
                "const row = [...document.querySelectorAll('#upkeep form .row')].find(r => r.querySelector('.ask').textContent.startsWith(arguments[0]));"
                        + "row.querySelector('input, textarea, select').focus();",
                label);
        browser.press(words);
    }

    /** INDG479: 2000 for full face masks, so 140 fails though the tester ticked passed; the sentence of the code is told. */
    @Test
    @Tag("ci")
    void aFitTestIsLoggedFromWhatIsOwedAndJudgedByTheCode() {
        browser.run("[...document.querySelectorAll('.hang')].find(h => h.textContent.includes('W-07')"
                + " && h.textContent.toLowerCase().includes('fit test')).querySelector('button').focus()");
        browser.press(Keys.ENTER);
        browser.screen("upkeep-fit-test");
        fill("Done by", "Sanna Teller");
        browser.run("document.querySelector('#upkeep form input[type=radio][value=passed]').focus()");
        browser.press(Keys.SPACE);
        fill("Method, with", "quantitative, particle counter");
        fill("Fit factor", "140");
        browser.tabTo("#upkeep form button[type=submit]");
        browser.press(Keys.ENTER);
        browser.untilText("#upkeep form .wrong .fault", "is not given");
        fill("Kind of mask", "full");
        browser.tabTo("#upkeep form button[type=submit]");
        browser.press(Keys.ENTER);
        browser.untilText(".notice", "is written: failed");
        browser.untilText(".notice", "2000");
        assertEquals(List.of(), browser.violations());
    }

    @Test
    void whatWasTypedOutlivesAReload() {
        browser.tabTo("#upkeep form .row:nth-child(4) input");
        browser.press("Sanna T");
        show(server);
        browser.untilText("#upkeep", "U-014");
        assertEquals(
                "Sanna T", browser.find("#upkeep form .row:nth-child(4) input").getDomProperty("value"));
    }

    @Test
    @Tag("ci")
    void withoutAStoreItSaysHowToOpenOne() {
        show(bare);
        browser.untilText("#upkeep", "fumewarden serve --store yard.db");
        assertEquals(List.of(), browser.violations());
    }
}
