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
import org.openqa.selenium.By;

/** WCAG 2.2 AA as far as a machine can tell (axe-core 4.11), in both themes, at phone width and at 200 % zoom. */
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

    /** The themes differ in colours alone. */
    @ParameterizedTest
    @ValueSource(strings = {"describe", "advice", "what-if", "trail", "drill"})
    void noPlaceOfThePageHasAViolation(String place) {
        browser.size(1280, 1000);
        browser.prefers("light", true);
        show(place);
        browser.screen(place + "-light");
        assertEquals(List.of(), browser.violations());
        browser.prefers("dark", true);
        browser.screen(place + "-dark");
        assertEquals(List.of(), browser.violations("color-contrast"));
    }

    @ParameterizedTest
    @CsvSource({
        "describe, 360",
        "advice, 360",
        "what-if, 360",
        "trail, 360",
        "drill, 360",
        "describe, 640",
        "advice, 640"
    })
    @Tag("ci")
    void narrowPagesNeverScrollSideways(String place, int width) {
        browser.size(width, 800);
        browser.prefers("light", true);
        show(place);
        browser.screen(place + "-" + width);
        Object wide = browser.run("return document.documentElement.scrollWidth");
        assertTrue(((Number) wide).intValue() <= width, place + " is " + wide + " wide");
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
        browser.open(server.address() + "#" + place);
        browser.run("localStorage.clear()");
        browser.driver().navigate().refresh();
        if (place.equals("what-if")) {
            browser.find("#vary");
            browser.until(
                    () -> browser.driver()
                                    .findElements(By.cssSelector(".pair .plate"))
                                    .size()
                            == 2,
                    "two plates");
            browser.run("document.querySelector('#vary').parentElement.querySelector('button').click()");
            browser.find(".chart svg");
        } else if (place.equals("drill")) {
            browser.find("#begin-round").click();
            browser.find("form .choice input").click();
            browser.find("form button[type=submit]").click();
            browser.find(".told");
        } else {
            browser.untilText("#" + place + ", .answer-now", "TH3 P");
        }
        browser.run(
                "document.querySelectorAll('details').forEach((d, i) => { if (i < 12) d.open = true; }); scrollTo(0, 0)");
    }

    private static void show(String place) {
        show(browser, server, place);
    }
}
