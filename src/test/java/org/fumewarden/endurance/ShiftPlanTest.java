package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shift plans; quick charge to 80 % and the 5 % reserve are common practice, no source. */
class ShiftPlanTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    @Test
    void fullPackThatOutlastsTheShiftNeedsNothing() {
        ShiftPlan plan = plan(needs(500, 500, 0, NEVER, 0, false, 0));
        assertTrue(plan.lasts());
        assertTrue(plan.steps().isEmpty());
        assertTrue(plan.words(0).get(0).startsWith("Lasts"));
    }

    @Test
    void planThatDoesNotLastSaysSoFirstWithTheSmallestChange() {
        ShiftPlan plan = plan(needs(300, 300, 0, NEVER, 0, false, 0));
        assertFalse(plan.lasts());
        assertEquals(150, plan.shortByMinutes(), "450 min of wear, 300 of run");
        assertEquals(new Remedy(1, 0, false, false), plan.remedy().orElseThrow());
        assertEquals(
                "DOES NOT LAST THE SHIFT: 2 h 30 min of wear too short. Smallest change: carry 1 more charged pack.",
                plan.words(1).get(0));
    }

    @Test
    void chargingTheFittedPackIsSmallerThanCarryingAnother() {
        ShiftPlan plan = plan(needs(460, 200, 0, NEVER, 0, false, 0));
        assertEquals(new Remedy(0, 0, true, false), plan.remedy().orElseThrow());
    }

    @Test
    void quickChargeInTheBreaksHelpsUpToEightyPercent() {
        // 400 min full; one break of 60 min at 1 % a minute adds at most up to 0.75/0.95 of a full run, 315.8 min
        ShiftNeeds needs = new ShiftNeeds(
                List.of(240.0, 240.0), List.of(60.0), 400, 400, 0, NEVER, 0, false, 0.01, Tables.packRules());
        ShiftPlan plan = plan(needs);
        assertEquals(80, plan.shortByMinutes());
        assertEquals(new Remedy(0, 0, false, true), plan.remedy().orElseThrow());
        ShiftPlan charged = plan(needs.with(new Remedy(0, 0, false, true)));
        assertTrue(charged.lasts());
        assertEquals(PlanStep.Action.QUICK_CHARGE, charged.steps().get(0).action());
    }

    @Test
    void quickChargeStopsAtItsShare() {
        // a day-long break still gives no more than 400 * 0.75 / 0.95 = 315.79 min
        ShiftNeeds needs = new ShiftNeeds(
                List.of(240.0, 316.0), List.of(1400.0), 400, 400, 0, NEVER, 0, true, 0.01, Tables.packRules());
        assertFalse(plan(needs).lasts());
        ShiftNeeds shorter = new ShiftNeeds(
                List.of(240.0, 315.0), List.of(1400.0), 400, 400, 0, NEVER, 0, true, 0.01, Tables.packRules());
        assertTrue(plan(shorter).lasts());
    }

    @Test
    void swapIsPutInTheBreakWhenThePackWouldRunOutAfterIt() {
        ShiftPlan plan = plan(needs(300, 300, 1, NEVER, 0, false, 0));
        assertTrue(plan.lasts());
        assertEquals(List.of(new PlanStep(240, PlanStep.Action.SWAP_PACK, true)), plan.steps());
        assertEquals(1, plan.packsToCarry());
    }

    @Test
    void swapOutsideABreakTellsTheWearerToLeaveFirst() {
        ShiftPlan plan = plan(needs(100, 100, 4, NEVER, 0, false, 0));
        assertTrue(plan.lasts());
        assertTrue(plan.steps().stream().anyMatch(step -> !step.inBreak()));
        assertTrue(plan.words(0).stream().anyMatch(words -> words.contains("leave the hazardous area and")));
    }

    @Test
    void cloggedFilterIsNotCuredByPacks() {
        ShiftPlan plan = plan(needs(500, 500, 0, 200, 0, false, 0));
        assertEquals(250, plan.shortByMinutes());
        assertEquals(new Remedy(0, 2, false, false), plan.remedy().orElseThrow());
    }

    @Test
    void nothingHelpsWhenAFilterClogsAtOnce() {
        ShiftPlan plan = plan(needs(500, 500, 0, 0, 0, false, 0));
        assertEquals(Optional.empty(), plan.remedy());
        assertTrue(plan.words(0).get(0).contains("supplied air"));
    }

    @Test
    void remedyIsSufficientAndSmallest() {
        Random random = new Random(12941);
        int failing = 0;
        for (int i = 0; i < 3000; i++) {
            double full = 60 + random.nextInt(400);
            ShiftNeeds needs = needs(
                    full,
                    full * random.nextDouble(),
                    random.nextInt(2),
                    random.nextBoolean() ? NEVER : 50 + random.nextInt(400),
                    random.nextInt(2),
                    random.nextBoolean(),
                    random.nextBoolean() ? 0.01 : 0);
            ShiftPlan plan = plan(needs);
            if (!plan.lasts()) {
                failing++;
                Remedy remedy = plan.remedy().orElseThrow();
                assertTrue(plan(needs.with(remedy)).lasts(), needs::toString);
                if (remedy.moreFilters() > 0) {
                    assertFalse(
                            plan(needs.with(new Remedy(remedy.morePacks() + 5, remedy.moreFilters() - 1, true, true)))
                                    .lasts(),
                            needs::toString);
                }
                if (remedy.morePacks() > 0) {
                    assertFalse(
                            plan(needs.with(new Remedy(
                                            remedy.morePacks() - 1,
                                            remedy.moreFilters(),
                                            remedy.startFull(),
                                            remedy.chargeInBreaks())))
                                    .lasts(),
                            needs::toString);
                }
                assertTrue(plan.shortByMinutes() > 0);
            }
        }
        assertTrue(failing > 500);
    }

    @Test
    void impossibleShiftsAreRefused() {
        assertEquals(
                Soundness.INVALID_VALUE,
                ShiftPlan.of(needs(0, 0, 0, NEVER, 0, false, 0)).status());
        assertEquals(
                Soundness.INVALID_VALUE,
                ShiftPlan.of(needs(100, 101, 0, NEVER, 0, false, 0)).status());
        assertEquals(
                Soundness.INVALID_VALUE,
                ShiftPlan.of(needs(100, 100, 0, Double.NaN, 0, false, 0)).status());
        ShiftNeeds noBreak =
                new ShiftNeeds(List.of(10.0, 10.0), List.of(), 100, 100, 0, NEVER, 0, false, 0, Tables.packRules());
        assertEquals(Soundness.INVALID_VALUE, ShiftPlan.of(noBreak).status());
    }

    /** By hand: 10 min at 1 % a minute add 0.1 of 380/0.95 = 400 min to the 50 left; 90 in all, below 0.75 x 400. */
    @Test
    void chargeOfABreakIsReckonedToTheMinute() {
        ShiftPlan enough = plan(charging(90));
        assertTrue(enough.lasts());
        assertEquals(List.of(new PlanStep(50, PlanStep.Action.QUICK_CHARGE, true)), enough.steps());
        assertEquals(1, plan(charging(91)).shortByMinutes());
    }

    private static ShiftNeeds charging(double secondStretch) {
        return new ShiftNeeds(
                List.of(50.0, secondStretch), List.of(10.0), 380, 100, 0, NEVER, 0, true, 0.01, Tables.packRules());
    }

    @Test
    void packAboveTheQuickChargeIsLeftAlone() {
        // 310 of 400 min are left, the quick charge ends at 315.8; a later break finds 316 and more untouched
        ShiftNeeds low = new ShiftNeeds(
                List.of(90.0, 300.0), List.of(30.0), 400, 400, 0, NEVER, 0, true, 0.01, Tables.packRules());
        assertEquals(1, plan(low).steps().size());
        ShiftNeeds high = new ShiftNeeds(
                List.of(80.0, 300.0), List.of(30.0), 400, 400, 0, NEVER, 0, true, 0.01, Tables.packRules());
        assertEquals(List.of(), plan(high).steps());
    }

    @Test
    void changeInABreakIsMadeOnlyWhereItIsNeededAndEnough() {
        assertEquals(List.of(), plan(stretches(100, 200, 300, 1, NEVER, 0)).steps(), "200 min of the pack are left");
        assertEquals(
                List.of(new PlanStep(100, PlanStep.Action.SWAP_PACK, true)),
                plan(stretches(100, 300, 300, 3, NEVER, 0)).steps(),
                "a full pack lasts just as long as the work ahead");
        assertEquals(
                List.of(new PlanStep(300, PlanStep.Action.SWAP_PACK, false)),
                plan(stretches(100, 301, 300, 1, NEVER, 0)).steps(),
                "no pack lasts that long, so the fitted one is used up: 100 + 200 of wear, the break of 30 not counted");
        assertEquals(List.of(), plan(stretches(100, 200, 500, 0, 300, 1)).steps(), "200 min of the filter are left");
        assertEquals(
                List.of(new PlanStep(100, PlanStep.Action.CHANGE_FILTER, true)),
                plan(stretches(100, 300, 500, 0, 300, 3)).steps());
        assertEquals(
                List.of(new PlanStep(300, PlanStep.Action.CHANGE_FILTER, false)),
                plan(stretches(100, 301, 500, 0, 300, 1)).steps());
        assertEquals(
                List.of(
                        new PlanStep(100, PlanStep.Action.SWAP_PACK, true),
                        new PlanStep(100, PlanStep.Action.CHANGE_FILTER, true)),
                plan(stretches(100, 250, 300, 1, 300, 1)).steps());
    }

    @Test
    void filterThatIsNotAtHandIsNotFitted() {
        ShiftPlan plan = plan(stretches(100, 250, 500, 0, 300, 0));
        assertEquals(50, plan.shortByMinutes());
        assertEquals(List.of(new PlanStep(300, PlanStep.Action.STOP, false)), plan.steps());
    }

    @Test
    void onlyWhatTheShiftNeedsIsCarried() {
        ShiftPlan plan = plan(stretches(100, 300, 300, 3, 300, 2));
        assertEquals(
                "Carry: the flow indicator, 1 charged spare pack, 1 new filter set, 2 pre-filters. Check the flow"
                        + " after every change.",
                plan.words(2).get(3));
    }

    /** The plan stops at 200 min with the clogged filter, before the pack is spent; with new filters it needs the pack. */
    @Test
    void whatIsCarriedCountsWhatTheRemedyMakesPossible() {
        ShiftPlan plan = plan(needs(300, 300, 1, 200, 0, false, 0));
        assertEquals(new Remedy(0, 2, false, false), plan.remedy().orElseThrow());
        assertEquals(1, plan.packsToCarry());
        assertEquals(2, plan.filtersToCarry());
        assertEquals("carry 2 more filter sets", plan.remedy().orElseThrow().words());
        assertEquals("carry 1 more filter set", new Remedy(0, 1, false, false).words());
        assertEquals(
                "charge the fitted pack fully before the shift, quick charge the pack in the breaks, carry 2 more"
                        + " charged packs",
                new Remedy(2, 0, true, true).words());
        ShiftPlan more = plan(needs(300, 300, 0, 200, 0, false, 0));
        assertEquals(new Remedy(1, 2, false, false), more.remedy().orElseThrow());
        assertEquals(1, more.packsToCarry());
        assertEquals(
                "DOES NOT LAST THE SHIFT: 4 h 10 min of wear too short. Smallest change: carry 1 more charged pack, carry 2"
                        + " more filter sets.",
                more.words(0).get(0));
    }

    @Test
    void remedyIsSoughtUpToTwentyFourPacks() {
        assertEquals(
                new Remedy(24, 0, false, false),
                plan(needs(18, 18, 0, NEVER, 0, false, 0)).remedy().orElseThrow());
        assertEquals(
                Optional.empty(), plan(needs(17.9, 17.9, 0, NEVER, 0, false, 0)).remedy());
    }

    /** Where charging does nothing, the remedy does not ask for it. */
    @Test
    void remedyAsksForNothingThatDoesNotHelp() {
        ShiftNeeds full = needs(400, 400, 0, NEVER, 0, true, 0.0001);
        assertEquals(new Remedy(1, 0, false, false), plan(full).remedy().orElseThrow());
    }

    @ParameterizedTest(name = "work {0}, break {1}: refused {2}")
    @CsvSource({
        "1, 0, false",
        "1440, 1440, false",
        "0.9, 0, true",
        "1440.1, 0, true",
        "NaN, 0, true",
        "60, -0.1, true",
        "60, 1440.1, true",
        "60, NaN, true"
    })
    void stretchesAndBreaksOfADayAreTaken(double work, double pause, boolean refused) {
        ShiftNeeds needs = new ShiftNeeds(
                List.of(60.0, work), List.of(pause), 100, 100, 0, NEVER, 0, false, 0, Tables.packRules());
        assertEquals(refused, ShiftPlan.of(needs).value().isEmpty());
    }

    /** 0 to 45 C for charging: from memory, as the table says. */
    @ParameterizedTest(name = "{0} C: {1}")
    @CsvSource({"-0.1, false", "0, true", "20, true", "45, true", "45.1, false", "NaN, false"})
    void packIsChargedOnlyBetweenItsTemperatures(double temperature, boolean allowed) {
        assertEquals(allowed, Tables.packRules().mayCharge(temperature));
    }

    private static ShiftNeeds stretches(
            double first, double second, double pack, int packs, double filter, int filters) {
        return new ShiftNeeds(
                List.of(first, second),
                List.of(30.0),
                pack,
                pack,
                packs,
                filter,
                filters,
                false,
                0,
                Tables.packRules());
    }

    private static ShiftNeeds needs(
            double full, double start, int packs, double filter, int filters, boolean charge, double rate) {
        return new ShiftNeeds(
                List.of(240.0, 210.0),
                List.of(30.0),
                full,
                start,
                packs,
                filter,
                filters,
                charge,
                rate,
                Tables.packRules());
    }

    private static ShiftPlan plan(ShiftNeeds needs) {
        return ShiftPlan.of(needs).value().orElseThrow(() -> new AssertionError(ShiftPlan.of(needs)));
    }
}
