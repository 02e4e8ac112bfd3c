package org.fumewarden.model;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A required protection factor, kept as level and limit so that nothing is rounded before it is compared.
 *
 * @param subject agent, mixture or policy that demands it
 * @param basis {@code ratio}, {@code mixture} or {@code floor}
 */
public record Need(String subject, String basis, BigDecimal level, BigDecimal limit, String statistic)
        implements Conclusion {
    public Need {
        Checks.notNegative("level", level);
        Checks.positive("limit", limit);
    }

    /** The need of one agent against one limit. */
    public static Need of(Ratio ratio) {
        return new Need(ratio.agent(), "ratio", ratio.level(), ratio.limit(), ratio.statistic());
    }

    /** A smallest factor that a policy sets whatever was measured. */
    public static Need floor(String subject, BigDecimal factor) {
        return new Need(subject, "floor", factor, BigDecimal.ONE, "policy floor");
    }

    /** The need of agents with like effect: the sum of their ratios, of each agent the highest. */
    public static Need mixture(String effect, List<Ratio> ratios) {
        Map<String, BigDecimal> highest = new TreeMap<>();
        ratios.forEach(
                r -> highest.merge(r.agent(), r.level().divide(r.limit(), MathContext.DECIMAL128), BigDecimal::max));
        BigDecimal sum = highest.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        return new Need(effect, "mixture", sum, BigDecimal.ONE, "sum of ratios");
    }

    /** True when a device with this factor is enough: level at or below limit times factor. */
    public boolean heldBy(BigDecimal factor) {
        return level.compareTo(limit.multiply(factor)) <= 0;
    }

    /** True when a respirator is needed at all: the level is above the limit. */
    public boolean aboveOne() {
        return level.compareTo(limit) > 0;
    }

    /** True when the need is above that of the other, compared without division. */
    public boolean exceeds(Need other) {
        return level.multiply(other.limit).compareTo(other.level.multiply(limit)) > 0;
    }

    /** The factor as a number, for printing only; rounded up so that print never understates. */
    public BigDecimal value() {
        return level.divide(limit, new MathContext(6, java.math.RoundingMode.CEILING))
                .stripTrailingZeros();
    }
}
