package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Whether a unit may be used.
 *
 * @param since day of the entry that closed it
 * @param entry number of the entry that closed it
 * @param because why it is closed, and what opens it again; empty when it is open
 */
public record UnitState(Standing standing, Optional<LocalDate> since, Optional<Long> entry, String because) {
    /** The states of a unit. */
    public enum Standing {
        IN_SERVICE,
        WITHDRAWN,
        SCRAPPED,
        /** An entry about it was changed, so that nobody knows. */
        UNPROVEN
    }

    static UnitState open() {
        return new UnitState(Standing.IN_SERVICE, Optional.empty(), Optional.empty(), "");
    }

    static UnitState unproven(Verification.Damage damage) {
        return new UnitState(
                Standing.UNPROVEN,
                Optional.empty(),
                damage.entry() == 0 ? Optional.empty() : Optional.of(damage.entry()),
                "The log is damaged: " + damage.text() + " Save what is sound with \"store salvage\". Examine it again"
                        + " before use.");
    }

    /** Why it may not be used and since when, as part of a sentence about it. */
    public String words() {
        return standing == Standing.UNPROVEN
                ? "not shown fit. " + because
                : "out of use"
                        + since.map(d -> " since " + d).orElse("")
                        + entry.map(n -> " (entry " + n + ")").orElse("")
                        + ". " + because;
    }

    public boolean inService() {
        return standing == Standing.IN_SERVICE;
    }
}
