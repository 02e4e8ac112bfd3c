package org.fumewarden.model;

import java.util.List;

/** One condition of a duty: the named circumstance must have one of the values. */
public record DutyCondition(RowRef ref, String duty, String circumstance, List<String> values) implements Row {
    public DutyCondition {
        values = List.copyOf(values);
    }

    /** The circumstance and its values as the table of what would make a duty go away spells them. */
    public String spelled() {
        return circumstance + "/" + String.join(",", values);
    }
}
