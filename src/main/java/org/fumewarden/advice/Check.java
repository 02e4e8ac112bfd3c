package org.fumewarden.advice;

import java.util.List;
import org.fumewarden.model.Confidence;

/** A check, test, record or instruction that is owed. */
public record Check(
        String id,
        String what,
        String who,
        String when,
        boolean recorded,
        List<String> fields,
        String keep,
        String force,
        String source,
        String clause,
        Confidence confidence,
        String step) {
    /** The force of a duty that an organisation changed: no law stands behind it as it is. */
    public static final String OWN = "own";
}
