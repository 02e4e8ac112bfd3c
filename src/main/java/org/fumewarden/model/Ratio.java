package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * One exposure against one limit, both in the unit of the limit. Nothing is rounded.
 *
 * @param statistic how the level was obtained
 * @param basis {@code measured}, {@code estimated} or {@code judged}
 */
public record Ratio(
        String agent,
        Averaging averaging,
        BigDecimal level,
        BigDecimal limit,
        Unit unit,
        String statistic,
        String basis,
        String limitRow)
        implements Conclusion {

    /** The ratio for a measured or estimated exposure. */
    public static Ratio of(Exposure exposure, Limit limit, Agent agent, Threshold molarVolume) {
        BigDecimal level = Concentrations.convert(exposure.level(), exposure.unit(), limit.unit(), agent, molarVolume);
        return new Ratio(
                exposure.agent(),
                exposure.averaging(),
                level,
                limit.value(),
                limit.unit(),
                exposure.statistic(),
                exposure.estimated() ? "estimated" : "measured",
                limit.ref().address());
    }

    /** The ratio against a limit that a code derives by multiplying the limit of another averaging time. */
    public static Ratio against(
            Exposure exposure, Limit limit, Threshold multiple, Agent agent, Threshold molarVolume) {
        Ratio plain = of(exposure, limit, agent, molarVolume);
        return new Ratio(
                plain.agent,
                plain.averaging,
                plain.level,
                plain.limit.multiply(multiple.value()),
                plain.unit,
                plain.statistic,
                plain.basis,
                plain.limitRow);
    }

    /** The ratio 1 for an agent that somebody judged to stay at or below its limit: the limit itself, never less. */
    public static Ratio judged(Judged judged, Limit limit) {
        return new Ratio(
                judged.agent(),
                limit.averaging(),
                limit.value(),
                limit.value(),
                limit.unit(),
                "judged at or below the limit",
                "judged",
                limit.ref().address());
    }

    /** True when the level lies above the limit. */
    public boolean exceeded() {
        return level.compareTo(limit) > 0;
    }

    /** True when the level reaches the given share of the limit. */
    public boolean reaches(BigDecimal share) {
        return level.compareTo(limit.multiply(share)) >= 0;
    }

    @Override
    public String subject() {
        return agent;
    }
}
