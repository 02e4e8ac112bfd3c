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
 * @param basis {@code ratio}, {@code mixture}, {@code floor}, or {@code beside} for what filters alone need
 */
public record Need(String subject, String basis, BigDecimal level, BigDecimal limit, String statistic)
        implements Conclusion {
    /** The statistic of a sum over the averages of a shift. */
    public static final String SHIFT_SUM = "sum of ratios";

    /** The statistic of a factor that a measurement can lower. */
    public static final String UNTIL_MEASURED = "kept until measured";

    /** The basis of what a filter needs because it lets gases through. */
    public static final String BESIDE = "beside";

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

    /** A smallest factor that is kept only until the level of its agent is known. */
    public static Need kept(String agent, BigDecimal factor) {
        return new Need(agent, "floor", factor, BigDecimal.ONE, UNTIL_MEASURED);
    }

    /** As {@link #kept(String, BigDecimal)}, and no more than the level asks for that something measured bounds it at. */
    public static Need kept(String agent, Bound bound) {
        return bound.physical()
                ? new Need(agent, "floor", bound.level(), bound.limit(), UNTIL_MEASURED)
                : kept(agent, bound.factor());
    }

    /**
     * The need of agents with like effect: the sum of their ratios, of each agent the highest.
     *
     * @param most bounds of levels that nobody stated, which count at the most they can be
     */
    public static Need mixture(String effect, List<Ratio> ratios, List<Bound> most) {
        BigDecimal sum = sum(ratios, most);
        boolean shift = ratios.stream().allMatch(r -> r.averaging() == Averaging.TWA)
                && most.stream().allMatch(Bound::ofShift);
        return new Need(effect, "mixture", sum, BigDecimal.ONE, shift ? SHIFT_SUM : "sum of short-term ratios");
    }

    /**
     * The need of all substances of a shift together: the sum of the highest ratio of each, but for those that a set
     * assesses apart; of dust the highest fraction counts once, and either the dust or the metals in it.
     *
     * @param most bounds of levels that nobody stated, which count at the most they can be
     * @param sets members of the sets that say so: assessed-apart, one-dust-index, part-of-welding-fume
     */
    public static Need index(String subject, List<Ratio> ratios, List<Bound> most, List<Member> sets) {
        Map<String, BigDecimal> highest = highest(ratios, most);
        highest.keySet().removeIf(agent -> in(sets, "assessed-apart", agent));
        BigDecimal dust = BigDecimal.ZERO;
        BigDecimal metals = BigDecimal.ZERO;
        BigDecimal rest = BigDecimal.ZERO;
        for (Map.Entry<String, BigDecimal> one : highest.entrySet()) {
            if (in(sets, "one-dust-index", one.getKey())) {
                dust = dust.max(one.getValue());
            } else if (in(sets, "part-of-welding-fume", one.getKey())) {
                metals = metals.add(one.getValue());
            } else {
                rest = rest.add(one.getValue());
            }
        }
        return new Need(subject, "mixture", dust.max(metals).add(rest), BigDecimal.ONE, SHIFT_SUM);
    }

    /** The sum of the highest ratio of each agent. */
    static BigDecimal sum(List<Ratio> ratios, List<Bound> most) {
        return highest(ratios, most).values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Of each agent the highest ratio. A question that more than one figure bounds has the lowest of the bounds. */
    static Map<String, BigDecimal> highest(List<Ratio> ratios, List<Bound> most) {
        Map<String, BigDecimal> highest = new TreeMap<>();
        ratios.forEach(r -> highest.merge(r.agent(), ratio(r.level(), r.limit()), BigDecimal::max));
        Map<String, Bound> lowest = new TreeMap<>();
        most.forEach(b -> lowest.merge(b.question(), b, Need::lower));
        lowest.values().forEach(b -> highest.merge(b.agent(), ratio(b.level(), b.limit()), BigDecimal::max));
        return highest;
    }

    private static Bound lower(Bound one, Bound other) {
        return ratio(one.level(), one.limit()).compareTo(ratio(other.level(), other.limit())) <= 0 ? one : other;
    }

    private static BigDecimal ratio(BigDecimal level, BigDecimal limit) {
        return level.divide(limit, MathContext.DECIMAL128);
    }

    private static boolean in(List<Member> sets, String set, String item) {
        return sets.stream().anyMatch(m -> m.set().equals(set) && m.item().equals(item));
    }

    /** True when a device with this factor is enough: level at or below limit times factor. */
    public boolean heldBy(BigDecimal factor) {
        return level.compareTo(limit.multiply(factor)) <= 0;
    }

    /** True when a respirator is needed at all: the level is above the limit. */
    public boolean aboveOne() {
        return level.compareTo(limit) > 0;
    }

    /**
     * The need of what a filter holds of a sum where it lets the smallest gases through: (sum - these) / (1 - these). Who breathes
     * air from elsewhere needs the sum alone.
     *
     * @param share what the gases that pass may fill together, below one
     */
    public static Need beside(Need sum, Threshold share, List<Ratio> gases, List<Bound> most) {
        BigDecimal passing = new Passing(sum, share, gases, most).together();
        return new Need(
                "beside-gases-that-pass",
                BESIDE,
                sum.level.subtract(passing).max(BigDecimal.ZERO),
                BigDecimal.ONE.subtract(passing),
                sum.statistic);
    }

    /** True when it is a sum over the averages of a shift. */
    public boolean ofShift() {
        return statistic.equals(SHIFT_SUM);
    }

    /** True when every respirator must meet it, not a filter alone. */
    public boolean ofEveryClass() {
        return !basis.equals(BESIDE);
    }

    /** True when the level is above so many times the limit. */
    public boolean above(BigDecimal times) {
        return level.compareTo(limit.multiply(times)) > 0;
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
