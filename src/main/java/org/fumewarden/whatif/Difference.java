package org.fumewarden.whatif;

import java.util.List;
import org.fumewarden.advice.Reason;

/**
 * One thing that moved between two pieces of advice.
 *
 * @param what what moved, for example {@code respirator ffp3}
 * @param ceased reasons that held before and hold no longer
 * @param began reasons that hold now and did not before
 */
public record Difference(String what, String before, String after, List<Reason> ceased, List<Reason> began) {
    public Difference {
        ceased = List.copyOf(ceased);
        began = List.copyOf(began);
    }
}
