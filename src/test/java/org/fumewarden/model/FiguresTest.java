package org.fumewarden.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands on one row agrees; each quotient is divided by hand. */
final class FiguresTest {
    @ParameterizedTest
    @CsvSource({
        // 0.018467 / 0.005 = 3.6934, printed 3.7: 0.019 would make it 3.8, 0.0185 makes it 3.7.
        "0.018467, 0.005, 3.7, 0.0185",
        // 0.0123456 / 0.01 = 1.23456, printed 1.3: two figures, 0.013, make it 1.3.
        "0.0123456, 0.01, 1.3, 0.013",
        // What was typed stands as it was typed.
        "0.0185, 0.005, 3.7, 0.0185",
        // A ratio that does not come from these two leaves the level at two figures.
        "0.018467, 0.005, 9, 0.019",
    })
    void theLevelHasTheFiguresThatItsRatioFollowsFrom(String level, String limit, String ratio, String printed) {
        assertEquals(printed, Figures.agreeing(new BigDecimal(level), new BigDecimal(limit), ratio));
    }

    @Test
    void thePressureOfAirIsToldInKilopascalsAndThatOfAFilterInPascals() {
        assertTrue(Figures.inKilopascals(new BigDecimal("10000"), "Pa"));
        assertFalse(Figures.inKilopascals(new BigDecimal("9999"), "Pa"));
        assertFalse(Figures.inKilopascals(new BigDecimal("10000"), "m"));
        assertEquals(0, new BigDecimal("250").compareTo(Figures.kilopascals(new BigDecimal("250000"))));
    }
}
