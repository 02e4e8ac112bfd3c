package org.fumewarden.endurance;

/**
 * Air through one filter.
 *
 * @param litresPerMinute through one filter; a pair that is tested as a pair counts as one
 * @param powered true when a blower draws it
 */
public record FilterFlow(double litresPerMinute, boolean powered) {

    /** Flow of a powered unit: what the blower moves, never what the wearer breathes, shared by equal filters in parallel. */
    public static FilterFlow ofBlower(double blowerLitresPerMinute, int filtersInParallel) {
        return new FilterFlow(blowerLitresPerMinute / filtersInParallel, true);
    }

    /** Mean flow of a unit without blower: the minute volume of the wearer, shared by equal filters in parallel. */
    public static FilterFlow ofBreathing(double minuteVolume, int filtersInParallel) {
        return new FilterFlow(minuteVolume / filtersInParallel, false);
    }
}
