package org.fumewarden.advice;

import java.math.BigDecimal;
import java.util.List;

/**
 * The protection factor that the air demands.
 *
 * @param value largest of all needs, rounded up for print; 0 when nothing could be compared
 * @param open true when at least one need could not be worked out, so that the value is only a floor
 * @param agent agent, mixture or policy that demands the value
 * @param withoutLimit hazards that the code has neither limit nor floor for, so that no figure counts them
 * @param byStatistic what the factor would be by each statistic of the samples behind it; empty without samples
 */
public record RequiredFactor(
        BigDecimal value,
        boolean open,
        String agent,
        String basis,
        String statistic,
        List<String> withoutLimit,
        List<ByStatistic> byStatistic,
        List<Reason> reasons) {
    public RequiredFactor {
        withoutLimit = List.copyOf(withoutLimit);
        byStatistic = List.copyOf(byStatistic);
        reasons = List.copyOf(reasons);
    }

    /** True when no level was compared with a limit and no floor holds: the value 0 then says nothing. */
    public boolean restsOnNothing() {
        return basis.equals("none") && !open;
    }

    /** True when the value asks for a respirator at all. */
    public boolean asksForOne() {
        return value.compareTo(BigDecimal.ONE) > 0;
    }
}
