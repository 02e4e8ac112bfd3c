package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * A limit that the officer read in a list which is not held here, or that a site keeps for itself. It counts beside the limits
 * and benchmarks that are held, and never replaces one of them.
 *
 * @param value in {@code unit}, above zero
 * @param from the document it was read in, with edition and place
 */
public record StatedLimit(String agent, Averaging averaging, BigDecimal value, Unit unit, String from, String path)
        implements Input {
    public StatedLimit {
        Checks.text("agent", agent);
        Checks.positive("value", value);
        Checks.text("from", from);
    }

    /** True when the exposure, in whatever unit it was given, is above this limit. */
    public boolean passedBy(Exposure exposure, Agent about, Threshold molarVolume) {
        return Concentrations.above(exposure.level(), exposure.unit(), value, unit, about, molarVolume);
    }

    /** True when the exposure is of a shorter time than this limit, and not above it. */
    public boolean holdsShorter(Exposure exposure, Agent about, Threshold molarVolume) {
        return averaging.compareTo(exposure.averaging()) < 0 && !passedBy(exposure, about, molarVolume);
    }
}
