package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * One band of a stepped table, from above {@code over} up to and including {@code upTo}.
 *
 * @param band id of the stepped table
 * @param value what the table gives for the band
 */
public record Band(RowRef ref, String band, BigDecimal over, BigDecimal upTo, BigDecimal value) implements Row {

    /** True when the amount lies in this band. */
    public boolean holds(BigDecimal amount) {
        return amount.compareTo(over) > 0 && amount.compareTo(upTo) <= 0;
    }

    /** True when the exposure, turned into the unit of the table, lies in this band; false when it cannot be turned. */
    public boolean holdsLevel(Exposure exposure, Unit unit, Agent about, Threshold molarVolume) {
        if (exposure.unit() != unit && about.molarMass().isEmpty()) {
            return false;
        }
        return holds(Concentrations.convert(exposure.level(), exposure.unit(), unit, about, molarVolume));
    }
}
