package org.fumewarden.endurance;

import java.util.ArrayList;
import java.util.List;

/** Walks through a shift once, with what is at hand. */
final class ShiftRun {
    private static final double SLACK = 1e-9;

    private final ShiftNeeds needs;
    private final boolean changeEarly;
    private final List<PlanStep> steps = new ArrayList<>();
    private double pack;
    private double filter;
    private int packs;
    private int filters;
    private double worked;

    private ShiftRun(ShiftNeeds needs, boolean changeEarly) {
        this.needs = needs;
        this.changeEarly = changeEarly;
        pack = needs.startPackMinutes();
        filter = needs.filterMinutes();
        packs = needs.sparePacks();
        filters = needs.spareFilters();
    }

    /** What happened. */
    record Outcome(boolean lasts, double workedMinutes, int packsUsed, int filtersUsed, List<PlanStep> steps) {}

    /** Changes in the breaks where that is enough, and uses everything up where it is not. */
    static Outcome of(ShiftNeeds needs) {
        Outcome early = walk(needs, true);
        return early.lasts() ? early : walk(needs, false);
    }

    private static Outcome walk(ShiftNeeds needs, boolean changeEarly) {
        ShiftRun run = new ShiftRun(needs, changeEarly);
        boolean lasts = true;
        for (int i = 0; lasts && i < needs.workMinutes().size(); i++) {
            double work = needs.workMinutes().get(i);
            run.pause(i == 0 ? 0 : needs.breakMinutes().get(i - 1), work);
            lasts = run.work(work);
        }
        return new Outcome(
                lasts,
                run.worked,
                needs.sparePacks() - run.packs,
                needs.spareFilters() - run.filters,
                List.copyOf(run.steps));
    }

    /** Does in the break what would otherwise interrupt the work after it. */
    private void pause(double minutes, double workAhead) {
        double quick = needs.fullPackMinutes()
                * (needs.rules().quickCharge() - needs.rules().reserve())
                / (1 - needs.rules().reserve());
        double added = minutes
                * needs.chargePerMinute()
                * needs.fullPackMinutes()
                / (1 - needs.rules().reserve());
        double charged = Math.min(quick, pack + added);
        if (needs.chargeInBreaks() && charged > pack + SLACK) {
            pack = charged;
            step(PlanStep.Action.QUICK_CHARGE, true);
        }
        if (changeEarly && packs > 0 && pack + SLACK < workAhead && workAhead <= needs.fullPackMinutes()) {
            swapPack(true);
        }
        if (changeEarly && filters > 0 && filter + SLACK < workAhead && workAhead <= needs.filterMinutes()) {
            changeFilter(true);
        }
    }

    private boolean work(double minutes) {
        double left = minutes;
        while (left > SLACK) {
            double now = Math.min(left, Math.min(pack, filter));
            left -= now;
            pack -= now;
            filter -= now;
            worked += now;
            if (left > SLACK && !goOn()) {
                step(PlanStep.Action.STOP, false);
                return false;
            }
        }
        return true;
    }

    private boolean goOn() {
        if (pack <= SLACK) {
            if (packs == 0) {
                return false;
            }
            swapPack(false);
        }
        if (filter <= SLACK) {
            if (filters == 0 || needs.filterMinutes() <= SLACK) {
                return false;
            }
            changeFilter(false);
        }
        return true;
    }

    private void swapPack(boolean inBreak) {
        packs--;
        pack = needs.fullPackMinutes();
        step(PlanStep.Action.SWAP_PACK, inBreak);
    }

    private void changeFilter(boolean inBreak) {
        filters--;
        filter = needs.filterMinutes();
        step(PlanStep.Action.CHANGE_FILTER, inBreak);
    }

    private void step(PlanStep.Action action, boolean inBreak) {
        steps.add(new PlanStep(WrittenNumbers.minutesDown(worked), action, inBreak));
    }
}
