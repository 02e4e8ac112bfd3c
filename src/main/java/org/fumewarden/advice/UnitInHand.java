package org.fumewarden.advice;

import java.util.List;

/**
 * The unit that the task speaks of.
 *
 * @param id its distinguishing number; empty when the task gives none
 * @param deviceClass its class; empty when the task gives none
 * @param condition {@code not-for-use}, {@code open} or {@code nothing-found}
 * @param reasons what speaks against it, and what is still open about it
 * @param heals acts that would mend it, in the words of the tables
 */
public record UnitInHand(String id, String deviceClass, String condition, List<Reason> reasons, List<String> heals) {
    public UnitInHand {
        reasons = List.copyOf(reasons);
        heals = List.copyOf(heals);
    }

    /** True when the unit must not be used. */
    public boolean barred() {
        return condition.equals("not-for-use");
    }
}
