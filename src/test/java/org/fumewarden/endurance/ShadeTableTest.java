package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 29 CFR 1910.133(a)(5) minimums; ANSI Z49.1:2005 suggestions. */
class ShadeTableTest {
    private static final ShadeTable MINIMUM = Tables.shades("us-minimum-shades");
    private static final ShadeTable SUGGESTED = Tables.shades("us-suggested-shades");

    /** WE-55, WE-57, and the touching ends, where the darker one counts. */
    @ParameterizedTest(name = "{0} at {1}: {2}, suggested {3}")
    @CsvSource({
        "covered-electrode, 200, 10, 12",
        "plasma-arc-cutting, 350, 9, 12",
        "covered-electrode, 60, 8, 10",
        "covered-electrode, 59.9, 7, 0",
        "covered-electrode, 160, 10, 12",
        "covered-electrode, 550, 11, 14",
        "gas-tungsten-arc, 150, 10, 14",
        "oxygen-cutting, 25, 4, 0",
        "torch-brazing, 1, 3, 4"
    })
    void shadeIsTheDarkestRowThatCovers(String process, double size, int minimum, int suggested) {
        ShadeAdvice.Shade shade = assertInstanceOf(ShadeAdvice.Shade.class, MINIMUM.advise(SUGGESTED, process, size));
        assertEquals(minimum, shade.minimum());
        assertEquals(suggested == 0 ? OptionalInt.empty() : OptionalInt.of(suggested), shade.suggested());
    }

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({
        "covered-electrode, 551",
        "covered-electrode, 0",
        "covered-electrode, -5",
        "covered-electrode, NaN",
        "submerged-arc, 400"
    })
    void outsideTheTableTheStandardIsNamedInstead(String process, double size) {
        assertInstanceOf(ShadeAdvice.SeeStandard.class, MINIMUM.advise(SUGGESTED, process, size));
    }

    @Test
    void tableReadOnceGivesNoMinimum() {
        assertInstanceOf(ShadeAdvice.SeeStandard.class, SUGGESTED.advise(MINIMUM, "covered-electrode", 200));
    }

    @Test
    void tableKnowsItsProcessesAndWhatTheyGoBy() {
        assertTrue(MINIMUM.has("covered-electrode"));
        assertFalse(MINIMUM.has("submerged-arc"));
        assertEquals(ShadeTable.By.CURRENT, MINIMUM.by("covered-electrode"));
        assertEquals(ShadeTable.By.THICKNESS, MINIMUM.by("oxygen-cutting"));
        assertEquals(ShadeTable.By.ANY, MINIMUM.by("submerged-arc"));
    }

    @ParameterizedTest(name = "suggested {0}, cross-checked {1}: {2}")
    @CsvSource({
        "9, true, ''",
        "10, true, ' Suggested 10 (the other).'",
        "12, false, ' Suggested 12 (the other, read once).'"
    })
    void suggestionIsNeverLighterAndSaysHowWellItWasRead(int suggested, boolean checked, String more) {
        ShadeTable minimum =
                new ShadeTable("the law", true, List.of(new ShadeTable.Row("arc", ShadeTable.By.CURRENT, 60, 160, 10)));
        ShadeTable other = new ShadeTable(
                "the other", checked, List.of(new ShadeTable.Row("arc", ShadeTable.By.CURRENT, 60, 160, suggested)));
        ShadeAdvice.Shade shade = assertInstanceOf(ShadeAdvice.Shade.class, minimum.advise(other, "arc", 100));
        assertEquals(
                "Shade 10 or darker (the law)." + more
                        + " Start too dark, go lighter until the weld can be seen, never below the minimum.",
                shade.says());
    }

    @Test
    void moreCurrentNeverGetsALighterShade() {
        for (String process : List.of("covered-electrode", "gas-tungsten-arc", "plasma-arc-welding")) {
            int before = 0;
            for (double amps = 1; amps <= 400; amps++) {
                int now = MINIMUM.shade(process, amps).orElseThrow();
                assertTrue(now >= before, process + " " + amps);
                before = now;
            }
        }
    }
}
