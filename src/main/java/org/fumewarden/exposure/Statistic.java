package org.fumewarden.exposure;

import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/** The statistics that a ratio can rest on. */
public enum Statistic {
    /** The highest result or detection limit. */
    HIGHEST_SAMPLE("highest sample"),
    /** With 70 % confidence above 95 % of exposures, the spread assumed since the samples are few. */
    ASSUMED_SPREAD("upper limit of the 95th percentile with an assumed spread"),
    /** With 70 % probability above the 95th percentile, published studies and samples taken together. */
    POSTERIOR("upper limit of the 95th percentile from published studies and these samples"),
    /** The fitted 95th percentile, without confidence. */
    PERCENTILE_95("95th percentile"),
    /** With 70 % confidence above 95 % of exposures: the test of EN 689:2018. */
    UPPER_TOLERANCE_70("upper tolerance limit 95 %, 70 % confidence"),
    /** With 95 % confidence above 95 % of exposures. */
    UPPER_TOLERANCE_95("upper tolerance limit 95 %, 95 % confidence"),
    /** Upper 95 % confidence limit of the arithmetic mean after Land. */
    UPPER_MEAN("upper 95 % limit of the mean");

    private final String words;

    Statistic(String words) {
        this.words = words;
    }

    /** The statistic in words. */
    public String words() {
        return words;
    }

    /** The statistic of samples and their fit. */
    Reckoning<Double> of(SampleSet set, Reckoning<LognormalFit> fitted, Optional<Prior> prior) {
        return switch (this) {
            case HIGHEST_SAMPLE -> Reckoning.of(set.highest());
            case ASSUMED_SPREAD -> FewSamples.bound(set, fitted);
            case POSTERIOR ->
                prior.map(p -> FewSamples.faded(set, fitted, Posterior.bound(p, set)))
                        .orElseGet(() -> Reckoning.none(
                                Soundness.NOT_NEEDED, "No published study is held for this agent, process and place."));
            case PERCENTILE_95 -> fitted.then(fit -> fit.percentile(Compliance.COVERAGE));
            case UPPER_TOLERANCE_70 ->
                fitted.then(fit -> fit.tolerance(Compliance.COVERAGE, Compliance.CONFIDENCE)
                        .map(limit -> Math.max(limit, standard(set))));
            case UPPER_TOLERANCE_95 -> fitted.then(fit -> fit.tolerance(Compliance.COVERAGE, 0.95));
            case UPPER_MEAN -> fitted.then(fit -> fit.meanUpper(0.95));
        };
    }

    /** The limit by the standard's own treatment of non-detects, so that its test never says less than the figure. */
    private static double standard(SampleSet set) {
        return set.complete()
                ? 0
                : Compliance.fit(set)
                        .then(fit -> fit.tolerance(Compliance.COVERAGE, Compliance.CONFIDENCE))
                        .value()
                        .orElse(0.0);
    }
}
