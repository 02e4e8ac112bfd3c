package org.fumewarden.exposure;

import org.apache.commons.statistics.distribution.TDistribution;

/** Estimates of the arithmetic mean of a group, with confidence limits. */
public final class MeanLimits {
    private static final int MOST_TERMS = 2000;

    private MeanLimits() {}

    /**
     * Lower and upper limit.
     *
     * @param lower each limit holds with the one-sided confidence asked for
     */
    public record Interval(double lower, double upper) {}

    /** Land's exact limits; the usual choice for lognormal samples. */
    public static Outcome<Interval> land(LognormalFit fit, double oneSidedConfidence) {
        int n = fit.evidence();
        return LandMean.lower(n, fit.meanLog(), fit.sdLog(), oneSidedConfidence)
                .then(low -> LandMean.upper(n, fit.meanLog(), fit.sdLog(), oneSidedConfidence)
                        .map(high -> new Interval(low, high)));
    }

    /** Land's factor H for tables, see {@link LandMean}. */
    public static Outcome<Double> landFactor(int n, double sdLog, double oneSidedConfidence) {
        return LandMean.factor(n, sdLog, oneSidedConfidence);
    }

    /** Cox's approximation with normal quantiles. */
    public static Outcome<Interval> cox(LognormalFit fit, double oneSidedConfidence) {
        return cox(fit, oneSidedConfidence, StandardNormal::quantile);
    }

    /** Cox's approximation with t quantiles. Source: Olsson 2005, Journal of Statistics Education 13(1). */
    public static Outcome<Interval> modifiedCox(LognormalFit fit, double oneSidedConfidence) {
        return cox(fit, oneSidedConfidence, share -> t(fit.evidence(), share));
    }

    private static Outcome<Interval> cox(
            LognormalFit fit, double confidence, java.util.function.DoubleUnaryOperator quantile) {
        if (fit.evidence() < 2 || !ToleranceFactor.isShare(confidence)) {
            return Outcome.none(Status.TOO_FEW, "Limits of the mean need 2 or more samples. Take more.");
        }
        double n = fit.evidence();
        double variance = fit.sdLog() * fit.sdLog();
        double error = Math.sqrt(variance / n + variance * variance / (2 * (n - 1)));
        double centre = fit.meanLog() + variance / 2;
        double half = quantile.applyAsDouble(confidence) * error;
        return Outcome.finite(Math.exp(centre + half)).map(high -> new Interval(Math.exp(centre - half), high));
    }

    /** Student's limits of the plain mean, which are too low for skewed samples. */
    public static Outcome<Interval> student(SampleSet set, double oneSidedConfidence) {
        if (set.size() < 2 || !set.complete() || !ToleranceFactor.isShare(oneSidedConfidence)) {
            return Outcome.none(Status.TOO_FEW, "Student's limits need 2 or more samples, all detected. Take more.");
        }
        Moments plain = Moments.of(
                set.samples().stream().mapToDouble(Sample::concentration).toArray());
        double half = t(plain.n(), oneSidedConfidence) * plain.deviation() / Math.sqrt(plain.n());
        return Outcome.finite(plain.mean() + half).map(high -> new Interval(plain.mean() - half, high));
    }

    /** The minimum-variance unbiased estimate. Source: Finney 1941; US EPA publication 9285.7-081 (1992). */
    public static Outcome<Double> unbiased(LognormalFit fit) {
        double n = fit.evidence();
        if (n < 2) {
            return Outcome.none(Status.TOO_FEW, "The unbiased mean needs 2 or more samples. Take more.");
        }
        double t = fit.sdLog() * fit.sdLog() / 2;
        double term = (n - 1) * t / n;
        double sum = 1 + term;
        for (int j = 2; j < MOST_TERMS && Math.abs(term) > 1e-17 * sum; j++) {
            term *= (n - 1) * (n - 1) * t / (n * j * (n + 2 * j - 3));
            sum += term;
        }
        return Outcome.finite(Math.exp(fit.meanLog()) * sum);
    }

    private static double t(int n, double share) {
        return TDistribution.of(n - 1.0).inverseCumulativeProbability(share);
    }
}
