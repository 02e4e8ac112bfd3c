package org.fumewarden.exposure;

import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.TDistribution;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * The share of exposures above a limit.
 *
 * @param share point estimate
 * @param lower one-sided lower confidence limit
 * @param upper one-sided upper confidence limit
 */
public record Exceedance(double share, double lower, double upper) {

    /**
     * The share with exact limits for complete samples and limits by observed information for non-detects.
     *
     * <p>Source: exact limits by the noncentral t; with non-detects Frome and Wambach 2005, ORNL/TM-2005/52, with
     * Student's t and one degree of freedom fewer than there are detected samples.
     *
     * @param confidence one-sided, such as 0.95
     */
    public static Reckoning<Exceedance> of(SampleSet set, double limit, double confidence) {
        if (!(confidence > 0.5 && confidence < 1)) {
            return Reckoning.none(
                    Soundness.INVALID_VALUE,
                    "The confidence " + confidence + " must lie between 0.5 and 1. Write 0.95 for 95 %.");
        }
        Reckoning<LognormalFit> fitted = LognormalFits.of(set);
        return fitted.then(fit -> fit.distance(limit)
                .then(k -> set.complete()
                        ? exact(set.size(), k, confidence)
                        : byInformation(set, k, Math.log(limit), confidence)));
    }

    /**
     * The largest share above the highest of some samples, whatever the shape of the distribution.
     *
     * <p>1 - (1 - confidence)^(1/n), elementary; 6 samples bound it at 39 % with 95 % confidence.
     */
    public static Reckoning<Double> aboveHighest(int samples, double confidence) {
        if (samples < 1 || !ToleranceFactor.isShare(confidence)) {
            return Reckoning.none(
                    Soundness.TOO_FEW, "A bound needs a sample and a confidence between 0 and 1. Write 0.95.");
        }
        return Reckoning.of(-Math.expm1(Math.log1p(-confidence) / samples));
    }

    private static Reckoning<Exceedance> exact(int n, double k, double confidence) {
        NoncentralT distribution = new NoncentralT(n - 1);
        double root = Math.sqrt(n);
        OptionalDouble low = solve(distribution, k, root, confidence);
        OptionalDouble high = solve(distribution, k, root, 1 - confidence);
        if (low.isEmpty() || high.isEmpty()) {
            return Reckoning.none(
                    Soundness.OUT_OF_RANGE, "The share above the limit is too small or too large to bound.");
        }
        return Reckoning.of(new Exceedance(
                StandardNormal.above(k),
                StandardNormal.above(high.getAsDouble()),
                StandardNormal.above(low.getAsDouble())));
    }

    private static OptionalDouble solve(NoncentralT distribution, double k, double root, double share) {
        return Roots.ofIncreasing(z -> share - distribution.below(k * root, z * root), k, 1);
    }

    private static Reckoning<Exceedance> byInformation(SampleSet set, double k, double logLimit, double confidence) {
        return CensoredLikelihood.of(set).map(fit -> {
            double t = TDistribution.of(set.detected() - 1.0).inverseCumulativeProbability(confidence);
            double half = t * fit.errorOfDistance(logLimit);
            return new Exceedance(
                    StandardNormal.above(k), StandardNormal.above(k + half), StandardNormal.above(k - half));
        });
    }
}
