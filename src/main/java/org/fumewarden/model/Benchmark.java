package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * A value that a level is held against where the code has no limit of its own: a benchmark, not law.
 *
 * @param reason why this one was taken, in words
 */
public record Benchmark(
        RowRef ref, String agent, Averaging averaging, BigDecimal value, Unit unit, String fraction, String reason)
        implements Row {
    public Benchmark {
        Checks.positive("value", value);
        Checks.text("reason", reason);
    }

    /** The value in the form of a limit, to reckon with. */
    public Limit asLimit() {
        return new Limit(ref, agent, averaging, value, unit, fraction);
    }

    /** The question of a task file that asks for the level of this benchmark. */
    public String question() {
        return asLimit().question();
    }

    /** True when the exposure, in whatever unit it was given, is above this benchmark times the multiple. */
    public boolean passedBy(Exposure exposure, Threshold multiple, Agent about, Threshold molarVolume) {
        return asLimit().passedBy(exposure, multiple, about, molarVolume);
    }

    /** True when so many times a shift average is above this benchmark times the multiple. */
    public boolean passedByPeak(
            Exposure average, Threshold times, Threshold multiple, Agent about, Threshold molarVolume) {
        return asLimit().passedByPeak(average, times, multiple, about, molarVolume);
    }

    /** True when another benchmark is lower than that one, or cannot be compared with it; never of itself. */
    public boolean mayBeStricterThan(Benchmark other) {
        return !equals(other) && (unit != other.unit || value.compareTo(other.value) < 0);
    }

    /** True when it is for the time of the exposure, or for a shorter one. */
    public boolean noLongerThan(Exposure exposure) {
        return averaging.compareTo(exposure.averaging()) >= 0;
    }
}
