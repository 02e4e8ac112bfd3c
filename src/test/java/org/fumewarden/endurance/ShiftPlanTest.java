package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

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
                "DOES NOT LAST THE SHIFT: 150 min of wear short. Smallest change: carry 1 more charged pack.",
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
        assertEquals(1, plan.sparePacksUsed());
    }

    @Test
    void swapOutsideABreakTellsTheWearerToLeaveFirst() {
        ShiftPlan plan = plan(needs(100, 100, 4, NEVER, 0, false, 0));
        assertTrue(plan.lasts());
        assertTrue(plan.steps().stream().anyMatch(step -> !step.inBreak()));
        assertTrue(plan.words(0).stream().anyMatch(words -> words.contains("leave the hazardous area first")));
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
                Refusal.BAD_NUMBER,
                ShiftPlan.of(needs(0, 0, 0, NEVER, 0, false, 0)).refusal().orElseThrow());
        assertEquals(
                Refusal.BAD_NUMBER,
                ShiftPlan.of(needs(100, 101, 0, NEVER, 0, false, 0)).refusal().orElseThrow());
        assertEquals(
                Refusal.BAD_NUMBER,
                ShiftPlan.of(needs(100, 100, 0, Double.NaN, 0, false, 0))
                        .refusal()
                        .orElseThrow());
        ShiftNeeds noBreak =
                new ShiftNeeds(List.of(10.0, 10.0), List.of(), 100, 100, 0, NEVER, 0, false, 0, Tables.packRules());
        assertEquals(Refusal.BAD_NUMBER, ShiftPlan.of(noBreak).refusal().orElseThrow());
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
