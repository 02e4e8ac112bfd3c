package org.fumewarden.model;

/**
 * What weakens the evidence behind an exposure, or why there is no value.
 *
 * @param status short name of the weakness, such as {@code too-few}
 * @param sentence the weakness in words, with what would help
 */
public record SampleNote(String agent, String status, String sentence, String path) implements Input {
    public SampleNote {
        Checks.text("agent", agent);
        Checks.text("status", status);
        Checks.text("sentence", sentence);
    }
}
