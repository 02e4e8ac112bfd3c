package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.util.List;

/**
 * What is owed on a day.
 *
 * @param owings overdue first
 * @param closed items withdrawn from use
 * @param unsettled what cannot be said until a circumstance is recorded
 * @param doubts what about the log itself looks wrong: days to come, a clock that went backwards
 * @param origin what tells the store from every other; empty while it is empty
 */
public record DueReport(
        LocalDate on,
        List<Owing> owings,
        List<Closed> closed,
        List<Unsettled> unsettled,
        List<String> doubts,
        String origin) {
    public DueReport {
        doubts = Given.list(doubts);
        owings = Given.list(owings);
        closed = Given.list(closed);
        unsettled = Given.list(unsettled);
    }

    /** True when nothing is overdue, blocked, withdrawn, open or in doubt. */
    public boolean settled() {
        return closed.isEmpty()
                && doubts.isEmpty()
                && unsettled.isEmpty()
                && owings.stream()
                        .noneMatch(o -> o.status() == DueStatus.OVERDUE || o.status() == DueStatus.BEFORE_FIRST_USE);
    }
}
