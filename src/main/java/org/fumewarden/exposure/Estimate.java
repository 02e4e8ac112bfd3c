package org.fumewarden.exposure;

import java.util.Optional;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * One statistic of the samples.
 *
 * @param value in the unit of the samples; empty when it cannot be computed
 * @param status sound, a warning, or why there is no value
 * @param sentence what the statistic says, or why there is none; never empty
 */
public record Estimate(Statistic statistic, Optional<Double> value, Soundness status, String sentence) {

    static Estimate highest(SampleSet set) {
        boolean found = set.samples().stream().anyMatch(s -> s.detected() && s.concentration() == set.highest());
        String sentence = "The highest of " + set.size() + (set.size() == 1 ? " sample" : " samples") + " is "
                + (found ? "" : "a detection limit of ") + ResultWords.number(set.highest()) + ".";
        return new Estimate(Statistic.HIGHEST_SAMPLE, Optional.of(set.highest()), Soundness.SOUND, sentence);
    }

    static Estimate of(Statistic statistic, SampleSet set, Reckoning<LognormalFit> fitted, Optional<Prior> prior) {
        Reckoning<Double> outcome = statistic.of(set, fitted, prior);
        if (outcome instanceof Reckoned<Double> value) {
            String warning = value.sentence().isEmpty() ? "" : " " + value.sentence();
            return new Estimate(
                    statistic,
                    outcome.value(),
                    outcome.status(),
                    "The " + statistic.words() + " is " + ResultWords.number(value.result()) + ", "
                            + fitted.value().map(Estimate::basis).orElse("from " + set.size() + " of them") + "."
                            + warning);
        }
        return new Estimate(statistic, Optional.empty(), outcome.status(), outcome.sentence());
    }

    private static String basis(LognormalFit fit) {
        String non = fit.evidence() < fit.samples()
                ? " (" + (fit.samples() - fit.evidence()) + " not detected, " + fit.method() + ")"
                : "";
        return "from " + fit.samples() + " samples" + non + " with geometric mean "
                + ResultWords.number(fit.geometricMean()) + " and geometric standard deviation "
                + ResultWords.number(fit.geometricDeviation());
    }
}
