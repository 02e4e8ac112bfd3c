package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunTimeTest {
    private static final PackRules RULES = Tables.packRules();

    @Test
    void modelSolvesItsOwnEnergyBalance() {
        FilterPressure pressure = new FilterPressure(200, 90, 0.05, Tables.blower("cake-resistance"));
        DustLoad load = DustLoad.of(5, 180, 1, 0).value().orElseThrow();
        BlowerModel blower =
                new BlowerModel(180, 2, 200, 5000, Tables.blower("efficiency"), Tables.blower("electronics"));
        RunTime run = blower.runTime(Span.exactly(40), load, pressure).value().orElseThrow();
        double growth = load.onMainFilter() / 2 * pressure.perMilligram(90, 5e5);
        double minutes = run.minutes().likely();
        // independent: sum the power minute by minute until the energy is gone
        double spent = 0;
        int steps = 200_000;
        for (int i = 0; i < steps; i++) {
            double at = (i + 0.5) * minutes / steps;
            spent += blower.electricPower(200 + growth * at, 0.25, 0.5) * minutes / steps / 60;
        }
        assertEquals(40, spent, 1e-6);
        assertEquals(RunTime.Basis.MODELLED, run.basis());
        assertTrue(run.minutes().low() < minutes && minutes < run.minutes().high());
    }

    @Test
    void cloggedFilterEndsTheRunAtMinimumFlow() {
        FilterPressure pressure = new FilterPressure(200, 90, 0.02, Tables.blower("cake-resistance"));
        DustLoad load = DustLoad.of(20, 180, 1, 0).value().orElseThrow();
        BlowerModel blower =
                new BlowerModel(180, 2, 200, 500, Tables.blower("efficiency"), Tables.blower("electronics"));
        RunTime run = blower.runTime(Span.exactly(100), load, pressure).value().orElseThrow();
        assertEquals(RunTime.End.MINIMUM_FLOW, run.end());
        // room 300 Pa; 1.8 mg/min a filter; 1e6 * 1e-6 / 0.02 * (90/60000/0.02) = 3.75 Pa/mg; 300 / 6.75
        assertEquals(300 / (1.8 * 3.75), run.minutes().low(), 1e-9);
        assertEquals(
                Soundness.BELOW_MINIMUM_FLOW,
                new BlowerModel(180, 2, 500, 500, Tables.blower("efficiency"), Tables.blower("electronics"))
                        .runTime(Span.exactly(100), load, pressure)
                        .status());
    }

    @Test
    void cleanAirRunsOnConstantPower() {
        FilterPressure pressure = new FilterPressure(200, 90, 0.05, Tables.blower("cake-resistance"));
        DustLoad none = DustLoad.of(0, 180, 1, 0).value().orElseThrow();
        BlowerModel blower =
                new BlowerModel(180, 2, 200, 500, Tables.blower("efficiency"), Tables.blower("electronics"));
        RunTime run = blower.runTime(Span.exactly(40), none, pressure).value().orElseThrow();
        // 0.6 W of air / 0.25 + 0.5 W = 2.9 W
        assertEquals(40 / 2.9 * 60, run.minutes().likely(), 1e-6);
        assertEquals(RunTime.End.RESERVE, run.end());
    }

    /** Reserve of 5 %: common practice, no source. */
    @ParameterizedTest(name = "charge {0}: {1} Wh")
    @CsvSource({"1, 95", "0.55, 50", "0.051, 0.1"})
    void reserveIsKeptBack(double charge, double wattHours) {
        Pack pack = new Pack(100, charge, 0, 0, OptionalDouble.empty());
        Span usable = PackShare.usable(pack, RULES, Tables.cold(), 20).value().orElseThrow();
        assertEquals(wattHours, usable.likely(), 1e-9);
    }

    @ParameterizedTest(name = "charge {0} at {1} C: {2}")
    @CsvSource({
        "0.05, 20, BELOW_RESERVE",
        "0, 20, BELOW_RESERVE",
        "1.1, 20, INVALID_VALUE",
        "1, -21, OUTSIDE_TEMPERATURE",
        "1, 46, OUTSIDE_TEMPERATURE",
        "1, NaN, OUTSIDE_TEMPERATURE"
    })
    void packOutsideItsRulesIsRefused(double charge, double temperature, Soundness refusal) {
        Pack pack = new Pack(100, charge, 0, 0, OptionalDouble.empty());
        assertEquals(
                refusal,
                PackShare.usable(pack, RULES, Tables.cold(), temperature).status());
    }

    /** About 80 % at 0 C (memory); stored a year at 25 C: 80 % left full, 96 % part-charged (two open tables). */
    @Test
    void coldAndAgeWidenTheRangeAndLowerIt() {
        Pack fresh = new Pack(100, 1, 0, 0, OptionalDouble.empty());
        Pack aged = new Pack(100, 1, 1, 0, OptionalDouble.empty());
        assertEquals(
                0.80,
                PackShare.of(fresh, RULES, Tables.cold(), 0)
                        .value()
                        .orElseThrow()
                        .likely(),
                1e-12);
        Span year = PackShare.of(aged, RULES, Tables.cold(), 20).value().orElseThrow();
        assertEquals(0.80, year.low(), 1e-12);
        assertEquals(0.96, year.high(), 1e-12);
        Pack worn = new Pack(100, 1, 0, 300, OptionalDouble.empty());
        assertEquals(
                0.80,
                PackShare.of(worn, RULES, Tables.cold(), 20)
                        .value()
                        .orElseThrow()
                        .low(),
                1e-12);
    }

    /** By hand between -20 C (0.50, 0.60, 0.70) and 0 C (0.75, 0.80, 0.85), a quarter of the way up. */
    @Test
    void coldIsReadOnStraightLines() {
        Span quarter = Tables.cold().share(-15).value().orElseThrow();
        assertEquals(0.5625, quarter.low(), 1e-12);
        assertEquals(0.65, quarter.likely(), 1e-12);
        assertEquals(0.7375, quarter.high(), 1e-12);
        assertEquals(new Span(0.5, 0.6, 0.7), Tables.cold().share(-20).value().orElseThrow());
        assertEquals(Span.exactly(1), Tables.cold().share(45).value().orElseThrow());
        Refused<Span> refused = (Refused<Span>) Tables.cold().share(Double.NaN);
        assertTrue(refused.sentence().startsWith("NaN C is outside the table of the pack, -20 C to 45 C."));
    }

    @Test
    void coldTableRisesByTemperature() {
        ColdTable.Row zero = new ColdTable.Row(0, Span.exactly(0.8));
        ColdTable.Row warm = new ColdTable.Row(20, Span.exactly(1));
        ColdTable.Row hot = new ColdTable.Row(45, Span.exactly(1));
        assertEquals(2, new ColdTable(List.of(zero, warm)).rows().size());
        assertThrows(IllegalArgumentException.class, () -> new ColdTable(List.of(zero)));
        assertThrows(IllegalArgumentException.class, () -> new ColdTable(List.of(zero, zero)));
        assertThrows(IllegalArgumentException.class, () -> new ColdTable(List.of(warm, zero, hot)));
        assertThrows(IllegalArgumentException.class, () -> new ColdTable(List.of(zero, hot, warm)));
    }

    /** By hand: 3 years and 150 cycles; low 0.8^3 x 0.9, high 0.96^3 x 0.94, likely the root of their product. */
    @Test
    void ageAndCyclesMultiply() {
        Pack pack = new Pack(100, 1, 3, 150, OptionalDouble.empty());
        Span share = PackShare.of(pack, RULES, Tables.cold(), 20).value().orElseThrow();
        assertEquals(0.4608, share.low(), 1e-9);
        assertEquals(0.83165184, share.high(), 1e-9);
        assertEquals(Math.sqrt(0.4608 * 0.83165184), share.likely(), 1e-9);
    }

    @Test
    void healthAndColdMultiply() {
        Pack pack = new Pack(100, 1, 0, 0, OptionalDouble.of(0.9));
        Span share = PackShare.of(pack, RULES, Tables.cold(), 0).value().orElseThrow();
        assertEquals(new Span(0.9 * 0.75, 0.9 * 0.8, 0.9 * 0.85), share);
    }

    @ParameterizedTest(name = "health {0}: {1}")
    @CsvSource({"0.8, ''", "0.79, 'The pack has probably less than 80 % of its capacity left: replace it.'"})
    void packBelowItsEndOfLifeIsToBeReplaced(double health, String remark) {
        Pack pack = new Pack(100, 1, 0, 0, OptionalDouble.of(health));
        Reckoned<Span> share = (Reckoned<Span>) PackShare.of(pack, RULES, Tables.cold(), 20);
        assertEquals(remark, String.join(" ", share.remarks()));
    }

    @Test
    void emptyPackSaysItsCharge() {
        Pack pack = new Pack(100, 0.04, 0, 0, OptionalDouble.empty());
        Refused<Span> refused = (Refused<Span>) PackShare.usable(pack, RULES, Tables.cold(), 20);
        assertEquals(
                "The pack is at 4 %, not above the reserve of 5 %: do not start work. Fit a charged pack.",
                refused.sentence());
    }

    @ParameterizedTest(name = "{0}, {1}, {2} ending by {3}, {4}: {5}")
    @CsvSource({
        "59.9, 80, 90.5, RESERVE, MODELLED, 'Until the pack is down to its reserve: 59 min to 1 h 30 min, likely 1 h 20 min (modelled).'",
        "60, 60, 60.9, MINIMUM_FLOW, OWN_CURVE, 'Until the flow falls to its minimum: 1 h (by your own curve).'"
    })
    void runTimeIsPutInWords(
            double low, double likely, double high, RunTime.End end, RunTime.Basis basis, String words) {
        assertEquals(words, new RunTime(new Span(low, likely, high), end, basis).words());
    }

    @Test
    void earlierEndIsFoundAtEachPlace() {
        RunTime run = RunTime.earlier(new Span(50, 60, 70), new Span(50, 55, 90), RunTime.Basis.MODELLED);
        assertEquals(new Span(50, 55, 70), run.minutes());
        assertEquals(RunTime.End.RESERVE, run.end(), "both at once: the pack is named");
        assertEquals(
                RunTime.End.MINIMUM_FLOW,
                RunTime.earlier(Span.exactly(50), Span.exactly(49.9), RunTime.Basis.MODELLED)
                        .end());
    }

    @Test
    void wornOutPackIsNamed() {
        Pack worn = new Pack(100, 1, 0, 0, OptionalDouble.of(0.79));
        Reckoned<Span> share = (Reckoned<Span>) PackShare.of(worn, RULES, Tables.cold(), 20);
        assertTrue(share.remarks().get(0).contains("replace"));
    }
}
