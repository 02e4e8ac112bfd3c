package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A maker's time is never stretched, and is shortened only as published figures allow. */
class MeasuredBreakthroughTest {
    /** OSHA guidance, static table: toluene 1018 min at 50 ppm, 53.3 L/min, 22 C, up to 50 % humidity. */
    private static final MeasuredBreakthrough TOLUENE =
            new MeasuredBreakthrough(1018, 50, 5, 53.3, 0, 50, 22, "OSHA static table");

    @Test
    void easierUseGetsNoMoreThanWasMeasured() {
        assertEquals(1018, minutes(TOLUENE, use(10, 5, 20, 30, 10), true));
        assertEquals(1018, minutes(TOLUENE, use(50, 5, 53.3, 50, 22), true), "the measured conditions themselves");
    }

    /** OSHA guidance, static table, toluene at 10 %: 307 min at 200 ppm; comparison page: 72 min at 1000 ppm. */
    @Test
    void moreGasShortensAtLeastAsMuchAsThePublishedTable() {
        assertEquals(254.5, minutes(TOLUENE, use(200, 5, 53.3, 50, 22), true), 1e-9, "1018 x 50 / 200");
        assertTrue(minutes(TOLUENE, use(200, 5, 53.3, 50, 22), true) <= 307);
        MeasuredBreakthrough middle = new MeasuredBreakthrough(307, 200, 20, 53.3, 0, 50, 22, "OSHA static table");
        assertTrue(minutes(middle, use(1000, 20, 53.3, 50, 22), true) <= 72);
    }

    @ParameterizedTest(name = "{0} ppm, exit {1}, {2} L/min, {3} %, {4} C, adsorbed {5}")
    @CsvSource({
        "501, 5, 53.3, 50, 22, true", // more than ten times the measured concentration
        "50, 4.9, 53.3, 50, 22, true",
        "50, 5, 53.4, 50, 22, true",
        "50, 5, 53.3, 51, 22, true",
        "50, 5, 53.3, 50, 23, true",
        "51, 5, 53.3, 50, 22, false" // bound by reaction: no scaling at all
    })
    void harderUseIsRefusedAndStillShortens(
            double ppm, double exit, double flow, double humidity, double warmth, boolean adsorbed) {
        Reckoning<TimeBound> outcome = TOLUENE.bound(use(ppm, exit, flow, humidity, warmth), adsorbed);
        Refused<TimeBound> refused = (Refused<TimeBound>) outcome;
        assertEquals(Soundness.OUTSIDE_TABLE, refused.status());
        assertTrue(refused.shortens().orElseThrow().minutes() <= 1018);
    }

    /** 42 CFR 84.207 tests cartridges after dry and after humid air, since either end can be the harder one. */
    @Test
    void gasBoundByReactionIsNotTakenToBeEasierInDryAir() {
        MeasuredBreakthrough humidOnly = new MeasuredBreakthrough(60, 10, 0.5, 90, 70, 70, 20, "a sheet");
        assertTrue(humidOnly.bound(use(5, 0.5, 90, 40, 20), false).value().isEmpty());
        MeasuredBreakthrough both = new MeasuredBreakthrough(60, 10, 0.5, 90, 25, 70, 20, "a sheet");
        assertEquals(60, minutes(both, use(5, 0.5, 90, 40, 20), false));
    }

    /** By hand: 1018 min over ten for ten times the gas, over two for twice the flow. */
    @Test
    void timeIsShortenedInInverseProportionUpToTenfold() {
        assertEquals(101.8, minutes(TOLUENE, use(500, 5, 53.3, 50, 22), true), 1e-9);
        Refused<TimeBound> faster = (Refused<TimeBound>) TOLUENE.bound(use(50, 5, 106.6, 50, 22), true);
        assertEquals(509, faster.shortens().orElseThrow().minutes(), 1e-9);
        assertEquals(
                "The use is harder than the measurement in OSHA static table in flow through one filter. Use another"
                        + " line of it.",
                faster.sentence());
    }

    @ParameterizedTest(name = "{0} ppm: {1}")
    @CsvSource({
        "50, '. The concentration here is no higher, so the time is taken as it stands.'",
        "100, ', shortened in inverse proportion to 100 ppm here.'"
    })
    void sentenceSaysWhetherTheTimeWasShortened(double ppm, String end) {
        TimeBound bound = TOLUENE.bound(use(ppm, 5, 53.3, 50, 22), true).value().orElseThrow();
        assertEquals(
                "Breakthrough came after 1018 min at 50 ppm and 53.3 L/min (OSHA static table)" + end, bound.says());
        assertTrue(bound.standsAlone());
    }

    @ParameterizedTest(name = "{0} min at {1} ppm and {2} L/min")
    @CsvSource({"0, 50, 53.3", "60, 0, 53.3", "60, 50, 0", "NaN, 50, 53.3"})
    void measurementThatCannotBeIsRefused(double minutes, double ppm, double flow) {
        MeasuredBreakthrough line = new MeasuredBreakthrough(minutes, ppm, 5, flow, 0, 50, 22, "a sheet");
        assertEquals(
                Soundness.INVALID_VALUE,
                line.bound(use(10, 5, 20, 30, 10), true).status());
    }

    private static double minutes(MeasuredBreakthrough line, GasUse use, boolean adsorbed) {
        return line.bound(use, adsorbed).value().orElseThrow().minutes();
    }

    private static GasUse use(double ppm, double exit, double flow, double humidity, double warmth) {
        return new GasUse(ppm, exit, FilterFlow.ofBlower(flow, 1), humidity, warmth, false, false);
    }
}
