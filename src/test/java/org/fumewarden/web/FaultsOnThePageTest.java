package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** Words people use find the value; what cannot be read is said at the top and at its field, and mended on one press. */
class FaultsOnThePageTest extends OnThePage {
    private static void step(String name) {
        browser.push(".steps button", name);
    }

    private static final String MANGANESE = "[data-path='exposures.2.twa'] input.amount";

    private static void level(String typed) {
        browser.run("document.querySelector(arguments[0]).focus()", MANGANESE);
        browser.typeOver(typed);
        browser.press(Keys.TAB);
    }

    /** A comma before three digits may part thousands or decimals: the page asks, and both answers are the number typed. */
    @Test
    void aFaultIsSaidAtTheTopAndAtItsFieldAndMendedOnOnePress() {
        browser.show(server, "describe", "bench-stainless");
        step("What was measured");
        level("1,200");
        browser.untilText("#faults", "can be read in two ways");
        browser.untilText("[data-path='exposures.2.twa'] .fault", "can be read in two ways");
        assertEquals("true", browser.find(MANGANESE).getDomAttribute("aria-invalid"));
        assertFalse(browser.text("#faults").contains("--"), "no words of the command line");
        assertEquals(List.of(), browser.violations());
        browser.screen("faults-on-the-page");
        step("The air");
        browser.push("#faults a", "manganese");
        browser.until(
                () -> (Boolean) browser.run("return document.activeElement.matches(arguments[0])", MANGANESE),
                "the link leads to the field");
        browser.push("[data-path='exposures.2.twa'] .fault button", "Use 1.200 mg/m3");
        browser.untilText("#heard", "24 (manganese, respirable)");
    }

    @Test
    @Tag("ci")
    void aDecimalCommaAUnitAndANonDetectAreReadAsTyped() {
        browser.show(server, "describe", "bench-stainless");
        step("What was measured");
        level("12,5 \u00b5g/m\u00b3");
        browser.until(() -> "12.5".equals(browser.find(MANGANESE).getDomProperty("value")), "point");
        assertEquals(
                "ug/m3",
                browser.find("[data-path='exposures.2.twa'] select.unit").getDomProperty("value"));
        level("<0,01 mg/m3");
        browser.until(() -> "<0.01".equals(browser.find(MANGANESE).getDomProperty("value")), "non-detect");
        browser.untilText("#heard", "20 (welding fume)");
    }

    @Test
    void aWordOfTwoMeaningsShowsBothAndOneOfOneIsTaken() {
        browser.show(server, "describe", "");
        String input = "[data-path='task.process'] input";
        browser.find(input);
        browser.run("document.querySelector(arguments[0]).focus()", input);
        browser.press("MIG");
        Object found = browser.run(
                "return [...document.querySelectorAll(\"[data-path='task.process'] .options button\")].map(b => b.textContent).join('|')");
        assertTrue(
                found.toString().contains("MIG welding") && found.toString().contains("MAG welding"), found.toString());
        browser.typeOver("wig");
        browser.press(Keys.ENTER);
        browser.untilText("[data-path='task.process'] .chosen", "TIG");
    }
}
