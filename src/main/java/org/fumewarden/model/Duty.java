package org.fumewarden.model;

import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A check, test, record or instruction that a code orders.
 *
 * @param period the longest interval; absent when the clause gives none
 * @param doneBy what an entry must serve to discharge the duty
 * @param when conditions that all must hold; empty when it always applies
 */
public record Duty(
        RowRef ref,
        String id,
        String what,
        Frequency frequency,
        Optional<Period> period,
        Anchor anchor,
        String who,
        List<Subject> appliesTo,
        String doneBy,
        boolean recorded,
        List<String> fields,
        Keep keep,
        Force force,
        List<DutyCondition> when)
        implements Row {
    public Duty {
        appliesTo = List.copyOf(appliesTo);
        fields = List.copyOf(fields);
        when = List.copyOf(when);
    }

    /** True when a known fact rules the duty out; what is not known rules nothing out. */
    public boolean ruledOutBy(Map<String, List<String>> facts) {
        return when.stream().anyMatch(c -> c.holds(facts) == DutyCondition.Holds.NO);
    }

    /** True when every condition is known to hold. */
    public boolean surelyUnder(Map<String, List<String>> facts) {
        return when.stream().allMatch(c -> c.holds(facts) == DutyCondition.Holds.YES);
    }
}
