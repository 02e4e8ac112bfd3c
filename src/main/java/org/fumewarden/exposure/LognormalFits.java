package org.fumewarden.exposure;

import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/** Fits a lognormal distribution to samples. */
public final class LognormalFits {
    private static final int FEWEST = 3;
    private static final int FEWEST_DETECTED = 3;
    private static final double MOST_CENSORED = 0.8;

    private LognormalFits() {}

    /** The fit with non-detects by maximum likelihood. */
    public static Reckoning<LognormalFit> of(SampleSet set) {
        return of(set, NonDetects.MAXIMUM_LIKELIHOOD);
    }

    /**
     * The fit with the given treatment of non-detects; without any, all treatments agree.
     *
     * <p>No fit with fewer than 3 samples, fewer than 3 detected, or more than 80 % not detected (our own design limits,
     * no source).
     */
    public static Reckoning<LognormalFit> of(SampleSet set, NonDetects method) {
        int n = set.size();
        int detected = set.detected();
        if (n < FEWEST) {
            return Reckoning.none(
                    Soundness.TOO_FEW, "A distribution needs 3 or more samples; there are " + n + ". Take more.");
        }
        if (set.complete()) {
            Moments moments = Moments.of(set.logs());
            return fit(moments.mean(), moments.deviation(), n, n, "all detected");
        }
        if (detected == 0) {
            return Reckoning.none(Soundness.ALL_CENSORED, allBelow(set));
        }
        if (detected < FEWEST_DETECTED || n - detected > MOST_CENSORED * n) {
            return Reckoning.none(
                    Soundness.TOO_CENSORED,
                    "Only " + detected + " of " + n
                            + " samples were detected, too few for a fit. Sample longer or with a finer method.");
        }
        return censored(set, method);
    }

    private static String allBelow(SampleSet set) {
        String bound = Exceedance.aboveHighest(set.size(), 0.95)
                .value()
                .map(share -> " With 95 % confidence no more than " + ResultWords.number(100 * share)
                        + " % of exposures are above it.")
                .orElse("");
        return "All " + set.size() + " samples are below their detection limits, the highest "
                + ResultWords.number(set.highestDetectionLimit()) + ", so there is no mean and no spread." + bound
                + " Sample longer or with a finer method.";
    }

    private static Reckoning<LognormalFit> censored(SampleSet set, NonDetects method) {
        int n = set.size();
        int detected = set.detected();
        if (method.substitutes()) {
            double[] logs = set.samples().stream()
                    .mapToDouble(s -> Math.log(s.detected() ? s.concentration() : method.standIn(s.concentration())))
                    .toArray();
            Moments moments = Moments.of(logs);
            return fit(moments.mean(), moments.deviation(), n, detected, method.words());
        }
        if (method == NonDetects.MAXIMUM_LIKELIHOOD) {
            return CensoredLikelihood.of(set)
                    .then(found -> fit(found.meanLog(), found.sdLog(), n, detected, method.words()));
        }
        OrderRegression line = OrderRegression.of(set, OrderRegression.BLOM);
        Moments moments = method == NonDetects.ROBUST_REGRESSION ? line.filled() : line.line();
        return fit(moments.mean(), moments.deviation(), n, detected, method.words());
    }

    private static Reckoning<LognormalFit> fit(double mean, double deviation, int n, int evidence, String method) {
        if (!Double.isFinite(mean) || !Double.isFinite(deviation) || deviation < 0) {
            return Reckoning.none(
                    Soundness.OUT_OF_RANGE, "The fit has no finite mean and spread. Look at the samples one by one.");
        }
        return new LognormalFit(mean, deviation, n, evidence, method).judged();
    }
}
