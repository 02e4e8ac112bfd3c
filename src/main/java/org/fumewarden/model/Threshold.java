package org.fumewarden.model;

import java.math.BigDecimal;

/** A single number that a rule compares with. */
public record Threshold(RowRef ref, String id, BigDecimal value, String unit) implements Row {

    /** True when the amount lies above the threshold. */
    public boolean below(BigDecimal amount) {
        return amount.compareTo(value) > 0;
    }

    /** True when the level, given in the unit of the threshold, lies above it. */
    public boolean passedBy(Exposure exposure) {
        return exposure.unit().symbol().equals(unit) && below(exposure.level());
    }

    /** True when the level, given in the unit of the threshold, does not lie above it. */
    public boolean keptBy(Exposure exposure) {
        return exposure.unit().symbol().equals(unit) && !below(exposure.level());
    }

    /** True when the level of the ratio, in its own unit, is at or above the threshold. */
    public boolean reachedBy(Ratio ratio) {
        return ratio.level().compareTo(value) >= 0;
    }

    /** True when the level of a ratio, in the unit of its limit, is above the threshold. */
    public boolean passedBy(Ratio ratio) {
        return below(ratio.level());
    }

    /** True when an exposure is at or above this level, whatever its averaging time, or in a unit that this level cannot be compared with. */
    public boolean reachedBy(Exposure exposure) {
        return !exposure.unit().symbol().equals(unit) || exposure.level().compareTo(value) >= 0;
    }

    /** True when it is the one of a name for agent and averaging time of an exposure: name, agent and time joined by a hyphen. */
    public boolean isFor(String name, Exposure exposure) {
        return id.equals(
                name + "-" + exposure.agent() + "-" + exposure.averaging().key());
    }
}
