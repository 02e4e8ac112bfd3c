package org.fumewarden.endurance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.fumewarden.model.Reckoning;

/**
 * What to do when, so that a powered unit lasts a shift.
 *
 * @param lasts false when it does not with what is at hand
 * @param shortByMinutes wear time that is missing, rounded up, 0 when it lasts
 * @param remedy smallest change that makes it last, empty when it lasts or when nothing of the kind helps
 * @param packsToCarry charged spare packs that the shift needs, with the remedy where it needs one
 * @param filtersToCarry new filter sets that the shift needs, with the remedy where it needs one
 * @param steps in order of time
 */
public record ShiftPlan(
        boolean lasts,
        long shortByMinutes,
        Optional<Remedy> remedy,
        int packsToCarry,
        int filtersToCarry,
        List<PlanStep> steps) {
    private static final int MOST_EXTRAS = 24;

    public ShiftPlan {
        steps = List.copyOf(steps);
    }

    /** The plan for a shift. */
    public static Reckoning<ShiftPlan> of(ShiftNeeds needs) {
        Optional<Reckoning<ShiftPlan>> bad = needs.refusal();
        if (bad.isPresent()) {
            return bad.get();
        }
        ShiftRun.Outcome run = ShiftRun.of(needs);
        Optional<Remedy> remedy = run.lasts() ? Optional.empty() : smallestChange(needs);
        ShiftRun.Outcome carried =
                remedy.map(change -> ShiftRun.of(needs.with(change))).orElse(run);
        return Reckoning.of(new ShiftPlan(
                run.lasts(),
                (long) Math.ceil(needs.totalWork() - run.workedMinutes() - 1e-6),
                remedy,
                carried.packsUsed(),
                carried.filtersUsed(),
                run.steps()));
    }

    /** Found by the same walk: fewest things to carry, then fewest things to do. Packs never stand in for filters.
     * A change that does nothing comes after the same without it, and so is never found. */
    private static Optional<Remedy> smallestChange(ShiftNeeds needs) {
        OptionalInt filters = IntStream.rangeClosed(0, MOST_EXTRAS)
                .filter(more -> lasts(needs, new Remedy(MOST_EXTRAS, more, false, false)))
                .findFirst();
        if (filters.isEmpty()) {
            return Optional.empty();
        }
        for (int packs = 0; packs <= MOST_EXTRAS; packs++) {
            for (Remedy change : List.of(
                    new Remedy(packs, filters.getAsInt(), false, false),
                    new Remedy(packs, filters.getAsInt(), true, false),
                    new Remedy(packs, filters.getAsInt(), false, true),
                    new Remedy(packs, filters.getAsInt(), true, true))) {
                if (lasts(needs, change)) {
                    return Optional.of(change);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean lasts(ShiftNeeds needs, Remedy change) {
        return ShiftRun.of(needs.with(change)).lasts();
    }

    /**
     * The plan in words, the verdict first.
     *
     * @param preFilters pre-filters the shift needs besides, by their cadence
     */
    public List<String> words(long preFilters) {
        List<String> words = new ArrayList<>();
        words.add(verdict());
        steps.forEach(step -> words.add(step.words()));
        words.add("Carry: the flow indicator" + more(packsToCarry, "charged spare pack")
                + more(filtersToCarry, "new filter set") + more(preFilters, "pre-filter")
                + ". Check the flow after every change.");
        if (!steps.isEmpty()) {
            words.add("These times count wear alone. Breaks are not counted.");
        }
        words.add("A low-flow or low-battery alarm overrides any plan: leave the hazardous area at once.");
        return List.copyOf(words);
    }

    private static String more(long number, String what) {
        return number == 0 ? "" : ", " + number + " " + what + (number == 1 ? "" : "s");
    }

    private String verdict() {
        return lasts
                ? "Lasts the shift with what is at hand."
                : "DOES NOT LAST THE SHIFT: " + WrittenNumbers.clock(shortByMinutes) + " of wear too short. "
                        + remedy.map(change -> "Smallest change: " + change.words() + ".")
                                .orElse("No number of packs or filter sets makes it last: shorten the work, lower the"
                                        + " dust, or use supplied air.");
    }
}
