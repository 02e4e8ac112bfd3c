package org.fumewarden.model;

/** An agent that a competent person judged to stay at or below its limits without a measurement. */
public record Judged(String agent, String because, String path) implements Input {
    public Judged {
        Checks.text("agent", agent);
        Checks.text("because", because);
    }
}
