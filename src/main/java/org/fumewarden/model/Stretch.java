package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * What a sample or a stretch of a shift proves: some shift, some 15 min or some moment held at least this much.
 *
 * <p>A lower bound: it never answers the question for the level of that time.
 *
 * @param averaging the time that was sampled, or a shorter one
 */
public record Stretch(String agent, Averaging averaging, BigDecimal level, Unit unit, String path) implements Input {
    public Stretch {
        Checks.text("agent", agent);
        Checks.notNegative("level", level);
    }

    /** The bound as a level. */
    public Exposure exposure() {
        return new Exposure(agent, averaging, level, unit, "highest period", false, path);
    }

    /** True when the stretch proves more than the level that is told for that time. */
    public boolean above(Exposure told, Agent about, Threshold molarVolume) {
        return Concentrations.above(level, unit, told.level(), told.unit(), about, molarVolume);
    }

    /** True when the stretch proves more than so many times the average that is told. */
    public boolean above(Exposure average, Threshold times, Agent about, Threshold molarVolume) {
        return Concentrations.above(
                level, unit, average.level().multiply(times.value()), average.unit(), about, molarVolume);
    }
}
