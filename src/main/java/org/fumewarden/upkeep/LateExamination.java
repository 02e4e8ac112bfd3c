package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Whether a unit waits for its thorough examination. Advice, cards and the due list all ask here. */
public final class LateExamination {
    public static final String EXAMINATION = "examination";

    private static final Set<DueStatus> LATE = Set.of(DueStatus.OVERDUE, DueStatus.BEFORE_FIRST_USE);

    private LateExamination() {}

    /** What is owed by a unit on a day. */
    public static DueReport report(Store store, List<Duty> duties, String id, LocalDate day) {
        return new DueList(store, duties, day, Period.ZERO).of(id);
    }

    /** That its examination is late, in words; empty when it is not. */
    public static Optional<String> words(DueReport report) {
        return report.owings().stream()
                .filter(o -> o.doneBy().equals(EXAMINATION) && LATE.contains(o.status()))
                .findFirst()
                .map(o -> "its examination is " + o.status().words()
                        + o.due().map(d -> ", it was due on " + d).orElse("")
                        + (o.note().isEmpty() ? "" : ", " + o.note()));
    }
}
