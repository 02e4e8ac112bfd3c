package org.fumewarden.codes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;

/**
 * Whether somebody compared a row with its document as it stands now.
 *
 * @param checks comparisons of this very value
 * @param program what the program has in its place, where nobody answers for the difference
 * @param voided who compared another value
 */
record Compared(List<Affirmation> checks, Optional<String> program, List<String> voided) {
    /** A row as the table has it. */
    static final Compared AS_WRITTEN = new Compared(List.of(), Optional.empty(), List.of());

    /** How well the row is known: what its table says, unless the value is another than the one that was compared for it. */
    Citation of(Citation own) {
        Citation written =
                program.isEmpty() ? own : new Citation(own.source(), own.clause(), own.edition(), Confidence.MEMORY);
        return new Citation(own.source(), own.clause(), own.edition(), Affirmation.confidence(written, checks));
    }

    /** What differs from what was compared, in words; empty when nothing does. */
    String changed() {
        if (!checks.isEmpty()) {
            return "";
        }
        List<String> words = new ArrayList<>();
        program.ifPresent(has -> words.add("the program has " + has));
        voided.forEach(who -> words.add("what " + who + " affirmed was another value"));
        return String.join("; ", words);
    }
}
