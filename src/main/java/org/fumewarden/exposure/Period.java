package org.fumewarden.exposure;

/**
 * A stretch of time at one concentration, back to back with its neighbours.
 *
 * @param concentration zero or more; zero only where it is known that nobody was exposed
 * @param minutes above zero
 */
public record Period(double concentration, double minutes) {
    boolean valid() {
        return concentration >= 0 && Double.isFinite(concentration) && SampleSet.isConcentration(minutes);
    }
}
