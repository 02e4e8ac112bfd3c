package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.fumewarden.model.Anchor;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Frequency;
import org.fumewarden.model.Subject;

/** Duties that one deed discharges: the earliest day wins, every clause is kept. */
final class Merge {
    /** A duty with its day; no day when it was never done. */
    private record Dated(Duty duty, Optional<LocalDate> due, String lacks) {}

    private final Target target;
    private final String serves;
    private final Optional<Latest> latest;
    private final Optional<Latest> failed;
    private final String undone;
    private final String unjudged;
    private final List<Dated> owed = new ArrayList<>();
    private final TreeSet<String> assumed = new TreeSet<>();

    /**
     * A visit without duties yet.
     *
     * @param failed the attempt that failed after the last that counts
     * @param undone what to say when no deed counts
     * @param unjudged what to say of a later deed that is open; empty when there is none
     */
    Merge(
            Target target,
            String serves,
            Optional<Latest> latest,
            Optional<Latest> failed,
            String undone,
            String unjudged) {
        this.unjudged = unjudged;
        this.failed = failed;
        this.undone = undone;
        this.target = target;
        this.serves = serves;
        this.latest = latest;
    }

    void add(Duty duty, List<String> assumedFacts) {
        day(duty).ifPresent(dated -> {
            owed.add(dated);
            assumed.addAll(assumedFacts);
        });
    }

    private Optional<Dated> day(Duty duty) {
        Optional<LocalDate> done = latest.map(Latest::on);
        if (duty.frequency() == Frequency.ONCE) {
            Optional<LocalDate> start = target.item().anchored(Anchor.EXPOSURE_START);
            Optional<LocalDate> due =
                    start.map(s -> duty.period().map(p -> Days.due(s, p)).orElse(s));
            return done.isPresent()
                    ? Optional.empty()
                    : Optional.of(new Dated(
                            duty, due, due.isPresent() && duty.period().isPresent() ? "" : undone));
        }
        if (duty.anchor() == Anchor.MARKED_EXPIRY) {
            Optional<LocalDate> expiry = target.item().anchored(Anchor.MARKED_EXPIRY);
            return Optional.of(new Dated(duty, expiry, expiry.isPresent() ? "" : "no expiry in the register"));
        }
        Optional<LocalDate> anchor =
                switch (duty.anchor()) {
                    case MANUFACTURE_DATE, FIRST_FITTED_DATE ->
                        later(target.item().anchored(duty.anchor()), done);
                    default -> done;
                };
        if (anchor.isEmpty()) {
            // Never done: what was fitted is due one period after that day, what a person must have on the first day of
            // exposure.
            return Optional.of(new Dated(duty, firstFitted(duty).or(this::started), undone));
        }
        // Without a period the clause says only "suitable intervals": once done there is no day to count.
        return duty.period().map(p -> new Dated(duty, Optional.of(Days.due(anchor.get(), p)), ""));
    }

    private Optional<LocalDate> firstFitted(Duty duty) {
        return latest.isPresent() || duty.anchor() != Anchor.LAST_DONE
                ? Optional.empty()
                : target.item().anchored(Anchor.FIRST_FITTED_DATE).flatMap(d -> duty.period()
                        .map(p -> Days.due(d, p)));
    }

    private Optional<LocalDate> started() {
        return latest.isEmpty() && target.subject() == Subject.WEARER
                ? target.item().anchored(Anchor.EXPOSURE_START)
                : Optional.empty();
    }

    /** A first deed with a day of its own stands for the rolling duties that have none yet. */
    private void firstDeedLeads() {
        boolean first = owed.stream()
                .anyMatch(d -> d.duty().frequency() == Frequency.ONCE
                        && d.duty().period().isPresent()
                        && d.due().isPresent());
        if (first) {
            owed.removeIf(d -> latest.isEmpty() && d.duty().frequency() == Frequency.MAX_INTERVAL);
        }
    }

    private static Optional<LocalDate> later(Optional<LocalDate> one, Optional<LocalDate> other) {
        return one.isPresent() && other.isPresent()
                ? Optional.of(one.get().isAfter(other.get()) ? one.get() : other.get())
                : one.or(() -> other);
    }

    Optional<Owing> owing(LocalDate today, Period warning, UnitState state) {
        if (owed.isEmpty()) {
            return Optional.empty();
        }
        firstDeedLeads();
        owed.sort(Comparator.comparing((Dated d) -> d.due().orElse(LocalDate.MIN))
                .thenComparing(d -> d.duty().force()));
        Dated first = owed.get(0);
        boolean blocked = !first.lacks().isEmpty();
        DueStatus status = first.due()
                .map(d -> Days.status(d, today, warning))
                .filter(s -> !blocked || s == DueStatus.OVERDUE)
                .orElse(DueStatus.BEFORE_FIRST_USE);
        String note = status == DueStatus.BEFORE_FIRST_USE && unjudged.isEmpty() ? first.lacks() : unjudged;
        if (!state.inService()) {
            status = DueStatus.NOT_IN_SERVICE;
            note = state.because();
        }
        return Optional.of(new Owing(
                target.item().id(),
                target.item().kind(),
                target.label(),
                target.item().wearer(),
                serves,
                status,
                first.due(),
                first.due().map(d -> Days.daysOver(d, today)).orElse(0L),
                latest.map(Latest::on),
                failed.map(Latest::on),
                owed.stream().map(Dated::duty).toList(),
                List.copyOf(assumed),
                note));
    }
}
