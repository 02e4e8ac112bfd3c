package org.fumewarden.exposure;

import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * A lognormal distribution fitted to samples.
 *
 * @param meanLog mean of the natural logarithms
 * @param sdLog standard deviation of the natural logarithms, 0 when all samples are equal
 * @param samples number of samples
 * @param evidence number of samples that a tolerance factor may count: the detected ones. Non-detects tell less, and
 *     complete-sample factors with a censored fit would be too small
 * @param method how it was fitted, in words
 */
public record LognormalFit(double meanLog, double sdLog, int samples, int evidence, String method) {
    /** Below this the spread is rounding, not air. */
    static final double NO_SPREAD = 1e-9;

    static final double SMALLEST_GSD = 1.2;
    static final double LARGEST_GSD = 10;
    private static final int STABLE_FROM = 7;
    private static final double STABLE_UP_TO_GSD = 4;

    public LognormalFit {
        if (!Double.isFinite(meanLog) || !(sdLog >= 0) || !Double.isFinite(sdLog) || samples < 1) {
            throw new IllegalArgumentException(
                    "A fit with mean " + meanLog + ", deviation " + sdLog + " and " + samples + " samples is no fit.");
        }
    }

    /** The geometric mean, in the unit of the samples. */
    public double geometricMean() {
        return Math.exp(meanLog);
    }

    /** The geometric standard deviation, 1 or more. */
    public double geometricDeviation() {
        return Math.exp(sdLog);
    }

    /** The value below which the given share of exposures lies, without any confidence. */
    public Reckoning<Double> percentile(double share) {
        if (!ToleranceFactor.isShare(share)) {
            return Reckoning.none(Soundness.INVALID_VALUE, "The share " + share + " must lie between 0 and 1.");
        }
        return spread().then(s -> Reckoning.of(Math.exp(meanLog + StandardNormal.quantile(share) * s)));
    }

    /** The upper tolerance limit: with this confidence above the given share of exposures. */
    public Reckoning<Double> tolerance(double coverage, double confidence) {
        return spread().then(s ->
                ToleranceFactor.of(evidence, coverage, confidence).then(k -> Reckoning.of(Math.exp(meanLog + k * s))));
    }

    /** The logarithm of the limit, in standard deviations above the mean. */
    public Reckoning<Double> distance(double limit) {
        if (!SampleSet.isConcentration(limit)) {
            return Reckoning.none(Soundness.INVALID_LIMIT, Ratios.limitSentence(limit));
        }
        return spread().then(s -> Reckoning.of((Math.log(limit) - meanLog) / s));
    }

    /** Upper confidence limit of the arithmetic mean after Land, with a warning where it runs away. */
    public Reckoning<Double> meanUpper(double confidence) {
        Reckoning<Double> upper = LandMean.upper(evidence, meanLog, sdLog, confidence);
        if (evidence >= STABLE_FROM && geometricDeviation() < STABLE_UP_TO_GSD) {
            return upper;
        }
        return upper.then(value -> Reckoning.of(
                value,
                Soundness.WARN_UNSTABLE,
                "With " + evidence + " results and a geometric standard deviation of "
                        + ResultWords.number(geometricDeviation())
                        + " the upper confidence limit of the mean is unstable. Take more samples."));
    }

    /** The same fit with the spread raised to the smallest one that is plausible for personal samples. */
    LognormalFit withPlausibleSpread() {
        return new LognormalFit(meanLog, Math.max(sdLog, Math.log(SMALLEST_GSD)), samples, evidence, method);
    }

    private Reckoning<Double> spread() {
        if (sdLog < NO_SPREAD) {
            return Reckoning.none(Soundness.DEGENERATE_VARIANCE, ResultWords.ALL_EQUAL);
        }
        return Reckoning.of(sdLog);
    }

    /** The fit with the warning that its spread deserves. */
    Reckoning<LognormalFit> judged() {
        if (sdLog < NO_SPREAD) {
            return Reckoning.of(this, Soundness.DEGENERATE_VARIANCE, ResultWords.ALL_EQUAL);
        }
        String spread = ResultWords.number(geometricDeviation());
        if (geometricDeviation() < SMALLEST_GSD) {
            return Reckoning.of(
                    this,
                    Soundness.WARN_GSD_TOO_SMALL,
                    "A geometric standard deviation of " + spread
                            + " is not plausible for personal samples. Check whether the results were rounded or copied.");
        }
        if (geometricDeviation() > LARGEST_GSD) {
            return Reckoning.of(
                    this,
                    Soundness.WARN_GSD_TOO_LARGE,
                    "A geometric standard deviation of " + spread
                            + " says that these samples are not one group. Split them by task or place.");
        }
        return Reckoning.of(this);
    }
}
