package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChangeScheduleTest {
    private static final HeldLike HELD = new HeldLike(true, 1, false, 0, "held at least as well as the test gas");
    private static final CarbonBed BED = new CarbonBed.Measured(120, 0.45, 80);

    /** WE-53: OSHA guidance, rule of thumb: 150 ppm, boiling at 138 C, 90 % humidity, twice the work. */
    @Test
    void ruleOfThumbHalvesForHumidityAndForWork() {
        assertEquals(120, Tables.ruleOfThumb().minutes(150, 2, 90), 1e-9);
    }

    /** OSHA guidance, rule of thumb, on its safe side: never above 8 h, x5 per whole decade down, inverse going up. */
    @ParameterizedTest(name = "{0} ppm, work {1}, {2} %: {3} min")
    @CsvSource({
        "200, 1, 50, 480",
        "199, 1, 50, 480",
        "2, 1, 50, 480",
        "400, 1, 50, 240",
        "2000, 1, 50, 48",
        "200, 6, 50, 80",
        "20, 6, 50, 400",
        "21, 6, 50, 80",
        "200, 0.5, 50, 480",
        "200, 1, 65, 480",
        "200, 1, 65.1, 240"
    })
    void ruleOfThumbIsReadOnItsSafeSide(double ppm, double work, double humidity, double minutes) {
        assertEquals(minutes, Tables.ruleOfThumb().minutes(ppm, work, humidity), 1e-9);
    }

    /** OSHA static table: 200 ppm of toluene last 307 min at 53.3 L/min; the rule must not promise more there. */
    @Test
    void ruleOfThumbStaysBelowThePublishedTolueneTime() {
        GasUse use = new GasUse(200, 20, FilterFlow.ofBreathing(53.3, 1), 50, 22, false, false);
        assertTrue(Tables.ruleOfThumb().bound(110.6, use).value().orElseThrow().minutes() < 307);
    }

    @Test
    void ruleOfThumbAloneGivesNoChangeTime() {
        Reckoning<ChangeTime> time =
                ChangeSchedule.shortest(List.of(Tables.ruleOfThumb().bound(110.6, use(100, 20)), shift()));
        assertEquals(Soundness.NO_METHOD_STANDS, time.status());
    }

    @Test
    void capAndShelfLifeAloneGiveNoChangeTime() {
        Reckoning<ChangeTime> time = ChangeSchedule.shortest(List.of(shift(), shelf(LocalDate.of(2026, 3, 2))));
        assertEquals(Soundness.NO_METHOD_STANDS, time.status());
        assertEquals(
                Soundness.NO_METHOD_STANDS, ChangeSchedule.shortest(List.of()).status());
    }

    @Test
    void shortestBoundWinsAndIsNamed() {
        GasUse use = use(100, 20);
        ChangeTime time = ChangeSchedule.shortest(List.of(
                        shift(),
                        Tables.model().bound(Tables.vapour("toluene"), BED, use),
                        Tables.ruleOfThumb().bound(110.6, use)))
                .value()
                .orElseThrow();
        assertEquals(BoundKind.RULE_OF_THUMB, time.basis().kind());
        assertEquals(80, time.minutes(), "480 min at 30 L/min, here 180 L/min");
        assertTrue(time.basisSentence().contains("rule of thumb"));
        assertTrue(time.basisSentence().startsWith("Change after 1 h 20 min"));
    }

    @Test
    void expiredFilterStopsEverything() {
        GasUse use = use(100, 20);
        Reckoning<ChangeTime> time = ChangeSchedule.shortest(
                List.of(Tables.model().bound(Tables.vapour("toluene"), BED, use), shelf(LocalDate.of(2026, 3, 1))));
        assertEquals(Soundness.EXPIRED, time.status());
    }

    @ParameterizedTest(name = "other gases {0}, used {1}: {2}")
    @CsvSource({"true, false, MIXTURE", "false, true, REUSED"})
    void mixtureOrUsedFilterIsRefusedByEveryMethod(boolean mixture, boolean used, Soundness refusal) {
        GasUse use = new GasUse(100, 20, FilterFlow.ofBlower(180, 1), 50, 20, mixture, used);
        List<Reckoning<TimeBound>> all = List.of(
                Tables.model().bound(Tables.vapour("toluene"), BED, use),
                Tables.ruleOfThumb().bound(110.6, use),
                TestCapacityBound.bound(Tables.test("A2", "cyclohexane"), use, HELD, false),
                Tables.lowBoilerTimes().bound(1, use, 0),
                new MeasuredBreakthrough(100, 500, 10, 200, 0, 70, 30, "a document").bound(use, true));
        all.forEach(bound -> assertEquals(refusal, bound.status()));
        assertEquals(refusal, ChangeSchedule.shortest(all).status());
    }

    /** Methanol boils at 64.7 C: neither a thumb nor a test of cyclohexane carries a time, only a measurement. */
    @Test
    void lowBoilerNeedsAMeasurement() {
        GasUse use = use(100, 20);
        Reckoning<TimeBound> model = Tables.model().bound(Tables.vapour("methanol"), BED, use);
        Reckoning<TimeBound> test = TestCapacityBound.bound(Tables.test("A2", "cyclohexane"), use, HELD, false);
        assertEquals(
                Soundness.NO_METHOD_STANDS,
                ChangeSchedule.shortest(List.of(model, test)).status());
        Reckoning<TimeBound> measured =
                new MeasuredBreakthrough(7, 100, 20, 180, 50, 50, 20, "maker's sheet").bound(use, false);
        assertEquals(
                7,
                ChangeSchedule.shortest(List.of(model, test, measured))
                        .value()
                        .orElseThrow()
                        .minutes());
    }

    /** WE-47: GUV-R 190 Table 13, AX group times; between two lines the stricter. */
    @ParameterizedTest(name = "group {0} at {1} ppm: {2}")
    @CsvSource({
        "2, 5000, 20",
        "2, 1001, 20",
        "2, 1000, 60",
        "1, 100, 40",
        "1, 101, 20",
        "1, 500, 20",
        "1, 501, ABOVE_CLASS_LIMIT",
        "2, 5001, ABOVE_CLASS_LIMIT",
        "3, 10, NOT_HELD",
        "4, 10, NOT_HELD"
    })
    void lowBoilerGroupsHaveTheirTimes(int group, double ppm, String expected) {
        Reckoning<TimeBound> bound = Tables.lowBoilerTimes().bound(group, use(ppm, 20), 0);
        assertEquals(
                expected,
                bound.value()
                        .map(found -> WrittenNumbers.plain(found.minutes()))
                        .orElseGet(() -> bound.status().name()));
    }

    /** WE-59: DGUV Regel 112-190 (before 2021) 3.2.8.2.3: the nominal time runs out even with no gas present. */
    @ParameterizedTest(name = "CO 20 after {0} min: {1}")
    @CsvSource({"0, 20", "19, 1", "20, USED_UP", "25, USED_UP"})
    void carbonMonoxideFilterRunsOutByTheClock(double used, String expected) {
        Reckoning<TimeBound> bound = Tables.useTime("co-20").fixedUseTime(used);
        assertEquals(
                expected,
                bound.value()
                        .map(found -> WrittenNumbers.plain(found.minutes()))
                        .orElseGet(() -> bound.status().name()));
    }

    /** GUV-R 190 p. 32: six months after opening, if the printed date does not come first. */
    @Test
    void shelfLifeEndsWithTheEarlierDate() {
        ShelfLife opened = new ShelfLife(LocalDate.of(2027, 1, 31), Optional.of(LocalDate.of(2026, 1, 10)), 6);
        assertEquals(LocalDate.of(2026, 7, 10), opened.lastDay());
        assertEquals(
                1440,
                opened.bound(LocalDate.of(2026, 7, 10)).value().orElseThrow().minutes());
        assertEquals(Soundness.EXPIRED, opened.bound(LocalDate.of(2026, 7, 11)).status());
        assertEquals(
                Soundness.INVALID_VALUE, opened.bound(LocalDate.of(2026, 1, 9)).status());
    }

    /** A test that carries alone does not carry a vapour for which the agent itself is the difficulty. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "LOW_BOILER, false", "MODEL_DOES_NOT_HOLD, false", "ABOVE_TEST_CONCENTRATION, false",
        "TOO_HUMID, true", "EXIT_LIMIT_TOO_LOW, true", "NOT_GIVEN, true"
    })
    void someReasonsLeaveOnlyAMeasurement(Soundness reason, boolean given) {
        Reckoning<TimeBound> standing = Reckoning.of(new TimeBound(BoundKind.TEST_CAPACITY, 100, "a test", true));
        Reckoning<TimeBound> declined = Reckoning.refuse(reason, "Not here.", "Use supplied air.");
        Reckoning<ChangeTime> time = ChangeSchedule.shortest(List.of(standing, declined));
        assertEquals(given, time.value().isPresent());
        Reckoning<TimeBound> fixed = Reckoning.of(new TimeBound(BoundKind.FIXED_USE_TIME, 40, "a table", false));
        assertEquals(
                40,
                ChangeSchedule.shortest(List.of(standing, declined, fixed))
                        .value()
                        .orElseThrow()
                        .minutes());
    }

    @Test
    void refusalSaysWhatWasTried() {
        Reckoning<TimeBound> thumb = Reckoning.of(new TimeBound(BoundKind.RULE_OF_THUMB, 100, "a thumb", false));
        Reckoning<TimeBound> declined = Reckoning.refuse(Soundness.TOO_HUMID, "Too humid.", "Dry the air.");
        String end =
                " Ask the manufacturer for breakthrough data for this agent and flow. Until then use supplied air.";
        assertEquals(
                "No change time can be given: the only method that gave one may not stand alone. Too humid. Dry the air."
                        + end,
                ((Refused<ChangeTime>) ChangeSchedule.shortest(List.of(thumb, shift(), declined))).sentence());
        assertEquals(
                "No change time can be given: no method holds for this use." + end,
                ((Refused<ChangeTime>) ChangeSchedule.shortest(List.of(shift()))).sentence());
    }

    @ParameterizedTest(name = "{0} min: {1}")
    @CsvSource({"1, 1", "1.9, 1", "0.99, 0"})
    void timeBelowOneMinuteIsNone(double minutes, long expected) {
        Reckoning<ChangeTime> time = ChangeSchedule.shortest(
                List.of(Reckoning.of(new TimeBound(BoundKind.MEASURED, minutes, "a sheet", true))));
        assertEquals(expected, time.value().map(ChangeTime::minutes).orElse(0L));
        if (expected == 0) {
            assertEquals(Soundness.BREAKS_THROUGH_AT_ONCE, time.status());
        }
    }

    @Test
    void basisCountsTheBounds() {
        Reckoning<TimeBound> one = Reckoning.of(new TimeBound(BoundKind.MEASURED, 60, "A sheet.", true));
        Reckoning<TimeBound> two = Reckoning.of(new TimeBound(BoundKind.RULE_OF_THUMB, 100, "A thumb.", false));
        assertEquals(
                "Change after 1 h of use at the latest, sooner on any smell, taste or irritation. Basis: measured"
                        + " breakthrough, the shortest of 3 times. A sheet.",
                ChangeSchedule.shortest(List.of(one, two, shift()))
                        .value()
                        .orElseThrow()
                        .basisSentence());
    }

    @ParameterizedTest(name = "boiling at {0} C: {1}")
    @CsvSource({"65, false", "65.1, true", "NaN, false"})
    void ruleOfThumbHoldsAboveItsBoilingPoint(double boils, boolean held) {
        double lowest = Tables.value("service-life-rules", "lowest-boiling-point");
        assertEquals(
                held,
                Tables.ruleOfThumb()
                        .bound(boils - 65 + lowest, use(100, 20))
                        .value()
                        .isPresent());
    }

    /** Shared by equal filters: 180 L/min over two are 90 each. */
    @Test
    void flowIsSharedByEqualFilters() {
        assertEquals(new FilterFlow(90, true), FilterFlow.ofBlower(180, 2));
        assertEquals(new FilterFlow(20, false), FilterFlow.ofBreathing(40, 2));
    }

    @ParameterizedTest(name = "printed {0}, opened {1}: {2}")
    @CsvSource({
        "2026-07-09, 2026-01-10, 2026-07-09",
        "2026-07-10, 2026-01-10, 2026-07-10",
        "2026-07-11, 2026-01-10, 2026-07-10"
    })
    void printedDateEndsAnOpenedFilterToo(LocalDate printed, LocalDate opened, LocalDate last) {
        assertEquals(last, new ShelfLife(printed, Optional.of(opened), 6).lastDay());
    }

    @Test
    void shelfLifeNeedsADate() {
        LocalDate day = LocalDate.of(2026, 3, 2);
        assertEquals(day, new ShelfLife(day, Optional.of(day), 0).lastDay(), "none after opening");
        assertThrows(IllegalArgumentException.class, () -> new ShelfLife(day, Optional.of(day), -1));
        assertThrows(IllegalArgumentException.class, () -> new ShelfLife(null, Optional.of(day), 6));
    }

    private static Reckoning<TimeBound> shift() {
        return Tables.useTime("one-shift").bound();
    }

    private static Reckoning<TimeBound> shelf(LocalDate expires) {
        return new ShelfLife(expires, Optional.empty(), 6).bound(LocalDate.of(2026, 3, 2));
    }

    private static GasUse use(double ppm, double exit) {
        return new GasUse(ppm, exit, FilterFlow.ofBlower(180, 1), 50, 20, false, false);
    }
}
