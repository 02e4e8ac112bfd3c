package org.fumewarden.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The code that decided, with its edition and what it does not cover.
 *
 * @param valuesUntil last day before a row or rule changes what is advised, when there is one
 * @param ended rows that were read although they have ended, since nothing follows them
 */
public record CodeUsed(
        String id,
        String name,
        String edition,
        String checkedOn,
        List<String> lacks,
        Optional<LocalDate> valuesUntil,
        List<Ended> ended) {

    /** Advice of before this was told says nothing of it. */
    public CodeUsed {
        ended = ended == null ? List.of() : List.copyOf(ended);
    }

    /**
     * A row past its end.
     *
     * @param row address of the table row
     * @param value what the row holds
     * @param until first day on which its table no longer has it
     */
    public record Ended(String row, String value, LocalDate until) {}
}
