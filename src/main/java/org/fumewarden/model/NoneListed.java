package org.fumewarden.model;

/**
 * An agent that a list has no figure for, said in so many words.
 *
 * @param list {@code limits} or {@code danger-levels} when the edition named was searched and has none; {@code limits-not-held}
 *     when nobody has looked, which leaves the agent open
 * @param agent the agent, or {@code every-other}
 * @param searched what was searched, and when
 */
public record NoneListed(RowRef ref, String list, String agent, String searched) implements Row {
    /** Stands for every agent without a row of its own. */
    public static final String EVERY_OTHER = "every-other";

    public NoneListed {
        Checks.text("list", list);
        Checks.text("searched", searched);
    }

    /** True when the row speaks of the agent. */
    public boolean covers(String other) {
        return agent.equals(other) || agent.equals(EVERY_OTHER);
    }
}
