package org.fumewarden.exposure;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Exact confidence limits of the arithmetic mean of a lognormal distribution.
 *
 * <p>Source: Land 1971, Annals of Mathematical Statistics 42:1187; checked against US EPA publication 9285.7-081 (1992).
 * For a trial value theta of ln(mean) let z = y - theta and u = sqrt(n) mean(z) / sqrt(sum z^2). Given sum z^2 = W, u has
 * the density (1-u^2)^((n-3)/2) exp(-u sqrt(n W)/2), up to a constant. The limit is the theta at which the observed u
 * has the wanted tail.
 */
final class LandMean {
    private static final int PANELS = 20;
    private static final double WIDTHS = 30;

    private LandMean() {}

    /** The upper limit of the mean, in the unit of the samples. */
    static Reckoning<Double> upper(int n, double meanLog, double sdLog, double confidence) {
        return limit(n, meanLog, sdLog, 1 - confidence);
    }

    /** Land's factor H: ln(limit) = mean + s^2/2 + H s / sqrt(n-1). */
    static Reckoning<Double> factor(int n, double sdLog, double confidence) {
        return upper(n, 0, sdLog, confidence)
                .then(limit -> Reckoning.of((Math.log(limit) - sdLog * sdLog / 2) * Math.sqrt(n - 1.0) / sdLog));
    }

    private static Reckoning<Double> limit(int n, double meanLog, double sdLog, double tail) {
        if (n < 3) {
            return Reckoning.none(
                    Soundness.TOO_FEW, "Limits of the mean need 3 or more samples; there are " + n + ". Take more.");
        }
        if (!ToleranceFactor.isShare(tail)) {
            return Reckoning.none(Soundness.INVALID_VALUE, "A confidence must lie between 0 and 1. Write 0.95.");
        }
        if (sdLog < LognormalFit.NO_SPREAD) {
            return Reckoning.none(Soundness.DEGENERATE_VARIANCE, ResultWords.ALL_EQUAL);
        }
        DoubleUnaryOperator excess = shift -> tail - below(n, shift, sdLog);
        OptionalDouble shift = Roots.ofIncreasing(excess, 0, sdLog);
        return Reckoning.of(Math.exp(meanLog + shift.orElse(Double.NaN)));
    }

    /** P(U <= observed u) when ln(mean) lies {@code shift} above the mean of the logarithms. */
    private static double below(int n, double shift, double sdLog) {
        double w = (n - 1) * sdLog * sdLog + n * shift * shift;
        double observed = Math.asin(-Math.sqrt(n) * shift / Math.sqrt(w));
        double pull = -0.5 * Math.sqrt(n * w);
        // u = sin(phi) takes the ends out of the integrand, cos(phi)^(n-2) exp(pull sin(phi)).
        double free = n - 2.0;
        double peak = Math.asin(2 * pull / (free + Math.sqrt(free * free + 4 * pull * pull)));
        double width = 1 / Math.sqrt(free / Math.pow(Math.cos(peak), 2) + pull * Math.sin(peak));
        double from = Math.max(-Math.PI / 2, peak - WIDTHS * width);
        double to = Math.min(Math.PI / 2, peak + WIDTHS * width);
        double top = free * Math.log(Math.cos(peak)) + pull * Math.sin(peak);
        DoubleUnaryOperator density =
                phi -> Math.exp(free * Math.log(Math.max(Math.cos(phi), 0)) + pull * Math.sin(phi) - top);
        if (observed <= from) {
            return 0;
        }
        if (observed >= to) {
            return 1;
        }
        double lower = Quadrature.integral(density, from, observed, PANELS);
        double upper = Quadrature.integral(density, observed, to, PANELS);
        return lower / (lower + upper);
    }
}
