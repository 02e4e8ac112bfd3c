package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** WCAG 2.2 AA as far as a machine can tell (axe-core 4.11), in both themes, forced colours, at phone width, at 200 % and 400 %. */
class AccessiblePageTest {
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

    @ParameterizedTest
    @CsvSource({
        "describe, light",
        "describe, dark",
        "advice, light",
        "advice, dark",
        "try, light",
        "try, dark",
        "trail, light",
        "trail, dark",
        "drill, light",
        "drill, dark"
    })
    void noPlaceOfThePageHasAViolation(String place, String theme) {
        browser.size(1280, 1000);
        browser.prefers(theme, true);
        show(place);
        browser.screen(place + "-" + theme);
        assertEquals(List.of(), browser.violations());
    }

    /** A phone, and 200 % and 400 % of a window of 1280 by 1024 (WCAG 2.2, 1.4.4 and 1.4.10). */
    @ParameterizedTest
    @CsvSource({
        "describe, 390, 844, 100",
        "advice, 390, 844, 100",
        "try, 390, 844, 100",
        "trail, 390, 844, 100",
        "drill, 390, 844, 100",
        "upkeep, 390, 844, 100",
        "describe, 1280, 1024, 200",
        "advice, 1280, 1024, 200",
        "try, 1280, 1024, 200",
        "upkeep, 1280, 1024, 200",
        "describe, 1280, 1024, 400",
        "advice, 1280, 1024, 400",
        "try, 1280, 1024, 400",
        "upkeep, 1280, 1024, 400"
    })
    @Tag("ci")
    void narrowPagesNeverScrollSideways(String place, int width, int height, int zoom) {
        browser.zoom(width, height, zoom);
        browser.prefers("light", true);
        show(place);
        browser.screen(place + "-" + width + "-" + zoom);
        Object wide = browser.run("return document.documentElement.scrollWidth");
        assertTrue(((Number) wide).intValue() <= width * 100 / zoom, place + " is " + wide + " wide");
    }

    @ParameterizedTest
    @ValueSource(strings = {"describe", "advice", "try", "upkeep"})
    @Tag("ci")
    void theStateIsToldInForcedColoursToo(String place) {
        browser.size(1280, 900);
        browser.forcedColours(true);
        show(place);
        browser.screen(place + "-forced");
        if (place.equals("describe") || place.equals("try")) {
            assertTrue(browser.text(".plate .word").contains("ANSWERED"));
            assertEquals(
                    "solid",
                    browser.run("return getComputedStyle(document.querySelector('.plate .word')).borderTopStyle"));
        }
        browser.forcedColours(false);
    }

    @Test
    void aMotionThatIsUnwelcomeIsLeftOut() {
        browser.size(1280, 1000);
        browser.prefers("light", true);
        show("describe");
        assertEquals("0s", browser.run("return getComputedStyle(document.querySelector('nav a')).transitionDuration"));
    }

    /** Opens a place with everything in it unfolded and every search done. */
    static void show(Browser browser, WebServer server, String place) {
        browser.show(server, place, "bench-stainless");
        if (place.equals("try")) {
            browser.find(".levers");
            browser.push(".range button", "");
            browser.find(".chart svg");
        } else if (place.equals("drill")) {
            browser.find("#begin-round");
            browser.push("#begin-round", "");
            browser.find("form .choice input");
            browser.run("document.querySelector('#drill form .choice input').click()");
            browser.push("#drill form button[type=submit]", "");
            browser.find(".told");
        } else if (place.equals("advice")) {
            browser.until(
                    () -> (Boolean) browser.run("return Boolean(document.querySelector('.sheet')?.shadowRoot)"),
                    "sheet");
        }
        browser.run(
                "document.querySelectorAll('details').forEach((d, i) => { if (i < 24) d.open = true; }); scrollTo(0, 0)");
    }

    private static void show(String place) {
        show(browser, server, place);
    }
}
