package org.fumewarden.exposure;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One air sample.
 *
 * @param concentration the result, or the detection limit when nothing was detected; same unit in one set
 * @param detected false when the result is "below the detection limit"
 * @param minutes how long it ran, when known
 * @param worker who carried it, when known
 */
public record Sample(double concentration, boolean detected, OptionalDouble minutes, Optional<String> worker) {

    /** A sample with a result. */
    public static Sample found(double concentration) {
        return new Sample(concentration, true, OptionalDouble.empty(), Optional.empty());
    }

    /** A sample with nothing found above its detection limit. */
    public static Sample below(double detectionLimit) {
        return new Sample(detectionLimit, false, OptionalDouble.empty(), Optional.empty());
    }

    /** The same sample with a result that counts so many times. */
    public Sample times(double factor) {
        return new Sample(concentration * factor, detected, minutes, worker);
    }

    /** The same sample, carried by the given worker. */
    public Sample by(String name) {
        return new Sample(concentration, detected, minutes, Optional.of(name));
    }
}
