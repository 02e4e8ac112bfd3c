package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
@Tag("ci")
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
        browser.show(server, "upkeep", "");
        browser.find(".scan");
    }

    private static void scan(String id) {
        browser.run("document.querySelector('.scan').focus()");
        browser.press(id + Keys.ENTER);
        browser.untilText(".item-head", id);
    }

    private static void named() {
        browser.run("document.querySelector('.who input').focus()");
        browser.press("Sanna Teller" + Keys.ENTER);
        browser.untilText(".who .by", "Sanna Teller");
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void noViolationInEitherThemeWithEverythingOpen(String theme) {
        browser.prefers(theme, true);
        named();
        scan("U-014");
        browser.push(".three button", "Check before use");
        browser.run("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        browser.run(
                "const s = document.querySelector('#register select'); s.value = 'unit'; s.dispatchEvent(new Event('change'))");
        browser.screen("upkeep-" + theme);
        assertEquals(List.of(), browser.violations());
    }

    @Test
    void noItemIsChosenForAnybodyAndAnUnknownOneIsSaid() {
        assertEquals(
                0,
                browser.driver()
                        .findElements(By.cssSelector(".three, .item-head"))
                        .size());
        browser.run("document.querySelector('.scan').focus()");
        browser.press("U-999" + Keys.ENTER);
        browser.untilText(".scan-box .fault", "not in the register");
    }

    @Test
    void anOverdueExaminationIsWrittenByKeyboardAlone() {
        browser.tabTo(".who input");
        browser.press("Sanna Teller" + Keys.ENTER);
        browser.tabTo(".scan");
        browser.press("U-014" + Keys.ENTER);
        browser.untilText(".standing", "DO NOT USE");
        browser.tabTo(".three button.examination");
        browser.press(Keys.ENTER);
        browser.tabTo(".work button[type=submit]");
        browser.press(Keys.ENTER);
        browser.untilText(".work .wrong .fault", "Fill this in");
        browser.tabTo(".work input[type=radio][value=passed]");
        browser.press(Keys.SPACE);
        browser.tabTo(".work textarea");
        browser.press("good <b>as new</b>");
        browser.tabTo(".work button[type=submit]");
        browser.press(Keys.ENTER);
        browser.untilText(".done", "is written: passed");
        browser.untilText(".standing", "OPEN FOR USE");
        assertEquals(
                0,
                browser.driver()
                        .findElements(By.cssSelector("#upkeep b b, #upkeep img"))
                        .size());
    }

    private static void fill(String name, String words) {
        browser.run(
                "const row = document.querySelector(`.work [data-name=\"${arguments[0]}\"]`); row.closest('details')?.setAttribute('open', '');"
                        + "row.querySelector('input, textarea, select').focus();",
                name);
        browser.press(words);
    }

    /** INDG479: 2000 for full face masks, so 140 fails though the tester ticked passed; the sentence of the code is told. */
    @Test
    void aFitTestIsWrittenFromWhatIsDueAndJudgedByTheCode() {
        named();
        scan("W-07");
        browser.push(".three button", "Fit test");
        assertEquals(
                "half mask, size M",
                browser.find(".work [data-name='model'] input").getDomProperty("value"));
        browser.run("document.querySelector('.work input[type=radio][value=passed]').click()");
        fill("method", "quantitative, particle counter");
        fill("fit-factor", "140");
        browser.push(".work button", "Save entry");
        browser.untilText(".work .wrong", "each of 7 is judged alone");
        fill("exercises", "150, 140, 160, 170, 180, 190, 90");
        browser.push(".work button", "Save entry");
        browser.untilText(".done", "is written: failed");
        browser.untilText(".done", "100");
    }

    @Test
    void whatWasTypedOutlivesAReload() {
        named();
        scan("U-014");
        browser.push(".three button", "Examination");
        fill("condition", "scratched");
        browser.driver().navigate().refresh();
        browser.untilText(".who .by", "Sanna Teller");
        scan("U-014");
        browser.push(".three button", "Examination");
        assertEquals(
                "scratched",
                browser.find(".work [data-name='condition'] textarea").getDomProperty("value"));
    }

    @Test
    void anItemIsRegisteredAndFoundInTheList() {
        named();
        browser.run(
                "document.querySelector('#register').open = true; const s = document.querySelector('#register select');"
                        + "s.value = 'mask'; s.dispatchEvent(new Event('change'))");
        browser.run("document.querySelector('#register [data-name=\"id\"] input').focus()");
        browser.press("M-77");
        browser.run("document.querySelector('#register [data-name=\"model\"] input').focus()");
        browser.press("full mask, size L");
        browser.push("#register button", "Register it");
        browser.untilText(".item-head", "M-77");
        browser.run(
                "document.querySelector('#items').open = true; document.querySelector('#items input[type=search]').focus()");
        browser.press("size l");
        browser.untilText("#items [role=status]", "1 of");
        browser.untilText("#items .items button", "M-77");
    }

    @Test
    void withoutAStoreItSaysHowToOpenOne() {
        browser.show(bare, "upkeep", "");
        browser.untilText("#upkeep", "fumewarden serve --store yard.db");
        assertEquals(List.of(), browser.violations());
    }
}
