package org.fumewarden.model;

/**
 * An agent that a list has no figure for, said in so many words.
 *
 * @param list {@code limits} or {@code danger-levels} when the edition named was searched and has none; {@code limits-of-members}
 *     when the group has none and single members have one; {@code limits-not-held} when nobody has looked, which leaves the agent
 *     open; {@code limits-of-that-day} on the days for which no edition of the list is held; {@code factors-of-that-day} on
 *     the days before any list of the code, on which nothing is advised
 * @param agent the agent, or {@code every-other}
 * @param searched what was searched, and when
 */
public record NoneListed(RowRef ref, String list, String agent, String searched) implements Row {
    /** The edition named was searched and has no limit. */
    public static final String LIMITS = "limits";
    /** The group has no limit, and single members have one. */
    public static final String OF_MEMBERS = "limits-of-members";
    /** Nobody has looked. */
    public static final String NOT_HELD = "limits-not-held";

    /** No edition of the list is held for the day. */
    public static final String THAT_DAY = "limits-of-that-day";

    /** No factors are held for the day. */
    public static final String NO_FACTORS = "factors-of-that-day";

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
