package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * The level of an agent that is immediately dangerous to life or health.
 *
 * @param basis what the figure is counted as
 */
public record DangerLevel(RowRef ref, String agent, BigDecimal value, Unit unit, CountedAs basis) implements Row {
    public DangerLevel {
        Checks.positive("value", value);
    }

    /** True when the exposure, in whatever unit it was given, is at or above this level. */
    public boolean reachedBy(Exposure exposure, Agent about, Threshold molarVolume) {
        BigDecimal level = Concentrations.convert(exposure.level(), exposure.unit(), unit, about, molarVolume);
        return level.compareTo(value) >= 0;
    }

    /** True when a stated limit, in whatever unit it was given, is at or above this level. */
    public boolean reachedBy(StatedLimit limit, Agent about, Threshold molarVolume) {
        return Concentrations.convert(limit.value(), limit.unit(), unit, about, molarVolume)
                        .compareTo(value)
                >= 0;
    }

    /** True when so many times the exposure is at or above this level. */
    public boolean reachedByPeak(Exposure average, Threshold times, Agent about, Threshold molarVolume) {
        BigDecimal level = Concentrations.convert(average.level(), average.unit(), unit, about, molarVolume);
        return level.multiply(times.value()).compareTo(value) >= 0;
    }
}
