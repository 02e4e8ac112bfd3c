package org.fumewarden.upkeep;

import java.time.DateTimeException;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.model.Citation;
import org.fumewarden.model.DutyCondition;

/**
 * A duty as the due computation needs it.
 *
 * @param period the longest interval; absent when the clause gives none
 * @param doneBy what an entry must serve to discharge the duty
 * @param when conditions that all must hold; empty when they were decided elsewhere
 * @param confidence how well the row is known: cross-checked, read, derived, practice, memory
 */
public record Duty(
        String id,
        String what,
        Frequency frequency,
        Optional<Period> period,
        Anchor anchor,
        String who,
        boolean recorded,
        List<String> fields,
        Keep keep,
        Force force,
        String clause,
        String source,
        String confidence,
        List<Subject> appliesTo,
        String doneBy,
        List<DutyCondition> when) {
    public Duty {
        id = Given.needed("id", id);
        what = Given.needed("do", what);
        Given.present("freq", frequency);
        Given.present("anchor", anchor);
        Given.present("keep", keep);
        Given.present("force", force);
        clause = Given.needed("clause", clause);
        fields = Given.list(fields);
        appliesTo = Given.list(appliesTo);
        when = Given.list(when);
        if (period.isPresent() && (period.get().isNegative() || period.get().isZero())) {
            throw StoreException.refused(
                    "the period of " + id + " is " + period.get() + ".", "a period above zero, such as P1M.");
        }
    }

    /**
     * The duty of a table row.
     *
     * @throws StoreException when a word of the row is not known
     */
    public static Duty of(org.fumewarden.model.Duty row, List<DutyCondition> when) {
        Citation citation = row.ref().citation();
        return new Duty(
                row.id(),
                row.what(),
                Keyed.named(Frequency.class, "freq of " + row.id(), row.frequency()),
                period(row),
                Keyed.named(Anchor.class, "anchor of " + row.id(), row.anchor()),
                row.who(),
                row.recorded(),
                row.fields(),
                Keep.parse(row.keep()),
                Keyed.named(Force.class, "force of " + row.id(), row.force()),
                citation.clause(),
                citation.source(),
                citation.confidence().key(),
                row.appliesTo().stream().map(Subject::named).toList(),
                row.doneBy(),
                when);
    }

    private static Optional<Period> period(org.fumewarden.model.Duty row) {
        try {
            return row.period().equals("none") ? Optional.empty() : Optional.of(Period.parse(row.period()));
        } catch (DateTimeException e) {
            throw StoreException.refused(
                    "period of " + row.id() + " cannot be \"" + row.period() + "\".", "P1M, P3M, P1Y, ...");
        }
    }

    /** True when a known fact rules the duty out; what is not known rules nothing out. */
    public boolean ruledOutBy(Map<String, List<String>> facts) {
        return when.stream().anyMatch(c -> c.holds(facts) == DutyCondition.Holds.NO);
    }

    /** True when every condition is known to hold. */
    public boolean surelyUnder(Map<String, List<String>> facts) {
        return when.stream().allMatch(c -> c.holds(facts) == DutyCondition.Holds.YES);
    }
}
