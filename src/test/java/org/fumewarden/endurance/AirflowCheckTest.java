package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirflowCheckTest {
    /**
     * The peaks of the work-rate table belong to its oxygen figures: 25 (28, 33) L air per L, times the ratios, times what 95
     * of a hundred people stay below, 1 + 1.645 x 0.14 = 1.2303.
     */
    @Test
    void workRatePeaksFollowFromTheirOxygenFigures() {
        Tables.rows("work-rates").forEach(row -> {
            double volume = Tables.number(row, "minute-volume");
            double exact = Tables.number(row, "oxygen") * (volume > 100 ? 33 : volume > 50 ? 28 : 25);
            assertEquals(volume, exact, 0.6, row::toString);
            // the table was rounded from unrounded oxygen figures
            assertEquals(Tables.number(row, "peak"), exact * 3.06 * 1.2303, 2.0, row::toString);
            assertEquals(Tables.number(row, "peak-speech"), exact * 5.9 * 1.2303, 3.4, row::toString);
        });
    }

    /** Below the minimum design flow the unit is barred; common practice, no source, and GUV-R 190 p. 36. */
    @ParameterizedTest(name = "{0} of {1} L/min: {2}")
    @CsvSource({
        "159.9, 160, BELOW_MINIMUM_FLOW",
        "160, 160, ''",
        "0, 160, BELOW_MINIMUM_FLOW",
        "-1, 160, INVALID_VALUE",
        "NaN, 160, INVALID_VALUE",
        "160, 0, INVALID_VALUE"
    })
    void unitBelowItsMinimumDesignFlowIsBarred(double measured, double minimum, String refusal) {
        Reckoning<AirflowVerdict> verdict =
                AirflowCheck.compare(OptionalDouble.of(measured), minimum, Tables.workRate("low"), false, 1);
        assertEquals(
                refusal, verdict.value().isPresent() ? "" : verdict.status().name());
    }

    @Test
    void flowThatWasNotMeasuredBarsToo() {
        assertEquals(
                Soundness.BELOW_MINIMUM_FLOW,
                AirflowCheck.compare(OptionalDouble.empty(), 160, Tables.workRate("low"), false, 1)
                        .status());
    }

    @ParameterizedTest(name = "{0} L/min at {1} work, speech {2}, factor {3}: {4}")
    @CsvSource({
        "180, moderate, false, 1, COVERS_PEAKS",
        "221, high, true, 1, COVERS_PEAKS",
        "220, high, true, 1, PEAKS_ABOVE_SUPPLY",
        "222, high, true, 1.01, PEAKS_ABOVE_SUPPLY",
        "115, very-high, false, 1, PEAKS_ABOVE_SUPPLY",
        "104, maximal, false, 1, MEAN_ABOVE_SUPPLY"
    })
    void peaksWarnAndNeverBar(
            double supply, String work, boolean speech, double factor, AirflowVerdict.Adequacy adequacy) {
        Reckoned<AirflowVerdict> verdict = (Reckoned<AirflowVerdict>)
                AirflowCheck.compare(OptionalDouble.of(supply), 100, Tables.workRate(work), speech, factor);
        assertEquals(adequacy, verdict.result().adequacy());
        assertTrue(verdict.remarks().get(0).contains("never raises the protection factor"));
    }

    /** By hand: 50 L/min with peaks of 150 at sea level are 100 and 300 at twice the factor. */
    @Test
    void meanAndPeakRiseWithTheHeightAndTouchingIsEnough() {
        WorkRate work = new WorkRate("x", 50, 150, 300, OptionalDouble.empty());
        assertEquals(AirflowVerdict.Adequacy.COVERS_PEAKS, adequacy(300, work, 2));
        assertEquals(AirflowVerdict.Adequacy.PEAKS_ABOVE_SUPPLY, adequacy(299, work, 2));
        assertEquals(AirflowVerdict.Adequacy.PEAKS_ABOVE_SUPPLY, adequacy(100, work, 2));
        assertEquals(AirflowVerdict.Adequacy.MEAN_ABOVE_SUPPLY, adequacy(99, work, 2));
    }

    private static AirflowVerdict.Adequacy adequacy(double supply, WorkRate work, double factor) {
        return AirflowCheck.compare(OptionalDouble.of(supply), 90, work, false, factor)
                .value()
                .orElseThrow()
                .adequacy();
    }

    @ParameterizedTest
    @CsvSource({
        "150, 'The air flow covers the breathing: 150 L/min supplied, peaks of about 150 L/min at x work.'",
        "148, 'Not enough air from this unit, the peaks of the breath may draw in outside air: 148 L/min supplied, peaks of"
                + " about 150 L/min at x work. Lower the work rate, use a unit with more flow, or use an airline.'",
        "49, 'Not enough air from this unit, the wearer breathes more than it delivers: 49 L/min supplied, peaks of about"
                + " 150 L/min at x work. Lower the work rate, use a unit with more flow, or use an airline.'"
    })
    void verdictIsPutInWordsAndSoIsTheTimeItCanBeKeptUp(double supply, String words) {
        WorkRate work = new WorkRate("x", 50, 149.2, 300, OptionalDouble.of(15));
        Reckoned<AirflowVerdict> verdict =
                (Reckoned<AirflowVerdict>) AirflowCheck.compare(OptionalDouble.of(supply), 40, work, false, 1);
        assertEquals(words, verdict.result().says());
        assertEquals(
                "No one keeps up x work longer than 15 min.", verdict.remarks().get(1));
    }

    /** US Standard Atmosphere 1976, first layer: 101325 Pa at 0 and 22632 Pa at 11000 m. */
    @Test
    void pressureFollowsTheStandardAtmosphere() {
        StandardAtmosphere air = Tables.atmosphere();
        assertEquals(101325, air.pressure(0), 1e-9);
        assertEquals(22632, air.pressure(11000), 2);
        // 79495 Pa at 2000 m, table of the same standard, from memory
        assertEquals(79495, air.pressure(2000), 10);
    }

    @ParameterizedTest(name = "{0} m: {1}")
    @CsvSource({"0, 1", "-200, 1", "2000, 1.2746", "5000, 1.8755"})
    void thinAirAsksForMoreBreathAndDeepAirForNoLess(double altitude, double factor) {
        assertEquals(
                factor, Tables.atmosphere().breathingFactor(altitude).value().orElseThrow(), 5e-4);
    }

    @ParameterizedTest
    @CsvSource({"5001", "-501", "NaN"})
    void altitudesOutsideTheTableAreRefused(double altitude) {
        assertTrue(Tables.atmosphere().breathingFactor(altitude).value().isEmpty());
    }
}
