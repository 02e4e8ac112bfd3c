package org.fumewarden.engine;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The rooms a decision walks through. A phase sees only what earlier phases concluded. */
public enum Phase {
    HAZARD,
    ATMOSPHERE,
    MEASURE,
    NEED,
    ACCOUNT,
    FILTER,
    EXCLUSION,
    SELECTION,
    CIRCUMSTANCE,
    DUTY,
    CAUTION,
    STATUS;

    private final String key = name().toLowerCase(Locale.ROOT);

    /** The name of the rule file of this phase, without its ending. */
    public String key() {
        return key;
    }

    /** The phase with a key. */
    public static Optional<Phase> of(String key) {
        return Arrays.stream(values()).filter(p -> p.key().equals(key)).findFirst();
    }
}
