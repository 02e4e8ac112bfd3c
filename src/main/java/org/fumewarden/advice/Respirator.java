package org.fumewarden.advice;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A class of respirator and what the rules say of it.
 *
 * @param factor factor in force here, empty when the class has none against what it must hold
 * @param filter filter to fit, in the words of its marking
 * @param reasons why: what bars it, what leaves it open, or what makes it suitable
 * @param conditions under which it may be used
 */
public record Respirator(
        String deviceClass,
        String name,
        Optional<BigDecimal> factor,
        Suitability verdict,
        String filter,
        List<Reason> reasons,
        List<Reason> conditions) {
    /** What stands in place of a filter where the air is supplied. */
    public static final String SUPPLIED_AIR = "none: supplied air";

    public Respirator {
        reasons = List.copyOf(reasons);
        conditions = List.copyOf(conditions);
    }

    /** The same class while two statements contradict each other: what was offered waits until that is resolved. */
    Respirator undecided(List<Reason> conflicts) {
        return verdict.offered()
                ? new Respirator(deviceClass, name, factor, Suitability.UNDECIDED, filter, conflicts, conditions)
                : this;
    }
}
