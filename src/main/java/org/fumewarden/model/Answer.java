package org.fumewarden.model;

/** A worded answer to a question of the task file, for example place = confined-space. */
public record Answer(String question, String value, String path) implements Input {
    public Answer {
        Checks.text("question", question);
        Checks.text("value", value);
    }
}
