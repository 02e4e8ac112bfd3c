package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** WCAG 2.2 AA as far as a machine can tell (axe-core 4.11), in both themes, forced colours, at phone width, at 200 % and 400 %. */
@Tag("ci")
class AccessiblePageTest extends OnThePage {
    /** The two places where people decide, each in a theme; at the width of a phone the same page never scrolls sideways. */
    @ParameterizedTest
    @CsvSource({"describe, dark", "advice, light"})
    void noPlaceOfThePageHasAViolation(String place, String theme) {
        everythingOpen(place, theme);
        browser.size(390, 844);
        noSidewaysScroll(place, 390);
    }

    @ParameterizedTest
    @CsvSource({
        "try, light",
        "try, dark",
        "describe, light",
        "advice, dark",
        "trail, light",
        "trail, dark",
        "drill, light",
        "drill, dark"
    })
    void norInTheOtherThemeNorWhereChangesAreTried(String place, String theme) {
        everythingOpen(place, theme);
    }

    private static void everythingOpen(String place, String theme) {
        browser.size(1280, 1000);
        browser.prefers(theme, true);
        show(place);
        browser.screen(place + "-" + theme);
        assertEquals(List.of(), browser.violations());
    }

    /** The boxes that stand in a step while its questions are open, and the question whether to compare another task. */
    @Test
    void noBoxThatComesAndGoesHasAViolation() {
        browser.size(1280, 1000);
        browser.prefers("light", true);
        browser.show(server, "describe", "galvanised-rail");
        browser.run(
                "const t = JSON.parse(localStorage[Object.keys(localStorage).find(k => k.startsWith('fumewarden.task.'))]).task;"
                        + "delete t.wearer; delete t.atmosphere; delete t.exposures; localStorage.clear(); sessionStorage.clear();"
                        + "localStorage.setItem('fumewarden.task', JSON.stringify(t))");
        browser.driver().navigate().refresh();
        browser.untilText("#heard", "20 (welding fume)");
        for (String step : List.of("The air", "What was measured", "The wearer")) {
            browser.push(".steps button", step);
            browser.find("#describe .together");
            browser.screen("box-" + step.toLowerCase(Locale.ROOT).replace(' ', '-'));
            assertEquals(List.of(), browser.violations(), step);
        }
        browser.push(".together button", "All of this is so");
        browser.find(".undo button");
        assertEquals(List.of(), browser.violations(), "undo");
        browser.run("location.hash = 'try'");
        browser.push("#try .tools button", "Keep for comparison");
        browser.run("location.hash = 'describe'; document.querySelector('.starts').open = true;"
                + "document.querySelector('#begin').click(); location.hash = 'try'");
        browser.find("#try .boxed");
        assertEquals(List.of(), browser.violations(), "another task");
    }

    /** Desk, projector, and 200 % and 400 % of a window of 1280 by 1024 (WCAG 2.2, 1.4.4 and 1.4.10). */
    @ParameterizedTest
    @CsvSource({
        "describe, 1440, 900, 100",
        "advice, 1440, 900, 100",
        "describe, 1280, 720, 100",
        "try, 1280, 720, 100",
        "drill, 1280, 720, 100",
        "trail, 390, 844, 100",
        "drill, 390, 844, 100",
        "upkeep, 390, 844, 100",
        "describe, 1280, 1024, 200",
        "advice, 1280, 1024, 200",
        "try, 1280, 1024, 200",
        "trail, 1280, 1024, 200",
        "drill, 1280, 1024, 200",
        "upkeep, 1280, 1024, 200",
        "describe, 1280, 1024, 400",
        "advice, 1280, 1024, 400",
        "try, 1280, 1024, 400",
        "trail, 1280, 1024, 400",
        "drill, 1280, 1024, 400",
        "upkeep, 1280, 1024, 400"
    })
    void narrowPagesNeverScrollSideways(String place, int width, int height, int zoom) {
        browser.zoom(width, height, zoom);
        browser.prefers("light", true);
        show(place);
        browser.screen(place + "-" + width + "-" + zoom);
        noSidewaysScroll(place, width * 100 / zoom);
    }

    private static void noSidewaysScroll(String place, int width) {
        Object wide = browser.run("return document.documentElement.scrollWidth");
        assertTrue(((Number) wide).intValue() <= width, place + " is " + wide + " wide");
    }

    @ParameterizedTest
    @ValueSource(strings = {"describe", "advice", "try", "upkeep"})
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
