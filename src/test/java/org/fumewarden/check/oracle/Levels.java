package org.fumewarden.check.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Need;

/**
 * Each stated level against each limit of its averaging time, or against the benchmark of an agent without a limit, and sums
 * of agents with like effect over the shift. Not known here: excursion factors, long shifts, short-term sums, the index over
 * all substances, limits that a site states itself. All of them only ask for more.
 */
final class Levels implements Family {
    private final Case facts;
    private final List<Compared> compared;
    private final Map<String, BigDecimal> mixtures;

    Levels(Case facts) {
        this.facts = facts;
        this.compared = all();
        this.mixtures = sums();
    }

    /** One exposure against one limit of the same averaging time, in the unit of the limit. */
    record Compared(String agent, Averaging averaging, BigDecimal level, BigDecimal limit) {
        boolean above(BigDecimal factor) {
            return level.compareTo(limit.multiply(factor)) > 0;
        }

        BigDecimal ratio() {
            return level.divide(limit, MathContext.DECIMAL128);
        }
    }

    List<Limit> yardsticks(String agent) {
        return facts.tables().yardsticks(facts.task().code(), agent);
    }

    /** Every exposure that has a limit or benchmark of its own averaging time. */
    List<Compared> compared() {
        return compared;
    }

    /** Sums of ratios of agents with like effect, where there are two or more with a limit. */
    Map<String, BigDecimal> mixtures() {
        return mixtures;
    }

    private List<Compared> all() {
        List<Compared> found = new ArrayList<>();
        for (Exposure exposure : facts.said(Exposure.class)) {
            for (Limit listed : yardsticks(exposure.agent())) {
                Limit limit = listed.in(exposure.unit());
                if (limit.averaging() == exposure.averaging()) {
                    found.add(new Compared(
                            exposure.agent(), exposure.averaging(), facts.in(limit.unit(), exposure), limit.value()));
                }
            }
        }
        return found;
    }

    private Map<String, BigDecimal> sums() {
        Map<String, BigDecimal> sums = new TreeMap<>();
        for (String effect : facts.tables().sets().getOrDefault("like-effects", Set.of())) {
            List<Compared> parts = compared().stream()
                    .filter(c -> c.averaging() == Averaging.TWA
                            && facts.in(effect, c.agent())
                            && !facts.in("summed-apart", c.agent()))
                    .filter(c -> facts.tables().all(Limit.class).stream()
                            .anyMatch(l -> l.agent().equals(c.agent())))
                    .toList();
            if (parts.size() > 1) {
                sums.put(effect, parts.stream().map(Compared::ratio).reduce(BigDecimal.ZERO, BigDecimal::add));
            }
        }
        return sums;
    }

    /** True when the agent is above its own limit, or part of a mixture above one. */
    boolean above(String agent) {
        return compared().stream()
                .filter(c -> c.agent().equals(agent))
                .anyMatch(c -> c.above(BigDecimal.ONE)
                        || c.averaging() == Averaging.TWA
                                && mixtures().entrySet().stream()
                                        .anyMatch(m -> m.getValue().compareTo(BigDecimal.ONE) > 0
                                                && facts.in(m.getKey(), agent)));
    }

    /** Gases and vapours that have to be held. */
    List<String> gasesAbove() {
        return compared().stream()
                .map(Compared::agent)
                .distinct()
                .filter(a -> facts.gas(a) && above(a))
                .toList();
    }

    /** True when a figure asks for a respirator. */
    boolean callsForOne() {
        return ratios().anyMatch(r -> r.compareTo(BigDecimal.ONE) > 0);
    }

    private Stream<BigDecimal> ratios() {
        return Stream.concat(compared().stream().map(Compared::ratio), mixtures().values().stream());
    }

    @Override
    public List<String> objections(Advice advice) {
        List<String> found = new ArrayList<>();
        List<Need> needs = advice.trail().all(Need.class);
        compared().stream()
                .filter(c -> needs.stream()
                        .noneMatch(n -> n.level()
                                        .multiply(c.limit())
                                        .compareTo(c.level().multiply(n.limit()))
                                >= 0))
                .forEach(c -> found.add("no need as high as " + c));
        BigDecimal most = ratios().max(BigDecimal::compareTo).orElse(BigDecimal.ZERO);
        // A shade less, since a quotient is rounded.
        if (advice.requiredFactor().value().compareTo(most.multiply(BigDecimal.ONE.subtract(BigDecimal.valueOf(1, 12))))
                < 0) {
            found.add("the factor is " + advice.requiredFactor().value() + ", but a ratio is " + most);
        }
        if (callsForOne() && !advice.byChoice().isEmpty()) {
            found.add("a level is above its limit, but a respirator is left to choice");
        }
        return found;
    }
}
