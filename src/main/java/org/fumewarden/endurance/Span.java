package org.fumewarden.endurance;

import java.util.function.DoubleUnaryOperator;

/**
 * A value with its stated range; plans rest on the low end.
 *
 * @param low the careful end
 * @param likely what to expect
 * @param high the hopeful end
 */
public record Span(double low, double likely, double high) {
    public Span {
        if (!(low <= likely && likely <= high)) {
            throw new BadFigure(
                    "A range must rise: " + low + ", " + likely + ", " + high + ".", "Give the lowest first.");
        }
    }

    /** The same value at all three places. */
    public static Span exactly(double value) {
        return new Span(value, value, value);
    }

    /** Product, low with low; both must be zero or more. */
    public Span times(Span other) {
        return new Span(low * other.low, likely * other.likely, high * other.high);
    }

    /** Applies a rising function to each place. */
    public Span map(DoubleUnaryOperator rising) {
        return new Span(rising.applyAsDouble(low), rising.applyAsDouble(likely), rising.applyAsDouble(high));
    }
}
