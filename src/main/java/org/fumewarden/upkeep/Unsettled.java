package org.fumewarden.upkeep;

import java.util.List;
import org.fumewarden.model.Subject;

/**
 * Duties that may be owed, because nobody recorded the circumstance on which they hang.
 *
 * @param fact the circumstance that nobody recorded
 * @param items how many items it leaves open
 * @param example id of one of them
 * @param duties ids of the duties it leaves open
 */
public record Unsettled(Subject subject, String fact, int items, String example, List<String> duties) {
    public Unsettled {
        duties = Given.list(duties);
    }
}
