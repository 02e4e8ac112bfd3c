package org.fumewarden.exposure;

import java.util.List;
import java.util.OptionalDouble;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * The two tests of EN 689:2018: a preliminary one for 3 to 5 samples, and one by upper tolerance for 6 and more.
 *
 * <p>Both speak of screening a similarly exposed group and replace neither local codes nor a competent person. The
 * figures of the preliminary test are from memory; the tolerance table of Annex F agrees with exact factors at all 25
 * sizes.
 */
public final class Compliance {
    /** Share of exposures that has to lie below the limit. */
    public static final double COVERAGE = 0.95;

    /** Confidence of the upper tolerance test. */
    public static final double CONFIDENCE = 0.70;

    private static final int PRELIMINARY_FROM = 3;
    private static final int TOLERANCE_FROM = 6;
    private static final double UNLIKELY = 0.05;
    /** A result at the threshold is not below it, whatever the product of two doubles says. */
    private static final double SURELY = 1 - 1e-12;

    private static final double[] PRELIMINARY_SHARES = {0.1, 0.15, 0.2};

    private Compliance() {}

    /** What a test decides. */
    public enum Decision {
        COMPLIANT,
        NON_COMPLIANT,
        NO_DECISION,
        NOT_APPLICABLE
    }

    /**
     * A decision with its reason.
     *
     * @param status sound, or what stood in the way
     */
    public record Verdict(Decision decision, Soundness status, String sentence) {

        /** No pass stands beside a figure above the limit, and no open test alone: the stricter counts, and both are said. */
        Verdict beside(double figure, double limit) {
            if (!(figure > limit)
                    || !List.of(Decision.COMPLIANT, Decision.NO_DECISION).contains(decision)) {
                return this;
            }
            return decision == Decision.COMPLIANT
                    ? new Verdict(
                            Decision.NO_DECISION,
                            Soundness.TOO_FEW,
                            sentence + " That alone would pass, yet the figure used here, " + ResultWords.number(figure)
                                    + ", is above the limit, and the stricter one counts. Take more samples.")
                    : new Verdict(
                            decision,
                            status,
                            sentence + " Until the test decides, the figure used here counts: "
                                    + ResultWords.number(figure) + ", above the limit. Take more samples.");
        }
    }

    /**
     * The upper tolerance test in numbers.
     *
     * @param distance standard deviations between the mean and the limit, on the log scale
     * @param required tolerance factor for this number of samples
     * @param toleranceLimit the value compared with the limit
     */
    public record Tolerance(double distance, double required, double toleranceLimit) {
        /** True when the limit is far enough away. */
        public boolean compliant() {
            return distance >= required;
        }
    }

    /** The preliminary test: strictly below 0.1, 0.15 or 0.2 of the limit for 3, 4 or 5 samples. */
    public static Verdict preliminary(SampleSet set, double limit) {
        if (!SampleSet.isConcentration(limit)) {
            return new Verdict(Decision.NOT_APPLICABLE, Soundness.INVALID_LIMIT, Ratios.limitSentence(limit));
        }
        if (set.samples().stream().anyMatch(s -> s.detected() && s.concentration() > limit)) {
            return new Verdict(
                    Decision.NON_COMPLIANT,
                    Soundness.SOUND,
                    "A sample is above the limit, so the limit is not complied with.");
        }
        if (set.highestDetectionLimit() >= limit) {
            return new Verdict(Decision.NO_DECISION, Soundness.LIMIT_BELOW_DETECTION, belowDetection(set, limit));
        }
        int n = set.size();
        if (n < PRELIMINARY_FROM || n >= TOLERANCE_FROM) {
            return new Verdict(
                    Decision.NOT_APPLICABLE,
                    n < PRELIMINARY_FROM ? Soundness.TOO_FEW : Soundness.SOUND,
                    "The preliminary test is for 3 to 5 samples; there are " + n + ".");
        }
        double share = PRELIMINARY_SHARES[n - PRELIMINARY_FROM];
        boolean low = set.samples().stream().allMatch(s -> s.concentration() < share * limit * SURELY);
        return low
                ? new Verdict(
                        Decision.COMPLIANT,
                        Soundness.SOUND,
                        "All " + n + " samples are below " + share + " of the limit. A pass is weak evidence when the"
                                + " spread is large.")
                : new Verdict(
                        Decision.NO_DECISION,
                        Soundness.TOO_FEW,
                        "Not all " + n + " samples are below " + share + " of the limit. Take at least 6.");
    }

    /**
     * The lowest limit for which results that pass the preliminary test would still pass it: ten times the highest of three,
     * and so on. Empty where they do not pass, or where there is no limit to pass by.
     */
    static OptionalDouble passesFrom(SampleSet set, double limit) {
        return limit == Double.MAX_VALUE || preliminary(set, limit).decision() != Decision.COMPLIANT
                ? OptionalDouble.empty()
                : OptionalDouble.of(set.highest() / PRELIMINARY_SHARES[set.size() - PRELIMINARY_FROM]);
    }

    /** The numbers of the upper tolerance test, for a fit of 6 or more samples. */
    public static Reckoning<Tolerance> tolerance(LognormalFit fit, double limit) {
        if (fit.samples() < TOLERANCE_FROM) {
            return Reckoning.none(
                    Soundness.TOO_FEW,
                    "The upper tolerance test needs 6 or more samples; there are " + fit.samples() + ". Take more.");
        }
        return fit.distance(limit).then(distance -> ToleranceFactor.of(fit.evidence(), COVERAGE, CONFIDENCE)
                .then(k -> fit.tolerance(COVERAGE, CONFIDENCE).map(utl -> new Tolerance(distance, k, utl))));
    }

    /** The test that the number of samples asks for; a spread or a shape that is not plausible never passes. */
    public static Verdict test(SampleSet set, double limit) {
        if (set.size() < TOLERANCE_FROM || !SampleSet.isConcentration(limit)) {
            return preliminary(set, limit);
        }
        if (set.highestDetectionLimit() >= limit) {
            return new Verdict(Decision.NO_DECISION, Soundness.LIMIT_BELOW_DETECTION, belowDetection(set, limit));
        }
        Reckoning<Tolerance> found = fit(set).then(fit -> tolerance(fit, limit));
        if (found instanceof Reckoned<Tolerance> value) {
            return shaped(set, judged(value));
        }
        return new Verdict(Decision.NO_DECISION, found.status(), found.sentence());
    }

    /**
     * The fit of the standard: complete samples by mean and deviation of the logarithms, otherwise a straight line through
     * the detected ones on log-probability axes, and the tolerance factor counts all samples (Annex H, from memory).
     */
    static Reckoning<LognormalFit> fit(SampleSet set) {
        return LognormalFits.of(set, NonDetects.REGRESSION_ON_ORDER)
                .map(f -> new LognormalFit(f.meanLog(), f.sdLog(), f.samples(), f.samples(), f.method()));
    }

    private static Verdict shaped(SampleSet set, Verdict verdict) {
        boolean poor = ShapiroWilk.ofLogs(set)
                .value()
                .filter(shape -> shape.probability() < UNLIKELY)
                .isPresent();
        return poor && verdict.decision() == Decision.COMPLIANT
                ? new Verdict(
                        Decision.NO_DECISION,
                        Soundness.WARN_POOR_FIT,
                        "The samples do not look lognormal, so the test does not apply. Split them by task or place.")
                : verdict;
    }

    private static Verdict judged(Reckoned<Tolerance> found) {
        Tolerance numbers = found.result();
        boolean below = numbers.distance() < 0;
        String sentence = "The limit lies " + ResultWords.number(Math.abs(numbers.distance()))
                + " standard deviations " + (below ? "below" : "above") + " the mean of the logarithms; "
                + ResultWords.number(numbers.required()) + (below ? " above it are required." : " are required.");
        if (!numbers.compliant()) {
            return new Verdict(Decision.NON_COMPLIANT, found.status(), sentence);
        }
        boolean doubtful = List.of(Soundness.WARN_GSD_TOO_SMALL, Soundness.WARN_GSD_TOO_LARGE)
                .contains(found.status());
        return doubtful
                ? new Verdict(
                        Decision.NO_DECISION,
                        found.status(),
                        sentence + " By these numbers the test of EN 689 would pass. " + found.sentence())
                : new Verdict(Decision.COMPLIANT, found.status(), sentence);
    }

    private static String belowDetection(SampleSet set, double limit) {
        return "A detection limit of " + ResultWords.number(set.highestDetectionLimit()) + " is not below the limit of "
                + ResultWords.number(limit)
                + ", so the sample proves nothing. Sample longer or with a finer method.";
    }
}
