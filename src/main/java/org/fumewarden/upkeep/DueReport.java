package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.util.List;

/**
 * What is owed on a day.
 *
 * @param owings overdue first
 * @param closed items withdrawn from use
 * @param unsettled what cannot be said until a circumstance is recorded
 */
public record DueReport(LocalDate on, List<Owing> owings, List<Closed> closed, List<Unsettled> unsettled) {
    public DueReport {
        owings = Given.list(owings);
        closed = Given.list(closed);
        unsettled = Given.list(unsettled);
    }

    /** True when nothing is overdue, blocked, withdrawn or open. */
    public boolean settled() {
        return closed.isEmpty()
                && unsettled.isEmpty()
                && owings.stream()
                        .noneMatch(o -> o.status() == DueStatus.OVERDUE || o.status() == DueStatus.BEFORE_FIRST_USE);
    }
}
