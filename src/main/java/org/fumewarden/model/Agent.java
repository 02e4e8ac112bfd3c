package org.fumewarden.model;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;

/**
 * An airborne agent.
 *
 * @param form {@code particle} or {@code gas} (gas stands for gases and vapours)
 * @param molarMass g/mol, empty where a conversion between ppm and mg/m3 has no meaning
 * @param highest the threshold that says how many times the average of a shift its highest quarter of an hour is taken as at most
 */
public record Agent(
        RowRef ref, String id, String name, String form, String cas, Optional<BigDecimal> molarMass, String highest)
        implements Row {
    /** The multiple of an agent of which nothing else is said. */
    public static final String USUAL_PEAK = "peak-over-average";

    /** The thresholds that {@code highest} may name: the usual multiple, and what arithmetic allows. */
    public static final Set<String> PEAKS = Set.of(USUAL_PEAK, "quarter-hours-in-8-h");

    /** The threshold of the agent itself where it has one, otherwise that of the shift. */
    public String peak(String usual) {
        return highest.equals(USUAL_PEAK) ? usual : highest;
    }
}
