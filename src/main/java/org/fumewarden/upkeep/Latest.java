package org.fumewarden.upkeep;

import java.time.LocalDate;

/** The day and number of the entry that counts. */
public record Latest(LocalDate on, long sequence) {
    /** True when this came after the other; on one day the later entry counts. */
    boolean after(Latest other) {
        return on.isAfter(other.on) || on.equals(other.on) && sequence > other.sequence;
    }
}
