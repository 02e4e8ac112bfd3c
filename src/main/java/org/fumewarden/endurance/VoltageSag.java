package org.fumewarden.endurance;

import java.util.Optional;

/**
 * A blower without flow control: its flow falls with the voltage of the pack.
 *
 * <p>Flow in proportion to fan speed, speed to voltage, voltage falling evenly from full to empty.
 *
 * @param fullVolts of a charged pack
 * @param emptyVolts at which it stops
 */
public record VoltageSag(double fullVolts, double emptyVolts) {

    /**
     * Minutes until the minimum flow, at most until empty.
     *
     * @param startFlow with a charged pack, litres per minute
     * @param minimumFlow litres per minute
     * @param minutesToEmpty run time until the pack stops
     */
    public Reckoning<Double> minutesToMinimumFlow(double startFlow, double minimumFlow, double minutesToEmpty) {
        Optional<Reckoning<Double>> bad = new Inputs()
                .positive("The flow in L/min", startFlow)
                .positive("The minimum flow in L/min", minimumFlow)
                .positive("The minutes to empty", minutesToEmpty)
                .positive("The fall in volts", fullVolts - emptyVolts)
                .positive("The lower voltage", emptyVolts)
                .refusal();
        if (bad.isPresent()) {
            return bad.get();
        }
        if (startFlow < minimumFlow) {
            return Reckoning.refuse(
                    Refusal.BELOW_MINIMUM_FLOW,
                    "The unit starts at " + Figures.plain(startFlow) + " L/min, below its minimum of "
                            + Figures.plain(minimumFlow) + " L/min.",
                    "Fit new filters and a charged pack.");
        }
        double share = (1 - minimumFlow / startFlow) / (1 - emptyVolts / fullVolts);
        return Reckoning.of(minutesToEmpty * Math.min(1, share));
    }
}
