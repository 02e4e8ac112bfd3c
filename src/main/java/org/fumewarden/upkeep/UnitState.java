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
        SCRAPPED
    }

    static UnitState open() {
        return new UnitState(Standing.IN_SERVICE, Optional.empty(), Optional.empty(), "");
    }

    public boolean inService() {
        return standing == Standing.IN_SERVICE;
    }
}
