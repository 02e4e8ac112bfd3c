package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The adsorption model against the times OSHA publishes from it.
 *
 * <p>Documents: OSHA guidance on change schedules, static table of Wood-1994 breakthrough times ("table") and page that
 * compares the model with Nelson and Correia 1976 ("comparison"). Two cartridges of 26 g, 53.3 L/min, 22 C, at most 50 %
 * relative humidity.
 */
class AdsorptionModelTest {
    /** Fitted by us to the published rows; bed shape was not published. The only fitted figure. */
    private static final CarbonBed PUBLISHED_BED = new CarbonBed.Lumped(52, 0.0341, 53.3);

    private static final double FLOW = 53.3;
    private static final double WORST_PUBLISHED_ERROR = 0.034;

    @ParameterizedTest(name = "{0} {1} {2} ppm: {4} min ({7})")
    @CsvSource({
        "WE-01, toluene,      1000, 0.10,   72,   71.2, 0.3424, table",
        "WE-03, toluene,       200, 0.10,  307,  304.4, 0.2927, table",
        "WE-05, toluene,        50, 0.10, 1018, 1014.5, 0.2439, table",
        "WE-07, ethylbenzene,  500, 0.10,  135,  133.3, 0.3619, table",
        "WE-09, ethylbenzene,  100, 0.10,  604,  597.4, 0.3243, table",
        "WE-11, m-xylene,     1000, 0.10,   70,   69.1, 0.3751, table",
        "WE-13, m-xylene,      200, 0.10,  321,  317.5, 0.3445, table",
        "WE-15, m-xylene,       50, 0.10, 1143, 1138.0, 0.3087, table",
        "WE-17, ethylbenzene, 1000, 0.01,   60,   58.2, 0.3741, comparison",
        "WE-19, benzene,      1000, 0.10,   68,   67.5, 0.2830, comparison",
        "WE-21, cumene,       1000, 0.10,   64,   63.3, 0.3834, comparison",
        "WE-23, ethanol,      1000, 0.10,   43,   44.5, 0.1366, comparison",
        "WE-25, isopropanol,  1000, 0.10,   61,   61.9, 0.2199, comparison",
        "WE-27, propanol,     1000, 0.10,   73,   75.0, 0.2671, comparison",
        "WE-29, butanol,      1000, 0.10,   84,   82.7, 0.3411, comparison"
    })
    void publishedTimesComeOutAgain(
            String id,
            String vapour,
            double ppm,
            double fraction,
            double published,
            double recomputed,
            double capacity,
            String page) {
        double minutes = Tables.model().minutes(Tables.vapour(vapour), PUBLISHED_BED, ppm, fraction, FLOW, 22);
        assertEquals(published, minutes, published * WORST_PUBLISHED_ERROR, "published, " + page);
        assertEquals(recomputed, minutes, recomputed * 0.002, "independent reckoning of the same equation");
        assertEquals(capacity, Tables.model().capacity(Tables.vapour(vapour), ppm, 22), 2e-4, "g/g");
    }

    /** OSHA guidance, comparison page: the whole of its table for which physical constants are shipped. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "benzene,      56,  73, 68,  88",
        "toluene,      61,  94, 72, 114",
        "ethylbenzene, 60,  83, 70, 105",
        "m-xylene,     60,  98, 70, 116",
        "cumene,       56,  81, 64, 103",
        "ethanol,      30,  28, 43,  45",
        "isopropanol,  47,  54, 61,  81",
        "propanol,     56,  85, 73, 123",
        "butanol,      68, 115, 84, 141"
    })
    void comparisonTableIsReproducedAndNoBoundExceedsItsMeasurement(
            String vapour, double model1, double measured1, double model10, double measured10) {
        Vapour agent = Tables.vapour(vapour);
        double at1 = Tables.model().minutes(agent, PUBLISHED_BED, 1000, 0.01, FLOW, 22);
        double at10 = Tables.model().minutes(agent, PUBLISHED_BED, 1000, 0.10, FLOW, 22);
        // printed in whole minutes, hence half a minute on top of the error
        assertEquals(model10, at10, 0.5 + model10 * WORST_PUBLISHED_ERROR);
        // at 1 % ours is never longer than that, but up to 7 % shorter (ethanol, butanol), on the safe side
        assertTrue(at1 <= 0.5 + model1 * (1 + WORST_PUBLISHED_ERROR), () -> "1 %: " + at1);
        assertTrue(at1 >= model1 * 0.93, () -> "1 %: " + at1);
        assertTrue(bound(agent, 1000, 10) <= measured1, () -> "1 %: " + bound(agent, 1000, 10));
        assertTrue(bound(agent, 1000, 100) <= measured10, () -> "10 %: " + bound(agent, 1000, 100));
    }

    /** WE-31: published measurement, Nelson and Correia 1976 on the comparison page: model 36.4 % below it. */
    @Test
    void modelStaysBelowTheTolueneMeasurementAsPublished() {
        double model = Tables.model().minutes(Tables.vapour("toluene"), PUBLISHED_BED, 1000, 0.10, FLOW, 22);
        assertEquals(-36.4, (model - 114) / 114 * 100, 1.5, "percent; the page rounds 72.5 to 72 min");
    }

    /** The nine rows that carry them: constants listed beside the published times, printed digits. */
    @Test
    void constantsGiveTheListedPressureAndPolarizability() {
        Tables.rows("adsorbed-vapours").stream()
                .filter(row -> row.containsKey("at-22"))
                .forEach(row -> {
                    Vapour vapour = Tables.vapour((String) row.get("id"));
                    double listed = Tables.number(row, "at-22");
                    assertEquals(listed, vapour.saturation(22), listed * 1.5e-3, vapour.id());
                    assertEquals(Tables.number(row, "polarizability"), vapour.polarizability(), 0.01, vapour.id());
                });
    }

    /** Lowest and highest edge of every range, refused just outside. */
    @ParameterizedTest(name = "{0} {1} ppm exit {2} at {3} % and {4} C: {5}")
    @CsvSource({
        "methanol,   500,  50, 50, 22, LOW_BOILER",
        "toluene,   1000, 100, 65, 22, ''",
        "toluene,   1001, 100, 65, 22, OUTSIDE_PUBLISHED_RANGE",
        "toluene,   1000, 100, 65.1, 22, TOO_HUMID",
        "toluene,   1000, 100, 50, 40, ''",
        "toluene,   1000, 100, 50, 40.1, OUTSIDE_TEMPERATURE",
        "toluene,   1000, 100, 50, 10, ''",
        "toluene,   1000, 100, 50, 9.9, OUTSIDE_TEMPERATURE",
        "toluene,   1000, 10, 50, 22, ''",
        "toluene,   1000, 9.9, 50, 22, EXIT_LIMIT_TOO_LOW",
        "toluene,     -1, 10, 50, 22, INVALID_VALUE",
        "toluene,    NaN, 10, 50, 22, INVALID_VALUE"
    })
    void modelIsRefusedOutsideItsRange(
            String vapour, double ppm, double exit, double humidity, double temperature, String refusal) {
        GasUse use = new GasUse(ppm, exit, FilterFlow.ofBreathing(FLOW, 1), humidity, temperature, false, false);
        Reckoning<TimeBound> bound = Tables.model().bound(Tables.vapour(vapour), PUBLISHED_BED, use);
        assertEquals(refusal, bound.value().isPresent() ? "" : bound.status().name(), bound::toString);
    }

    /** Measured 0 and 3 min against model 2 and 5 min (OSHA guidance, comparison page). */
    @Test
    void methanolIsBarredEvenWhereItsBoilingPointWouldPass() {
        Vapour methanol = Tables.vapour("methanol");
        Vapour justAbove = new Vapour("methanol", 32.04, 0.7914, 1.3288, 65.1, 7.87863, 1473.11, 230, false);
        GasUse use = new GasUse(500, 50, FilterFlow.ofBreathing(FLOW, 1), 40, 22, false, false);
        assertTrue(methanol.boilingPoint() <= 65);
        assertEquals(
                Soundness.MODEL_DOES_NOT_HOLD,
                Tables.model().bound(justAbove, PUBLISHED_BED, use).status());
    }

    @ParameterizedTest
    @ValueSource(doubles = {600, 2000, 20000})
    void thinBedAtBlowerFlowBreaksThroughAtOnceInsteadOfGivingANegativeTime(double flow) {
        CarbonBed thin = new CarbonBed.Measured(5, 0.45, 40);
        GasUse use = new GasUse(1000, 10, FilterFlow.ofBlower(flow, 1), 40, 22, false, false);
        Reckoning<TimeBound> bound = Tables.model().bound(Tables.vapour("toluene"), thin, use);
        assertEquals(Soundness.BREAKS_THROUGH_AT_ONCE, bound.status());
    }

    @Test
    void belowThePublishedConcentrationTheTimeAtItsLowestIsUsedAndSaid() {
        Reckoned<TimeBound> low = (Reckoned<TimeBound>) at(5, 5);
        Reckoned<TimeBound> edge = (Reckoned<TimeBound>) at(50, 5);
        assertEquals(edge.result().minutes(), low.result().minutes(), 1e-9);
        assertTrue(low.remarks().get(0).contains("50 ppm"));
    }

    /** Hand check of the curve: its ends are the published exit fractions, each point the bare time over the allowance. */
    @Test
    void curveRunsBetweenThePublishedExitFractions() {
        Vapour toluene = Tables.vapour("toluene");
        List<CurvePoint> curve = Tables.model().curve(toluene, PUBLISHED_BED, 1000, FLOW, 22, 3);
        double[] fractions = {0.01, Math.sqrt(0.01 * 0.10), 0.10};
        assertEquals(3, curve.size());
        for (int i = 0; i < 3; i++) {
            assertEquals(fractions[i], curve.get(i).exitFraction(), 1e-12);
            double bare = Tables.model().minutes(toluene, PUBLISHED_BED, 1000, fractions[i], FLOW, 22);
            assertEquals(
                    bare / Tables.value("adsorption-model", "worst-overrun"),
                    curve.get(i).minutes(),
                    1e-9);
        }
        assertEquals(
                0.01,
                Tables.model()
                        .curve(toluene, PUBLISHED_BED, 1000, FLOW, 22, 1)
                        .get(0)
                        .exitFraction());
    }

    @Test
    void thinBedHasNoCurve() {
        CarbonBed thin = new CarbonBed.Measured(5, 0.45, 40);
        assertEquals(List.of(), Tables.model().curve(Tables.vapour("toluene"), thin, 1000, 2000, 22, 5));
    }

    /** Cyclohexane itself at the test of class A2, 0.5 % by volume, and thinner: the share by the isotherm, in moles. */
    @Test
    void vapourIsComparedWithTheTestGasInMoles() {
        Vapour gas = Tables.vapour("cyclohexane");
        Vapour toluene = Tables.vapour("toluene");
        TestCapacity test = Tables.test("A2", "cyclohexane");
        double used = Tables.model().capacity(toluene, 50, 20) / 92.14;
        double tested = Tables.model().capacity(gas, 5000, 20) / 84.16;
        HeldLike held = Tables.model().heldLike(toluene, 20, 20, gas, test);
        assertEquals(used / tested, held.share(), 1e-12, "not below the lowest published concentration");
        assertEquals(50, held.floorPpm());
        assertTrue(held.warmAirCounted());
        assertEquals(
                "held at " + Math.round(100 * used / tested) + " % of the test gas by the adsorption isotherm",
                held.because());
    }

    @ParameterizedTest(name = "boiling at {0} C, model holds {1}: {2}")
    @CsvSource({"65, true, false", "65.1, true, true", "110.6, false, false"})
    void holdingIsShownForOrdinaryVapoursOnly(double boils, boolean holds, boolean shown) {
        Vapour vapour = new Vapour("x", 92.14, 0.865, 1.4961, boils, 6.95464, 1344.8, 219.482, holds);
        HeldLike held = Tables.model()
                .heldLike(vapour, 100, 20, Tables.vapour("cyclohexane"), Tables.test("A2", "cyclohexane"));
        assertEquals(shown, held.shown());
        assertEquals(shown, held.share() > 0);
        GasUse use = new GasUse(100, 10, FilterFlow.ofBreathing(FLOW, 1), 40, 22, false, false);
        assertEquals(
                shown, Tables.model().bound(vapour, PUBLISHED_BED, use).value().isPresent());
    }

    /** OSHA guidance, static table: 50 to 1000 ppm, up to 50 % humidity, corrected from 65 % on. */
    @ParameterizedTest(name = "{0} ppm at {1} %: {2}")
    @CsvSource({
        "50, 50, ''",
        "49.9, 50, 'Below the published range: the time at 50 ppm is used.'",
        "50, 50.1, 'Above 50 % humidity carbon may hold less; the published table corrects from 65 % on. Change early.'"
    })
    void edgeOfThePublishedRangeIsSaid(double ppm, double humidity, String remark) {
        GasUse use = new GasUse(ppm, 5, FilterFlow.ofBreathing(FLOW, 1), humidity, 22, false, false);
        Reckoned<TimeBound> bound =
                (Reckoned<TimeBound>) Tables.model().bound(Tables.vapour("toluene"), PUBLISHED_BED, use);
        assertEquals(remark, String.join(" ", bound.remarks()));
    }

    @Test
    void sentencesGiveTheFiguresOfTheUse() {
        Reckoned<TimeBound> bound = (Reckoned<TimeBound>) at(1000, 50);
        assertEquals(
                "Model for toluene: 1000 ppm at 53.3 L/min through 52 g of carbon at 22 C, until 5 % comes"
                        + " through. The time is divided by 1.072 for the model's worst error.",
                bound.result().says());
        Refused<TimeBound> refused = (Refused<TimeBound>) at(1000, 9);
        assertEquals(
                "Only 0.9 % may come through; the model was published from 1 % on. Use supplied air.",
                refused.sentence());
        assertEquals(Soundness.EXIT_LIMIT_TOO_LOW, refused.status());
        assertEquals(
                ((Reckoned<TimeBound>) at(1000, 10)).result().minutes(),
                refused.shortens().orElseThrow().minutes(),
                1e-9,
                "still shortens, by the time at the lowest published fraction");
    }

    /** Velocity by hand: 60 L/min through 100 cm2 is 10 cm/s; 0.45 g/cm3 times (0.1 + 0.027) s/cm. */
    @Test
    void bedResistsByVelocity() {
        assertEquals(0.05715, new CarbonBed.Measured(120, 0.45, 100).resistanceToMassTransfer(60, 0.027), 1e-12);
        CarbonBed lumped = new CarbonBed.Lumped(52, 0.03, 60);
        assertEquals(0.03, lumped.resistanceToMassTransfer(60, 0.027), 1e-12);
        assertEquals(0.03, lumped.resistanceToMassTransfer(120, 0.027), 1e-12);
        assertEquals(0.06, lumped.resistanceToMassTransfer(30, 0.027), 1e-12, "half the flow, twice the resistance");
    }

    private static Reckoning<TimeBound> at(double ppm, double exit) {
        GasUse use = new GasUse(ppm, exit, FilterFlow.ofBreathing(FLOW, 1), 50, 22, false, false);
        return Tables.model().bound(Tables.vapour("toluene"), PUBLISHED_BED, use);
    }

    private static double bound(Vapour vapour, double ppm, double exit) {
        GasUse use = new GasUse(ppm, exit, FilterFlow.ofBreathing(FLOW, 1), 50, 22, false, false);
        return Tables.model()
                .bound(vapour, PUBLISHED_BED, use)
                .value()
                .orElseThrow()
                .minutes();
    }

    /** A liquid boils where its vapour pressure is one atmosphere: holds the constants from memory against their boiling points. */
    @Test
    void everyVapourBoilsAtItsBoilingPoint() {
        Tables.rows("adsorbed-vapours").forEach(row -> {
            Vapour vapour = Tables.vapour((String) row.get("id"));
            assertEquals(760, vapour.saturation(Tables.number(row, "boiling-point")), 7.6, vapour.id());
        });
    }
}
