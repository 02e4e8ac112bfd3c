package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DustAndPressureTest {
    /** Filter of the clean-pressure example: the EN 143 P3 limit, 420 Pa at 95 L/min (from memory). */
    private static final FilterPressure P3_AT_LIMIT =
            new FilterPressure(420, 95, 0.05, Tables.blower("cake-resistance"));

    /** Mass per shift at 180 L/min over 480 min, 86.4 m3, all captured; derived, printed in whole milligrams. */
    @ParameterizedTest(name = "{0} mg/m3: {1} mg")
    @CsvSource({"0.5, 43", "1, 86", "2, 173", "5, 432", "10, 864"})
    void allDustInTheBlownAirCounts(double concentration, double milligrams) {
        assertEquals(milligrams, load(concentration, 0).milligrams(480), 0.5);
    }

    /** Clean-pressure example, derived: 376 Pa, 1.07 W of air, about 4.3 W electric at a quarter. */
    @Test
    void twoCleanFiltersAtTheLimitNeedThisPower() {
        double pascals = P3_AT_LIMIT.clean(170.0 / 2);
        BlowerModel blower = blower(170, 2, pascals, 1000);
        assertEquals(376, pascals, 0.5);
        assertEquals(1.07, blower.airPower(pascals), 0.006);
        assertEquals(4.3, blower.electricPower(pascals, 0.25, 0), 0.05);
    }

    @Test
    void preFilterIsReplacedMoreOftenAndMakesTheMainFilterLast() {
        FilterCadence bare = cadence(load(10, 0), Optional.empty());
        FilterCadence with = cadence(load(10, 0.6), Optional.of(100.0));
        assertTrue(with.mainFilterMinutes() > bare.mainFilterMinutes());
        // 10 mg/m3 * 0.18 m3/min * 0.6 = 1.08 mg/min; 100 mg after 92.6 min; 480 / 92 = 5.2
        assertTrue(with.says().startsWith("Replace the pre-filter after every 1 h 32 min"), with.says());
        assertEquals(6, with.preFiltersPerShift());
        assertEquals(0, bare.preFiltersPerShift());
    }

    @Test
    void preFilterWithoutStatedLoadIsReplacedEveryShift() {
        assertEquals(1, cadence(load(0.01, 0.6), Optional.empty()).preFiltersPerShift());
    }

    @Test
    void cleanAirStillGivesAFiniteCadence() {
        assertTrue(Double.isFinite(cadence(load(0, 0.5), Optional.of(50.0)).mainFilterMinutes()));
    }

    @ParameterizedTest(name = "{0} mg/m3 at {1} L/min, {2} captured")
    @CsvSource({"-1, 180, 1", "NaN, 180, 1", "1, 0, 1", "1, 180, 1.1"})
    void impossibleLoadsAreRefused(double concentration, double flow, double captured) {
        assertEquals(
                Soundness.INVALID_VALUE,
                DustLoad.of(concentration, flow, captured, 0).status());
    }

    @Test
    void warningBelowTheCleanPressureIsRefused() {
        assertEquals(
                Soundness.OUTSIDE_TABLE,
                FilterCadence.of(load(1, 0), P3_AT_LIMIT, 2, 180, 100, Optional.empty(), 480)
                        .status());
    }

    /** By hand: 1 mg/m3 at 180 L/min is 0.18 mg/min, half of it captured. */
    @Test
    void onlyTheCapturedShareLoadsTheSet() {
        DustLoad load = DustLoad.of(1, 180, 0.5, 0.4).value().orElseThrow();
        assertEquals(0.09, load.milligramsPerMinute(), 1e-12);
        assertEquals(0.036, load.onPreFilter(), 1e-12);
        assertEquals(0.054, load.onMainFilter(), 1e-12);
    }

    /**
     * By hand: 420 Pa at 95 L/min are 397.9 at 90; 100 mg on 0.05 m2 at 90 L/min give 60, 30 and 6 Pa for the three
     * cases; 0.9 mg/min on each of two filters reach 600 Pa after 202.1 Pa over 0.54, 0.27 and 0.054 Pa/min.
     */
    @Test
    void eachCaseOfTheCakeIsReckoned() {
        double clean = 420 * 90 / 95.0;
        Span minutes = P3_AT_LIMIT.minutesTo(600, 90, 0.9);
        assertEquals((600 - clean) / 0.54, minutes.low(), 1e-9);
        assertEquals((600 - clean) / 0.27, minutes.likely(), 1e-9);
        assertEquals((600 - clean) / 0.054, minutes.high(), 1e-9);
        assertEquals(Span.exactly(0), P3_AT_LIMIT.minutesTo(clean, 90, 0.9));
        assertEquals(Span.exactly(0), P3_AT_LIMIT.minutesTo(clean - 1, 90, 0));
        assertEquals(
                (600 - clean) / 0.54, cadence(load(10, 0), Optional.empty()).mainFilterMinutes(), 1e-9);
    }

    @Test
    void cadenceIsPutInWords() {
        String main =
                "Replace the particle filter at the clogged-filter warning, by the model after about 6 h 14 min of wear."
                        + " Never clean, tap or blow out a filter.";
        assertEquals(main, cadence(load(10, 0), Optional.empty()).says());
        // 40 % on the main filter: 202.1 / (0.36 * 0.6)
        assertEquals(
                "Replace the pre-filter after every 1 h 32 min of wear: 6 in a shift. "
                        + main.replace("6 h 14 min", "15 h"),
                cadence(load(10, 0.6), Optional.of(100.0)).says());
    }

    @ParameterizedTest(name = "{0} filters, {1} L/min, warning {2} Pa, holds {3} mg, {4} min: {5}")
    @CsvSource({
        "0, 180, 600, 100, 480, INVALID_VALUE",
        "2, 0, 600, 100, 480, INVALID_VALUE",
        "2, 180, 0, 100, 480, INVALID_VALUE",
        "2, 180, 600, 0, 480, INVALID_VALUE",
        "2, 180, 600, 100, 0, INVALID_VALUE",
        "2, 190, 420, 100, 480, OUTSIDE_TABLE",
        "2, 190, 420.1, 100, 480, SOUND"
    })
    void cadenceNeedsRoomBelowTheWarning(
            int filters, double flow, double warning, double holds, double shift, String refusal) {
        assertEquals(
                refusal,
                FilterCadence.of(load(1, 0.5), P3_AT_LIMIT, filters, flow, warning, Optional.of(holds), shift)
                        .status()
                        .name());
    }

    @ParameterizedTest(name = "flow {0}, filters {1}, start {2} Pa")
    @CsvSource({"0, 2, 200", "180, 0, 200", "180, 2, 0"})
    void blowerThatCannotBeIsRefused(double flow, int filters, double pascals) {
        assertEquals(
                Soundness.INVALID_VALUE,
                blower(flow, filters, pascals, 1000)
                        .runTime(Span.exactly(40), load(1, 0), P3_AT_LIMIT)
                        .status());
    }

    private static FilterCadence cadence(DustLoad load, Optional<Double> holds) {
        return FilterCadence.of(load, P3_AT_LIMIT, 2, 180, 600, holds, 480)
                .value()
                .orElseThrow();
    }

    private static DustLoad load(double concentration, double preFilterShare) {
        return DustLoad.of(concentration, 180, 1, preFilterShare).value().orElseThrow();
    }

    private static BlowerModel blower(double flow, int filters, double pascals, double largest) {
        return new BlowerModel(
                flow, filters, pascals, largest, Tables.blower("efficiency"), Tables.blower("electronics"));
    }
}
