package org.fumewarden.exposure;

import java.util.Arrays;

/** Mean and standard deviation by two passes; sums of squares would lose all digits at small spread. */
record Moments(int n, double mean, double deviation) {

    static Moments of(double[] values) {
        double mean = Arrays.stream(values).sum() / values.length;
        double squares = 0;
        for (double value : values) {
            double distance = value - mean;
            squares += distance * distance;
        }
        double variance = values.length < 2 ? 0 : squares / (values.length - 1);
        return new Moments(values.length, mean, Math.sqrt(variance));
    }
}
