package org.fumewarden.upkeep;

import java.util.List;
import org.fumewarden.model.Subject;

/**
 * Duties that may be owed, because nobody recorded the circumstance on which they hang.
 *
 * @param fact the circumstance that nobody recorded
 * @param ids of the items that it leaves open, at least one, in the order in which they were found
 * @param duties ids of the duties it leaves open
 */
public record Unsettled(Subject subject, String fact, List<String> ids, List<String> duties) {
    public Unsettled {
        ids = Given.list(ids);
        duties = Given.list(duties);
    }

    /** How many items it leaves open. */
    public int items() {
        return ids.size();
    }

    /** One of them. */
    public String example() {
        return ids.get(0);
    }
}
