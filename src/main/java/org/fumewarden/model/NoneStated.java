package org.fumewarden.model;

/**
 * That an officer looked for a limit of an agent and found none. It proves no low level.
 *
 * @param day when it was looked up, as a date
 * @param from the document that was searched, with edition
 */
public record NoneStated(String agent, String day, String from, String path) implements Input {
    public NoneStated {
        Checks.text("agent", agent);
        Checks.text("day", day);
        Checks.text("from", from);
    }
}
