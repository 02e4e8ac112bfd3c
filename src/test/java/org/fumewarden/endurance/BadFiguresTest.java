package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.function.Executable;

/** A figure of a table that cannot be is named when the table is read, before anything is reckoned with it. */
class BadFiguresTest {
    @TestFactory
    Stream<DynamicTest> figureThatCannotBeIsRefusedByName() {
        CaseRange one = new CaseRange(1, 1, 1);
        return Stream.of(
                refused("area in m2", () -> new FilterPressure(200, 90, 0, one)),
                refused("reserve", () -> new PackRules(0.6, 0.8, 0.8, 0.8, 0.96, 300, 500, 0, 45)),
                refused("charge-from", () -> new PackRules(0.05, 0.8, 0.8, 0.8, 0.96, 300, 500, 46, 45)),
                refused("bulk density", () -> new CarbonBed.Measured(120, 450, 80)),
                refused("fitted resistance", () -> new CarbonBed.Lumped(52, 0, 53.3)),
                refused("humid-share", () -> new RuleOfThumb(70, 200, 480, 30, 5, 65, 50)),
                refused("minutes", () -> new TestCapacity("A2", "cyclohexane", 5000, 10, 0, 30, 70, 20)),
                refused("refractive-index", () -> new Vapour("x", 92, 0.9, 149, 110, 7, 1344, 219, true)),
                refused("share", () -> new HeldLike(true, 1.1, false, 0, "x")),
                refused("peak", () -> new WorkRate("low", 20, -61, 118, OptionalDouble.empty())),
                refused("likely", () -> new CaseRange(1, 0, 1)),
                refused("affinity", () -> new AdsorptionConstants(0.454, 0, 1.987, -1.8, 1, 1, 1, 1, 22.4, 760)),
                refused("worst-overrun", () -> new AdsorptionRange(65, 50, 65, 10, 40, 50, 1000, 0.01, 0.1, 0.9)));
    }

    private static DynamicTest refused(String names, Executable making) {
        return DynamicTest.dynamicTest(names, () -> {
            String says = assertThrows(IllegalArgumentException.class, making).getMessage();
            assertTrue(says.contains(names + " ") && !says.contains("Maybe "), says);
        });
    }

    @Test
    void twoFaultsAreTwoSentences() {
        String says = assertThrows(IllegalArgumentException.class, () -> new CaseRange(0, -1, 1))
                .getMessage();
        assertTrue(says.startsWith("Model figure: short run is 0.0 but must be above zero. likely is -1.0 but"), says);
    }

    @Test
    void endsOfARangeBelongToIt() {
        assertFalse(
                new Inputs().within("x", 1, 1, 2).within("x", 2, 1, 2).refusal().isPresent());
        assertFalse(new Inputs().notNegative("x", 0).refusal().isPresent());
        assertTrue(new Inputs().positive("x", 0).refusal().isPresent());
        assertTrue(
                new Inputs().positive("x", Double.POSITIVE_INFINITY).refusal().isPresent());
    }

    @Test
    void boundIsAboveZeroAndFinite() {
        assertEquals(1e-9, new TimeBound(BoundKind.MEASURED, 1e-9, "x", true).minutes());
        for (double minutes : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new TimeBound(BoundKind.MEASURED, minutes, "x", true),
                    "" + minutes);
        }
    }
}
