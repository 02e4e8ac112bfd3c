package org.fumewarden.upkeep;

import java.time.DateTimeException;
import java.time.Period;
import java.util.List;
import java.util.Optional;

/**
 * A duty in the words of a table row.
 *
 * @param period ISO 8601 such as P1M; "none" when the clause gives none
 */
public record DutyRow(
        String id,
        String what,
        String frequency,
        String period,
        String anchor,
        String who,
        boolean recorded,
        List<String> fields,
        String keep,
        String force,
        String clause,
        String source,
        String confidence,
        List<String> appliesTo,
        String doneBy,
        List<DutyFact> when) {

    /** The typed duty; a complaint that names the cell when a word is not known. */
    public Duty duty() {
        return new Duty(
                id,
                what,
                Keyed.named(Frequency.class, "freq of " + id, frequency),
                parsedPeriod(),
                Keyed.named(Anchor.class, "anchor of " + id, anchor),
                who,
                recorded,
                fields,
                Keep.parse(keep),
                Keyed.named(Force.class, "force of " + id, force),
                clause,
                source,
                confidence,
                appliesTo.stream().map(Subject::named).toList(),
                doneBy,
                when);
    }

    private Optional<Period> parsedPeriod() {
        if (period.equals("none")) {
            return Optional.empty();
        }
        try {
            return Optional.of(Period.parse(period));
        } catch (DateTimeException e) {
            throw StoreException.refused("period of " + id + " cannot be \"" + period + "\".", "P1M, P3M, P1Y, ...");
        }
    }
}
