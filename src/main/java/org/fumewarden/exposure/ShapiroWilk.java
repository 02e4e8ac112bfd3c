package org.fumewarden.exposure;

import java.util.Arrays;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * The Shapiro-Wilk test on the logarithms of complete samples.
 *
 * <p>Source: Royston 1995, algorithm AS R94, Applied Statistics 44:547. Below 6 samples the test has no power: passing
 * it proves nothing.
 *
 * @param statistic W, 1 is a perfect normal shape
 * @param probability chance of so low a W from a lognormal distribution
 */
public record ShapiroWilk(double statistic, double probability) {
    private static final int FEWEST = 3;
    private static final int MOST = 5000;
    private static final double[] C1 = {0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056};
    private static final double[] C2 = {0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633};
    private static final double[] C3 = {0.544, -0.39978, 0.025054, -6.714e-4};
    private static final double[] C4 = {1.3822, -0.77857, 0.062767, -0.0020322};
    private static final double[] C5 = {-1.5861, -0.31082, -0.083751, 0.0038915};
    private static final double[] C6 = {-0.4803, -0.082676, 0.0030302};
    private static final double[] G = {-2.273, 0.459};

    /** The test for lognormal shape; needs 3 to 5000 samples, all detected, not all equal. */
    public static Reckoning<ShapiroWilk> ofLogs(SampleSet set) {
        if (!set.complete()) {
            return Reckoning.none(
                    Soundness.TOO_CENSORED,
                    "The test of shape needs all samples detected. Look at the probability plot instead.");
        }
        return of(set.logs());
    }

    static Reckoning<ShapiroWilk> of(double[] values) {
        int n = values.length;
        if (n < FEWEST || n > MOST) {
            return Reckoning.none(Soundness.TOO_FEW, "The test of shape needs 3 to 5000 samples; there are " + n + ".");
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        Moments moments = Moments.of(sorted);
        if (moments.deviation() < LognormalFit.NO_SPREAD) {
            return Reckoning.none(Soundness.DEGENERATE_VARIANCE, ResultWords.ALL_EQUAL);
        }
        double[] a = coefficients(n);
        double product = 0;
        for (int i = 0; i < a.length; i++) {
            product += a[i] * (sorted[n - 1 - i] - sorted[i]);
        }
        double squares = moments.deviation() * moments.deviation() * (n - 1);
        double w = Math.min(1, product * product / squares);
        return Reckoning.of(new ShapiroWilk(w, probability(w, n)));
    }

    /** Weights of the upper half, largest first. */
    private static double[] coefficients(int n) {
        int half = n / 2;
        double[] a = new double[half];
        if (n == 3) {
            a[0] = Math.sqrt(0.5);
            return a;
        }
        double[] m = new double[half];
        double squares = 0;
        for (int i = 0; i < half; i++) {
            m[i] = -StandardNormal.quantile((i + 1 - 0.375) / (n + 0.25));
            squares += 2 * m[i] * m[i];
        }
        double root = Math.sqrt(squares);
        double u = 1 / Math.sqrt(n);
        a[0] = polynomial(C1, u) + m[0] / root;
        int fixed = 1;
        double scale;
        if (n > 5) {
            a[1] = polynomial(C2, u) + m[1] / root;
            fixed = 2;
            scale = Math.sqrt((squares - 2 * m[0] * m[0] - 2 * m[1] * m[1]) / (1 - 2 * a[0] * a[0] - 2 * a[1] * a[1]));
        } else {
            scale = Math.sqrt((squares - 2 * m[0] * m[0]) / (1 - 2 * a[0] * a[0]));
        }
        for (int i = fixed; i < half; i++) {
            a[i] = m[i] / scale;
        }
        return a;
    }

    private static double probability(double w, int n) {
        if (n == 3) {
            double p = 6 / Math.PI * (Math.asin(Math.sqrt(w)) - Math.asin(Math.sqrt(0.75)));
            return Math.max(0, Math.min(1, p));
        }
        double y = Math.log(Math.max(1 - w, 1e-19));
        double mean;
        double deviation;
        if (n <= 11) {
            double gamma = polynomial(G, n);
            if (y >= gamma) {
                return 0;
            }
            y = -Math.log(gamma - y);
            mean = polynomial(C3, n);
            deviation = Math.exp(polynomial(C4, n));
        } else {
            double log = Math.log(n);
            mean = polynomial(C5, log);
            deviation = Math.exp(polynomial(C6, log));
        }
        return StandardNormal.above((y - mean) / deviation);
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
