package org.fumewarden.exposure;

import java.util.Arrays;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * A bound on the 95th percentile for results too few to show their own spread.
 *
 * <p>The spread is assumed, so the bound is the one of a normal distribution with known deviation: mean + (z of the
 * share + z of the confidence / root n) deviations. Fewer results of the same mean and spread of logarithms never give
 * less: up to five the bound is never below what six of them would give, and from six on it fades.
 */
final class FewSamples {
    /**
     * Geometric standard deviation taken for granted with few samples.
     *
     * <p>Source: Buringh and Lanting, Am. Ind. Hyg. Assoc. J. 52 (1991) 6-13, abstract: 420 sets of three and more personal
     * samples; few samples underestimate the spread, "a GSD of 2.7 seems a reasonable estimate" (read in the abstract).
     */
    static final double ASSUMED_DEVIATION = 2.7;

    /** From here on the samples show their own spread; EN 689:2018 takes its tolerance test from six. */
    static final int ENOUGH = 6;

    private static final double CONFIDENT = StandardNormal.quantile(Compliance.CONFIDENCE);
    private static final double SHARE = StandardNormal.quantile(Compliance.COVERAGE);

    private static final int FADING = 3;
    private static final double LEAST = 0.02;

    private FewSamples() {}

    /** True when the spread that the samples show is not enough to go by. */
    static boolean few(SampleSet set, Reckoning<LognormalFit> fitted) {
        return set.size() < ENOUGH || (fitted.value().isEmpty() && set.detected() > 0);
    }

    /** The bound; a result below its detection limit counts as the limit. */
    static Reckoning<Double> bound(SampleSet set, Reckoning<LognormalFit> fitted) {
        double mean = Arrays.stream(set.logs()).average().orElseThrow();
        double own = Math.max(
                set.size() > 1 ? Moments.of(set.logs()).deviation() : 0,
                fitted.value().map(LognormalFit::sdLog).orElse(0.0));
        double assumed = (SHARE + CONFIDENT / Math.sqrt(set.size())) * Math.log(ASSUMED_DEVIATION);
        if (!few(set, fitted)) {
            return faded(set, fitted, Math.exp(mean + assumed));
        }
        return ToleranceFactor.of(ENOUGH, Compliance.COVERAGE, Compliance.CONFIDENCE)
                .then(k -> Reckoning.of(Math.exp(mean + Math.max(assumed, k * own))));
    }

    /**
     * A figure for few results, whole up to five of them and from six on mixed with what the results alone say: on the log
     * scale it weighs (5/n)^3, our choice, which is 0.58 of six results, 0.13 of ten and nothing from nineteen on. So the
     * step from five to six is none, and many results come to the classical limit.
     */
    static Reckoning<Double> faded(SampleSet set, Reckoning<LognormalFit> fitted, double figure) {
        if (few(set, fitted)) {
            return Reckoning.of(figure);
        }
        double weight = Math.pow((ENOUGH - 1.0) / set.size(), FADING);
        if (weight < LEAST) {
            return Reckoning.none(Soundness.NOT_NEEDED, "These samples show their own spread.");
        }
        double alone = Statistic.UPPER_TOLERANCE_70
                .of(set, fitted, Optional.empty())
                .value()
                .orElse(set.highest());
        return Reckoning.of(Math.exp(weight * Math.log(figure) + (1 - weight) * Math.log(alone)));
    }

    /** Why the bound counts, in words. */
    static String sentence(SampleSet set) {
        int n = set.size();
        return "With " + (n < ENOUGH ? n : "only " + set.detected() + " detected of " + n)
                + (n == 1 ? " sample" : " samples") + " the spread is poorly known: a geometric standard deviation of "
                + ResultWords.number(ASSUMED_DEVIATION) + " is assumed (Buringh and Lanting 1991). Take " + ENOUGH
                + " or more.";
    }
}
