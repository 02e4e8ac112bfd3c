package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TestCapacityTest {
    /** EN 14387:2004+A1:2008, the capacity in millilitres of vapour of every line. */
    @ParameterizedTest(name = "{0} {1}: {2} mL")
    @CsvSource({
        "A1, cyclohexane, 2100", "A2, cyclohexane, 5250", "A3, cyclohexane, 15600",
        "B1, chlorine, 600", "B2, hydrogen-sulfide, 6000", "B3, hydrogen-cyanide, 10500",
        "E2, sulfur-dioxide, 3000", "K1, ammonia, 1500", "K3, ammonia, 18000"
    })
    void testsProveTheseMillilitres(String mark, String gas, double millilitres) {
        assertEquals(millilitres, Tables.test(mark, gas).millilitresOfVapour(), 1e-6);
    }

    /** WE-45: EN 14387 class A2, lower bound on a powered unit, derived; blower flow, not breathing. */
    @Test
    void blowerFlowAndNotBreathingSetsTheLowerBound() {
        double capacity = Tables.test("A2", "cyclohexane").millilitresOfVapour();
        FilterFlow blower = FilterFlow.ofBlower(180, 1);
        assertEquals(145.8, TestCapacityBound.minutes(capacity, 200, blower.litresPerMinute()), 0.05);
        assertEquals(875, TestCapacityBound.minutes(capacity, 200, 30), 0.05, "what breathing would wrongly promise");
    }

    @Test
    void flowAboveTheTestMayNotStandAlone() {
        HeldLike held = HeldLike.testGasBoundByReaction();
        TestCapacity test = Tables.test("B2", "hydrogen-sulfide");
        Reckoned<TimeBound> blower =
                (Reckoned<TimeBound>) TestCapacityBound.bound(test, use(200, 10, 30.1, 70, 20), held, false);
        Reckoned<TimeBound> asTested =
                (Reckoned<TimeBound>) TestCapacityBound.bound(test, use(200, 10, 30, 70, 20), held, false);
        assertFalse(blower.result().standsAlone());
        assertFalse(blower.remarks().isEmpty());
        assertTrue(asTested.result().standsAlone());
    }

    @Test
    void flowAboveTheTestIsPutInWords() {
        Reckoned<TimeBound> bound = (Reckoned<TimeBound>) TestCapacityBound.bound(
                Tables.test("B2", "hydrogen-sulfide"),
                use(200, 10, 180, 70, 20),
                HeldLike.testGasBoundByReaction(),
                false);
        assertEquals(
                "The filter was tested at 30 L/min and meets 180 L/min, where its bed is used less fully. Do not rely"
                        + " on this time alone. Ask the manufacturer for a test at the flow of this unit.",
                bound.remarks().get(0));
    }

    /** 42 CFR 84.207: minimum life halved where one cartridge covers more than one type of gas. */
    @Test
    void cartridgeForSeveralTypesHasHalfTheLife() {
        HeldLike held = HeldLike.testGasBoundByReaction();
        TestCapacity chlorine = Tables.cartridge("chlorine", "chlorine");
        double single = minutes(TestCapacityBound.bound(chlorine, use(5, 5, 64, 50, 25), held, false));
        double several = minutes(TestCapacityBound.bound(chlorine, use(5, 5, 64, 50, 25), held, true));
        assertEquals(single / 2, several, 1e-9);
    }

    /** Conditions of the test after EN 14387: 70 % relative humidity, 20 C, its own end point. */
    @ParameterizedTest(name = "{0} ppm exit {1} at {2} % and {3} C: {4}")
    @CsvSource({
        "5000, 10, 70, 20, ''",
        "5001, 10, 70, 20, ABOVE_TEST_CONCENTRATION",
        "5000, 9.9, 70, 20, EXIT_LIMIT_TOO_LOW",
        "5000, 10, 70.1, 20, TOO_HUMID",
        "5000, 10, 70, 20.1, OUTSIDE_TEMPERATURE",
        "0, 10, 70, 20, INVALID_VALUE"
    })
    void boundIsRefusedOutsideTheTest(double ppm, double exit, double humidity, double temperature, String refusal) {
        Reckoning<TimeBound> bound = TestCapacityBound.bound(
                Tables.test("B2", "hydrogen-sulfide"),
                use(ppm, exit, 30, humidity, temperature),
                HeldLike.testGasBoundByReaction(),
                false);
        assertEquals(refusal, bound.value().isPresent() ? "" : bound.status().name());
    }

    @Test
    void agentNotShownToBeHeldIsRefused() {
        Reckoning<TimeBound> bound = TestCapacityBound.bound(
                Tables.test("B2", "chlorine"), use(5, 1, 30, 50, 20), HeldLike.notShown(), false);
        assertEquals(Soundness.HOLDING_NOT_SHOWN, bound.status());
    }

    /** A tenth of the vapour is held less firmly: the isotherm share falls, so the bound grows less than tenfold. */
    @Test
    void vapourAtLowConcentrationGetsNoMoreThanItsIsothermShare() {
        TestCapacity test = Tables.test("A2", "cyclohexane");
        HeldLike thin =
                Tables.model().heldLike(Tables.vapour("cyclohexane"), 50, 20, Tables.vapour("cyclohexane"), test);
        HeldLike same =
                Tables.model().heldLike(Tables.vapour("cyclohexane"), 5000, 20, Tables.vapour("cyclohexane"), test);
        assertEquals(1, same.share(), 1e-12);
        assertTrue(thin.share() < 0.8 && thin.share() > 0.3, thin::toString);
    }

    private static GasUse use(double ppm, double exit, double flow, double humidity, double temperature) {
        return new GasUse(ppm, exit, FilterFlow.ofBlower(flow, 1), humidity, temperature, false, false);
    }

    private static double minutes(Reckoning<TimeBound> bound) {
        return bound.value().orElseThrow().minutes();
    }
}
