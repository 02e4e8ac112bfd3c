package org.fumewarden.advice;

import java.util.Arrays;

/** How far an advice may be relied on, most serious first. */
public enum Status {
    DO_NOT_ENTER("do-not-enter"),
    CONFLICT("conflict"),
    INCOMPLETE("incomplete"),
    COMPLETE("complete");

    private final String key;

    Status(String key) {
        this.key = key;
    }

    /** The word used in files. */
    public String key() {
        return key;
    }

    /** The status with a word. */
    static Status of(String key) {
        return Arrays.stream(values())
                .filter(s -> s.key.equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no status is called " + key));
    }
}
