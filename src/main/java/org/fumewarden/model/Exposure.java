package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * What the air holds of one agent outside the respirator.
 *
 * @param level concentration in {@code unit}, zero or more
 * @param statistic how the level was obtained, in words a reader understands
 */
public record Exposure(
        String agent,
        Averaging averaging,
        BigDecimal level,
        Unit unit,
        String statistic,
        boolean estimated,
        String path)
        implements Input {
    /** The statistic of a level that stands in the file as it is. */
    public static final String AS_GIVEN = "value as given";

    /** The statistic of such a level of longer work, counted over 8 hours. */
    public static final String COUNTED_OVER = "value as given, counted over 8 h";

    /** The statistic of a level that stands for a result below its detection limit. */
    public static final String NOT_DETECTED = "detection limit";

    public Exposure {
        Checks.text("agent", agent);
        Checks.notNegative("level", level);
        Checks.text("statistic", statistic);
    }

    /** The same level said of another agent. */
    Exposure as(String other, Averaging over) {
        return new Exposure(other, over, level, unit, statistic, estimated, path);
    }

    /** True when this level stands in the file as it is, in the unit of the other, and is the higher. */
    public boolean statedAbove(Exposure other) {
        return statistic.equals(AS_GIVEN) && unit == other.unit && level.compareTo(other.level) > 0;
    }

    /** The question of a task file that this level answers. */
    public String question() {
        return "exposures." + agent + "." + averaging.key();
    }
}
