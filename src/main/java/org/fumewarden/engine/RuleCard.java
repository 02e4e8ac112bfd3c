package org.fumewarden.engine;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.fumewarden.model.Citation;

/**
 * What a rule says about itself.
 *
 * @param code {@code shared} or the id of a code
 * @param title the sentence after its id
 * @param says the sentence for a reader, with {placeholders}
 * @param overrides id of the rule whose conclusion this one lifts
 */
public record RuleCard(
        String id,
        String title,
        String code,
        Phase phase,
        Citation citation,
        String says,
        LocalDate from,
        LocalDate until,
        Optional<String> overrides) {

    /** The clause with the edition of its document, unless the rule names one. */
    Citation cited(UnaryOperator<String> editions) {
        return citation.edition().isEmpty()
                ? new Citation(
                        citation.source(), citation.clause(), editions.apply(citation.source()), citation.confidence())
                : citation;
    }

    /** The same with the edition of its document. */
    RuleCard withEdition(UnaryOperator<String> editions) {
        return new RuleCard(id, title, code, phase, cited(editions), says, from, until, overrides);
    }

    /** True when the rule is in force on the day. */
    public boolean inForce(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(until);
    }
}
