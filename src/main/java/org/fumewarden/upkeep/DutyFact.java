package org.fumewarden.upkeep;

import java.util.List;
import java.util.Map;

/** One condition of a duty: the fact has one of the values. */
public record DutyFact(String fact, List<String> values) {
    /** Whether a condition holds. */
    public enum Holds {
        YES,
        NO,
        UNKNOWN
    }

    public DutyFact {
        fact = Given.needed("fact", fact);
        values = Given.list(values);
    }

    Holds holds(Map<String, List<String>> facts) {
        List<String> known = facts.getOrDefault(fact, List.of());
        if (known.stream().anyMatch(values::contains)) {
            return Holds.YES;
        }
        return known.isEmpty() || known.contains("unknown") ? Holds.UNKNOWN : Holds.NO;
    }
}
