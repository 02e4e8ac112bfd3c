package org.fumewarden.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.InputException;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.model.Term;
import org.fumewarden.report.upkeep.BeforeUseCard;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.LogEntry;
import org.fumewarden.upkeep.Result;
import org.fumewarden.upkeep.Store;

/** Slips of a thumb that the page catches before they stand in the log for ever. */
final class LogGuards {
    private final Store store;
    private final DutyBook book;
    private final LocalDate today;

    LogGuards(Store store, DutyBook book, LocalDate today) {
        this.store = store;
        this.book = book;
        this.today = today;
    }

    /**
     * Refuses what cannot be, and what is unlikely unless the person is sure of it.
     *
     * @throws InputException with the field, or with the field {@code sure} when a second word would do
     */
    void check(Item about, Draft draft, boolean sure) {
        if (draft.on().isAfter(today)) {
            throw LogForm.problem(
                    Fault.FUTURE, "on", "is a day to come: " + draft.on() + ".", "today is " + today + ".");
        }
        if (draft.details() instanceof Details.BeforeUseCheck check) {
            points(about, check);
        }
        if (!sure && draft.details().corrects().isEmpty()) {
            beforeItWasThere(draft);
            twice(draft);
        }
    }

    private void points(Item about, Details.BeforeUseCheck check) {
        if (!(about instanceof Item.Unit unit)) {
            throw LogForm.problem(
                    Fault.UNITS,
                    "kind",
                    "is for units only; this is a " + about.kind().key() + ".",
                    "choose another act.");
        }
        Set<String> answered = check.points().stream().map(Details.Point::id).collect(Collectors.toSet());
        List<String> open = BeforeUseCard.of(unit, store.state(unit.id()), book).checks().stream()
                .map(Term::id)
                .filter(id -> !answered.contains(id))
                .toList();
        if (check.result() == Result.PASSED && !open.isEmpty()) {
            throw LogForm.problem(
                    Fault.POINTS,
                    "points",
                    "leaves " + open.size() + " of the checks without an answer.",
                    "answer each.");
        }
    }

    private void beforeItWasThere(Draft draft) {
        Optional<LocalDate> known = store.entriesOf(draft.item()).stream()
                .filter(e -> e.details() instanceof Details.Registration)
                .map(LogEntry::on)
                .min(LocalDate::compareTo);
        if (known.isPresent() && draft.on().isBefore(known.get())) {
            throw LogForm.problem(
                    Fault.EARLY,
                    "sure",
                    "lies before the item was registered, on " + known.get() + ".",
                    "check the year.");
        }
    }

    private void twice(Draft draft) {
        List<Long> past = store.superseded(draft.item());
        store.entriesOf(draft.item()).stream()
                .filter(e -> !past.contains(e.sequence()) && same(e, draft))
                .findFirst()
                .ifPresent(e -> {
                    throw LogForm.problem(
                            Fault.WRITTEN, "sure", "was written before, as entry " + e.sequence() + ".", "leave it.");
                });
    }

    private static boolean same(LogEntry entry, Draft draft) {
        return entry.on().equals(draft.on())
                && entry.by().equals(draft.by())
                && entry.details().serves().equals(draft.details().serves())
                && entry.details().result() == draft.details().result();
    }
}
