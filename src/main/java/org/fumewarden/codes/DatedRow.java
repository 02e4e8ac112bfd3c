package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.List;
import org.fumewarden.model.Row;

/**
 * A row with the days on which it is in force.
 *
 * @param source the document that its table names for it; what somebody changed is cited as his
 * @param from first day in force
 * @param until first day no longer in force
 * @param line where it stands in its file
 * @param also other documents that give the same
 * @param affirmations checks of it by reviewers
 */
public record DatedRow(
        Row row,
        String source,
        LocalDate from,
        LocalDate until,
        int line,
        List<String> also,
        List<Affirmation> affirmations) {
    public DatedRow {
        also = List.copyOf(also);
        affirmations = List.copyOf(affirmations);
    }

    /** True when the row is in force on the day. */
    public boolean inForce(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(until);
    }
}
