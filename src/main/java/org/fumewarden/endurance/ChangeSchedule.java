package org.fumewarden.endurance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;

/** The shortest of all bounds on a gas filter. */
public final class ChangeSchedule {
    private ChangeSchedule() {}

    /**
     * The change time, or why none can be given.
     *
     * <p>Needs one method that stands alone, or two different ones that support each other; a cap or a shelf life
     * alone justifies nothing. Where the agent itself is the difficulty, only a measurement or a fixed use
     * time carries. A refused method may still shorten the time. An expired filter, a mixture, a used filter or a bad number stops everything.
     *
     * @param bounds the outcome of every method that was tried, refusals included
     */
    public static Reckoning<ChangeTime> shortest(List<Reckoning<TimeBound>> bounds) {
        List<TimeBound> found = new ArrayList<>();
        List<Refused<TimeBound>> declined = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        for (Reckoning<TimeBound> outcome : bounds) {
            if (outcome instanceof Reckoned<TimeBound> reckoned) {
                found.add(reckoned.result());
                remarks.addAll(reckoned.remarks());
            } else if (outcome instanceof Refused<TimeBound> refused) {
                declined.add(refused);
            }
        }
        for (Refused<TimeBound> refused : declined) {
            if (stopsAll(refused.status())) {
                return refused.as();
            }
        }
        if (!stands(found, declined)) {
            return Reckoning.refuse(
                    Soundness.NO_METHOD_STANDS,
                    whyNot(found, declined),
                    "Ask the manufacturer for breakthrough data for this agent and flow. Until then use supplied air.");
        }
        declined.forEach(refused -> refused.shortens().ifPresent(found::add));
        found.sort(Comparator.comparingDouble(TimeBound::minutes).thenComparing(TimeBound::kind));
        long minutes = WrittenNumbers.minutesDown(found.get(0).minutes());
        if (minutes < 1) {
            return Reckoning.refuse(
                    Soundness.BREAKS_THROUGH_AT_ONCE,
                    "The shortest bound is under one minute.",
                    "Use a larger filter, or supplied air.");
        }
        return Reckoning.of(
                new ChangeTime(minutes, found.get(0), found.subList(1, found.size()), declined),
                remarks.stream().distinct().toList());
    }

    /** Reasons that lie in the filter or the air itself, not in one method. */
    private static boolean stopsAll(Soundness reason) {
        return switch (reason) {
            case INVALID_VALUE,
                    MIXTURE,
                    REUSED,
                    EXPIRED,
                    USED_UP,
                    NOT_HELD,
                    ABOVE_CLASS_LIMIT,
                    BREAKS_THROUGH_AT_ONCE -> true;
            default -> false;
        };
    }

    /** Reasons after which only a measurement or a fixed use time can still carry a change time. */
    private static boolean needsMeasurement(Soundness reason) {
        return switch (reason) {
            case LOW_BOILER, MODEL_DOES_NOT_HOLD, ABOVE_TEST_CONCENTRATION -> true;
            default -> false;
        };
    }

    private static boolean stands(List<TimeBound> found, List<Refused<TimeBound>> declined) {
        boolean carried = found.stream()
                .anyMatch(bound -> bound.kind() == BoundKind.MEASURED || bound.kind() == BoundKind.FIXED_USE_TIME);
        if (declined.stream().anyMatch(refused -> needsMeasurement(refused.status()))) {
            return carried;
        }
        List<TimeBound> estimates =
                found.stream().filter(bound -> bound.kind().estimates()).toList();
        return estimates.stream().anyMatch(TimeBound::standsAlone)
                || estimates.stream().map(TimeBound::kind).distinct().count() > 1;
    }

    private static String whyNot(List<TimeBound> found, List<Refused<TimeBound>> declined) {
        StringBuilder says = new StringBuilder("No change time can be given: ");
        says.append(
                found.stream().anyMatch(bound -> bound.kind().estimates())
                        ? "the only method that gave one may not stand alone."
                        : "no method holds for this use.");
        declined.forEach(refused -> says.append(' ').append(refused.sentence()));
        return says.toString();
    }
}
