package org.fumewarden.endurance;

import java.util.List;
import org.fumewarden.model.Refused;

/**
 * When a gas filter must be changed.
 *
 * @param minutes whole minutes of use, rounded down, at most every bound
 * @param basis the shortest bound
 * @param others the other bounds, shortest first
 * @param declined methods that gave no time, with their reasons
 */
public record ChangeTime(long minutes, TimeBound basis, List<TimeBound> others, List<Refused<TimeBound>> declined) {
    public ChangeTime {
        others = List.copyOf(others);
        declined = List.copyOf(declined);
    }

    /** The data relied on and the basis for relying on them, as a change schedule must state. */
    public String basisSentence() {
        return "Change after " + WrittenNumbers.clock(minutes)
                + " of use at the latest, sooner on any smell, taste or irritation. Basis: "
                + basis.kind().words()
                + (others.isEmpty() ? ". " : ", the shortest of " + (others.size() + 1) + " times. ") + basis.says();
    }
}
