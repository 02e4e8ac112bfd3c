package org.fumewarden.engine;

import java.time.LocalDate;
import java.util.Optional;
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

    /** True when the rule is in force on the day. */
    public boolean inForce(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(until);
    }
}
