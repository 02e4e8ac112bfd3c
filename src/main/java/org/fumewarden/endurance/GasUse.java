package org.fumewarden.endurance;

import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * What one gas filter meets.
 *
 * @param ppm highest concentration before the filter
 * @param exitPpm highest concentration allowed behind it, at most the exposure limit
 * @param flow air through this filter
 * @param humidity relative, percent
 * @param temperature degrees Celsius
 * @param otherGases true when any other gas or vapour is present above the odour of a trace
 * @param usedBefore true when the filter is not factory-fresh
 */
public record GasUse(
        double ppm,
        double exitPpm,
        FilterFlow flow,
        double humidity,
        double temperature,
        boolean otherGases,
        boolean usedBefore) {

    /** The refusals that every method shares. */
    <T> Optional<Reckoning<T>> refusal() {
        Optional<Reckoning<T>> numbers = new Inputs()
                .positive("The concentration in ppm", ppm)
                .positive("The concentration allowed behind the filter in ppm", exitPpm)
                .positive("The flow in L/min", flow.litresPerMinute())
                .within("The relative humidity in %", humidity, 0, 100)
                .within("The temperature in C", temperature, -90, 100)
                .refusal();
        if (numbers.isPresent()) {
            return numbers;
        }
        if (otherGases) {
            return Optional.of(Reckoning.refuse(
                    Soundness.MIXTURE,
                    "Several gases or vapours are present: the weaker-held one comes through sooner than alone and at a"
                            + " higher concentration.",
                    "Ask the manufacturer for data on this mixture. Until then use supplied air."));
        }
        if (usedBefore) {
            return Optional.of(Reckoning.refuse(
                    Soundness.REUSED,
                    "The filter has been used before, so what it can still hold is not known.",
                    "Fit a new one."));
        }
        return Optional.empty();
    }
}
