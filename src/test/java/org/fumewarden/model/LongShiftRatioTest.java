package org.fumewarden.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ratios of exposure to limit that a code derives. */
final class LongShiftRatioTest {
    private static final RowRef REF =
            new RowRef("us-limits", "lead/twa", new Citation("29cfr1926", "1926.62(c)", "2024", Confidence.READ));
    private static final Agent LEAD =
            new Agent(REF, "lead", "lead, inorganic", "particle", "7439-92-1", Optional.empty(), "peak-over-average");
    private static final Limit LIMIT = new Limit(REF, "lead", Averaging.TWA, number("0.05"), Unit.MG_M3, "as Pb");
    private static final Threshold EIGHT_HOURS = threshold("480", "min");
    private static final Threshold MOLAR_VOLUME = threshold("24.45", "L/mol");

    /** 29 CFR 1926.62(c)(2): limit in ug/m3 = 400 / hours; 10 h gives 40, 16 h gives 25, 12 h gives 33.3. */
    @ParameterizedTest
    @CsvSource({"600, 0.04", "960, 0.025", "720, 0.033333333333"})
    void aLongShiftLowersTheLimitAndNeverRoundsItUp(String minutes, String lowered) {
        Measure shift = new Measure("shift", number(minutes), "min", "task.shift");
        Ratio ratio = Ratio.longShift(exposure("0.03"), LIMIT, shift, EIGHT_HOURS, LEAD, MOLAR_VOLUME);
        assertEquals(0, number(lowered).compareTo(ratio.limit()));
        assertEquals(number("0.03"), ratio.level());
    }

    /** Brief and Scala 1975, daily form (memory): 8 x (24 - h) / (16 x h); 10 h leave 0.7 of the limit, 12 h half, 16 h a quarter. */
    @ParameterizedTest
    @CsvSource({"480, 0.05", "600, 0.035", "720, 0.025", "960, 0.0125", "1440, 0.000017361111"})
    void aLongShiftThatLeavesLessRestLowersItFurther(String minutes, String lowered) {
        Measure shift = new Measure("shift", number(minutes), "min", "task.shift");
        assertEquals(
                0,
                number(lowered)
                        .compareTo(LIMIT.loweredForRest(shift, EIGHT_HOURS).value()));
    }

    @Test
    void theLoweredLimitItselfIsNotExceeded() {
        Measure tenHours = new Measure("shift", number("600"), "min", "task.shift");
        assertFalse(Ratio.longShift(exposure("0.04"), LIMIT, tenHours, EIGHT_HOURS, LEAD, MOLAR_VOLUME)
                .exceeded());
        assertTrue(Ratio.longShift(exposure("0.0401"), LIMIT, tenHours, EIGHT_HOURS, LEAD, MOLAR_VOLUME)
                .exceeded());
    }

    /** 29 CFR 1926.62(d)(2)(iii): up to 2,500 ug/m3 is assumed, which is 50 times 50 ug/m3. */
    @Test
    void anAssumedLevelIsAMultipleOfTheLimit() {
        Ratio ratio = Ratio.assumed(LIMIT, threshold("50", "times the limit"));
        assertEquals(0, number("2.5").compareTo(ratio.level()));
        assertEquals("assumed", ratio.basis());
        assertTrue(Need.of(ratio).heldBy(number("50")));
        assertFalse(Need.of(ratio).heldBy(number("49.9")));
    }

    private static Exposure exposure(String level) {
        return new Exposure(
                "lead", Averaging.TWA, number(level), Unit.MG_M3, "value as given", false, "exposures.0.twa");
    }

    private static Threshold threshold(String value, String unit) {
        return new Threshold(REF, "test", number(value), unit);
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text);
    }
}
