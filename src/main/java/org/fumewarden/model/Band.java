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
}
