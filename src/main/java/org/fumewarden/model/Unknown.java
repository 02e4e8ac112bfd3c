package org.fumewarden.model;

/** A question that nobody has answered. Never a null, never a mild default. */
public record Unknown(String question, String path) implements Input {
    public Unknown {
        Checks.text("question", question);
    }
}
