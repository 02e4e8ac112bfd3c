package org.fumewarden.endurance;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What a wearer draws from a unit. Advice and the plan of a shift both ask here.
 *
 * @param work breathing at sea level
 * @param speech true when the wearer talks or shouts at work
 * @param factor of the altitude, 1 at sea level
 */
public record BreathDemand(WorkRate work, boolean speech, double factor) {
    /** The hardest of the ordinary classes, taken where the work rate is not told. */
    private static final String HARDEST = "very-high";

    /** The demand of a task: what is not told is taken as hard work with speech at sea level. */
    public static BreathDemand of(
            Function<String, WorkRate> rates,
            StandardAtmosphere air,
            Optional<String> rate,
            Optional<String> speech,
            OptionalDouble altitude) {
        double height = Math.min(altitude.orElse(0), air.highestAltitude());
        return new BreathDemand(
                rates.apply(rate.orElse(HARDEST)),
                !speech.filter("false"::equals).isPresent(),
                air.breathingFactor(height).value().orElse(1.0));
    }

    /** Highest inhalation flow, litres per minute. */
    public double peak() {
        return (speech ? work.peakSpeech() : work.peak()) * factor;
    }

    /** Mean flow, litres per minute. */
    public double mean() {
        return work.minuteVolume() * factor;
    }
}
