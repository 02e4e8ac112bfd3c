package org.fumewarden.advice;

import java.util.List;

/** A question that must be answered, as a person would ask it, and why. */
public record OpenQuestion(String question, String ask, List<Reason> reasons) {
    public OpenQuestion {
        reasons = List.copyOf(reasons);
    }
}
