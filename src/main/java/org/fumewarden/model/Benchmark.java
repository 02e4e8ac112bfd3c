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
}
