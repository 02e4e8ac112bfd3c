package org.fumewarden.model;

import java.util.List;

/** A check, test, record or instruction that a code orders. */
public record Duty(
        RowRef ref,
        String id,
        String what,
        String frequency,
        String period,
        String anchor,
        String who,
        List<String> appliesTo,
        String doneBy,
        boolean recorded,
        List<String> fields,
        String keep,
        String force)
        implements Row {
    public Duty {
        appliesTo = List.copyOf(appliesTo);
        fields = List.copyOf(fields);
    }
}
