package org.fumewarden.exposure;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.rootfinder.BrentSolver;

/** Roots of monotone functions, bracketed by doubling. */
final class Roots {
    private static final double RELATIVE = 1e-15;
    private static final double ABSOLUTE = 1e-15;
    private static final double NEAR_ZERO = 1e-300;
    private static final int DOUBLINGS = 60;

    private Roots() {}

    /** The root of an increasing function, searched outwards from {@code start} in steps that double. */
    static OptionalDouble ofIncreasing(DoubleUnaryOperator function, double start, double step) {
        double low = start;
        double high = start;
        double stride = step;
        for (int i = 0; i < DOUBLINGS; i++) {
            double atLow = function.applyAsDouble(low);
            double atHigh = function.applyAsDouble(high);
            if (Double.isNaN(atLow) || Double.isNaN(atHigh)) {
                return OptionalDouble.empty();
            }
            if (atLow <= 0 && atHigh >= 0) {
                return OptionalDouble.of(between(function, low, high));
            }
            if (atLow > 0) {
                high = low;
                low -= stride;
            } else {
                low = high;
                high += stride;
            }
            stride *= 2;
        }
        return OptionalDouble.empty();
    }

    private static double between(DoubleUnaryOperator function, double low, double high) {
        if (low == high) {
            return low;
        }
        return new BrentSolver(RELATIVE, ABSOLUTE, NEAR_ZERO).findRoot(function, low, high);
    }
}
