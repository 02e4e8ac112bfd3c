package org.fumewarden.model;

import java.util.List;
import java.util.Map;

/** One condition of a duty: the named circumstance must have one of the values. */
public record DutyCondition(RowRef ref, String duty, String circumstance, List<String> values) implements Row {
    /** Whether a condition holds. */
    public enum Holds {
        YES,
        NO,
        UNKNOWN
    }

    public DutyCondition {
        values = List.copyOf(values);
    }

    /** Whether it holds where these facts are known. */
    public Holds holds(Map<String, List<String>> facts) {
        List<String> known = facts.getOrDefault(circumstance, List.of());
        if (known.stream().anyMatch(values::contains)) {
            return Holds.YES;
        }
        return known.isEmpty() || known.contains("unknown") ? Holds.UNKNOWN : Holds.NO;
    }

    /** The circumstance and its values as the table of what would make a duty go away spells them. */
    public String spelled() {
        return circumstance + "/" + String.join(",", values);
    }
}
