package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * The protection factor that a code assigns to a class of respirator.
 *
 * @param against {@code particles}, {@code gas}, {@code combined} or {@code any}
 * @param provided id of an evidence question that must be answered true, or {@code always}
 */
public record AssignedFactor(RowRef ref, String deviceClass, String against, BigDecimal factor, String provided)
        implements Row {
    public AssignedFactor {
        Checks.positive("factor", factor);
    }

    /** True when the row speaks of a device that must hold the given kind. */
    public boolean covers(String holding) {
        return against.equals("any") || against.equals(holding);
    }
}
