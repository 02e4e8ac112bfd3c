package org.fumewarden.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The code that decided, with its edition and what it does not cover.
 *
 * @param valuesUntil last day on which every row that was read is in force, when one of them ends
 */
public record CodeUsed(
        String id,
        String name,
        String edition,
        String checkedOn,
        List<String> lacks,
        Optional<LocalDate> valuesUntil) {}
