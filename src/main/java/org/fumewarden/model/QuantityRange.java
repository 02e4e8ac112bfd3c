package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * What a quantity of an estimate may be, as a range that holds most cases.
 *
 * @param quantity what is meant, such as {@code fume-rate}
 * @param of process, consumable or place it belongs to
 * @param with process in which a consumable is used, {@code any} otherwise
 * @param low above zero
 * @param high not below {@code low}; equal when the source gives one figure
 */
public record QuantityRange(
        RowRef ref, String quantity, String of, String with, BigDecimal low, BigDecimal high, String unit)
        implements Row {
    public QuantityRange {
        Checks.text("quantity", quantity);
        Checks.positive("low", low);
        Checks.positive("high", high);
    }
}
