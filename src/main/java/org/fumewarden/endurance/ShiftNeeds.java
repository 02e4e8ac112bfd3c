package org.fumewarden.endurance;

import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * A shift and what is at hand for it.
 *
 * <p>Run times are the low end, at the clogging expected by the end of the shift, so that a fresh pack late in the shift
 * is not reckoned too long.
 *
 * @param workMinutes wear time between breaks, in order
 * @param breakMinutes breaks between them, one fewer
 * @param fullPackMinutes run time of a full pack down to its reserve
 * @param startPackMinutes run time left in the fitted pack down to its reserve
 * @param sparePacks full packs carried
 * @param filterMinutes wear time until the filter set brings the flow to its minimum, or must be changed for
 *     gas; infinite when nothing ends it
 * @param spareFilters new filter sets carried
 * @param chargeInBreaks true when the fitted pack is charged in the breaks
 * @param chargePerMinute share of a full pack that the charger adds in a minute, 0 without charger or outside the
 *     charging temperatures
 * @param rules of the pack
 */
public record ShiftNeeds(
        List<Double> workMinutes,
        List<Double> breakMinutes,
        double fullPackMinutes,
        double startPackMinutes,
        int sparePacks,
        double filterMinutes,
        int spareFilters,
        boolean chargeInBreaks,
        double chargePerMinute,
        PackRules rules) {
    public ShiftNeeds {
        workMinutes = List.copyOf(workMinutes);
        breakMinutes = List.copyOf(breakMinutes);
    }

    /** Wear time of the whole shift. */
    public double totalWork() {
        return workMinutes.stream().mapToDouble(Double::doubleValue).sum();
    }

    <T> Optional<Reckoning<T>> refusal() {
        if (workMinutes.isEmpty() || breakMinutes.size() != workMinutes.size() - 1) {
            return Optional.of(Reckoning.refuse(
                    Soundness.INVALID_VALUE,
                    workMinutes.size() + " periods of work need one break fewer between them, but there are "
                            + breakMinutes.size() + ".",
                    "Give every break."));
        }
        Inputs inputs = new Inputs()
                .positive("The run time of a full pack in min", fullPackMinutes)
                .within("The run time left in the fitted pack in min", startPackMinutes, 0, fullPackMinutes)
                .notNegative("The number of spare packs", sparePacks)
                .within("The minutes left in the filter set", filterMinutes, 0, Double.POSITIVE_INFINITY)
                .notNegative("The number of spare filter sets", spareFilters)
                .within("The charge added in a minute", chargePerMinute, 0, 1);
        workMinutes.forEach(minutes -> inputs.within("A period of work in min", minutes, 1, 1440));
        breakMinutes.forEach(minutes -> inputs.within("A break in min", minutes, 0, 1440));
        return inputs.refusal();
    }

    /** The same shift after a change. */
    public ShiftNeeds with(Remedy change) {
        return new ShiftNeeds(
                workMinutes,
                breakMinutes,
                fullPackMinutes,
                change.startFull() ? fullPackMinutes : startPackMinutes,
                sparePacks + change.morePacks(),
                filterMinutes,
                spareFilters + change.moreFilters(),
                chargeInBreaks || change.chargeInBreaks(),
                chargePerMinute,
                rules);
    }
}
