package org.fumewarden.model;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** What a filter may let through of a sum: its smallest gases, as long as together they stay within a share of the common limit. */
final class Passing {
    private final Map<String, BigDecimal> gases;
    private final BigDecimal most;

    Passing(Need sum, Threshold share, List<Ratio> gases, List<Bound> bounds) {
        this.gases = Need.highest(
                gases.stream()
                        .filter(r -> (r.averaging() == Averaging.TWA) == sum.ofShift())
                        .toList(),
                bounds.stream().filter(b -> b.ofShift() == sum.ofShift()).toList());
        this.most = share.value();
    }

    /** True when the gas and all that are no larger stay within the share. */
    boolean passes(String gas) {
        BigDecimal own = gases.getOrDefault(gas, BigDecimal.ZERO);
        return gases.values().stream()
                        .filter(r -> r.compareTo(own) <= 0)
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .compareTo(most)
                <= 0;
    }

    /** What passes, in parts of the common limit. */
    BigDecimal together() {
        return gases.entrySet().stream()
                .filter(g -> passes(g.getKey()))
                .map(Map.Entry::getValue)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
