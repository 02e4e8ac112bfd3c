package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Duty;

/**
 * One visit that is owed: every duty that the same deed on the same item discharges.
 *
 * @param doneBy what an entry must serve to discharge it
 * @param due the earliest due day among the duties; absent when nothing was ever done
 * @param last the deed from which the days count
 * @param failed the attempt that failed after it
 * @param duties all of them, the one that falls due first in front
 * @param assumed circumstances that the register does not state and that were taken to hold
 * @param note why the item is withdrawn, or what the register lacks; empty otherwise
 */
public record Owing(
        String item,
        ItemKind kind,
        String label,
        Optional<String> wearer,
        String doneBy,
        DueStatus status,
        Optional<LocalDate> due,
        long daysOver,
        Optional<LocalDate> last,
        Optional<LocalDate> failed,
        List<Duty> duties,
        List<String> assumed,
        String note) {
    /** Overdue first, then by day, item and deed. */
    static final Comparator<Owing> ORDER = Comparator.comparing(Owing::status)
            .thenComparing(o -> o.due().orElse(LocalDate.MIN))
            .thenComparing(Owing::item)
            .thenComparing(Owing::doneBy);

    public Owing {
        duties = Given.list(duties);
        assumed = Given.list(assumed);
    }

    /** True when it is late or was never done, so that nobody may rely on it. */
    public boolean late() {
        return status == DueStatus.OVERDUE || status == DueStatus.BEFORE_FIRST_USE;
    }

    /** Where it stands, as part of a sentence: {@code overdue, it was due on 2026-02-10}. */
    public String words() {
        return status.words()
                + due.filter(d -> status != DueStatus.NOT_IN_SERVICE)
                        .map(d -> (late() ? ", it was due on " : ", due on ") + d)
                        .orElse("")
                + (note.isEmpty() ? "" : ", " + note);
    }
}
