package org.fumewarden.exposure;

import java.util.ArrayList;
import java.util.List;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * The product-limit estimate of the distribution, without any assumption on its shape.
 *
 * <p>Source: Kaplan and Meier 1958, applied to left-censored values by turning the scale around; agrees with R survival
 * 3.5.3 on turned data.
 */
public final class KaplanMeier {
    private final List<Step> steps;
    private final boolean lowestDetected;

    /**
     * A detected value.
     *
     * @param below estimated share of exposures below it
     * @param upTo estimated share of exposures up to it
     */
    public record Step(double concentration, double below, double upTo) {}

    private KaplanMeier(List<Step> steps, boolean lowestDetected) {
        this.steps = List.copyOf(steps);
        this.lowestDetected = lowestDetected;
    }

    /** The estimate; needs one detected sample. */
    public static Reckoning<KaplanMeier> of(SampleSet set) {
        if (set.detected() == 0) {
            return Reckoning.none(
                    Soundness.ALL_CENSORED,
                    "No sample was detected, so there is no distribution. Sample longer or with a finer method.");
        }
        List<Sample> samples = set.samples();
        double[] values = samples.stream()
                .filter(Sample::detected)
                .mapToDouble(Sample::concentration)
                .distinct()
                .sorted()
                .toArray();
        List<Step> steps = new ArrayList<>();
        double upTo = 1;
        for (int i = values.length - 1; i >= 0; i--) {
            double value = values[i];
            long atRisk =
                    samples.stream().filter(s -> s.concentration() <= value).count();
            long events = samples.stream()
                    .filter(s -> s.detected() && s.concentration() == value)
                    .count();
            double below = upTo * (atRisk - events) / atRisk;
            steps.add(0, new Step(value, below, upTo));
            upTo = below;
        }
        return Reckoning.of(new KaplanMeier(steps, steps.get(0).below() == 0));
    }

    /** The steps, lowest first. */
    public List<Step> steps() {
        return steps;
    }

    /** The smallest detected value up to which at least the given share of exposures lies. */
    public Reckoning<Double> percentile(double share) {
        if (!ToleranceFactor.isShare(share)) {
            return Reckoning.none(Soundness.INVALID_VALUE, "The share " + share + " must lie between 0 and 1.");
        }
        if (share <= steps.get(0).below()) {
            return Reckoning.none(
                    Soundness.TOO_CENSORED, "This percentile lies among the non-detects. Ask for a higher one.");
        }
        return Reckoning.of(steps.stream()
                .filter(s -> s.upTo() >= share - 1e-12)
                .findFirst()
                .orElseThrow()
                .concentration());
    }

    /** The mean; non-detects below the lowest result count as that result, which a warning says. */
    public Reckoning<Double> mean() {
        double sum = 0;
        for (Step step : steps) {
            sum += step.concentration() * (step.upTo() - step.below());
        }
        if (lowestDetected) {
            return Reckoning.of(sum);
        }
        double floor = steps.get(0).concentration();
        return Reckoning.of(
                sum + floor * steps.get(0).below(),
                Soundness.TOO_CENSORED,
                "The lowest samples were not detected; the mean counts them at the lowest result, "
                        + ResultWords.number(floor) + ", and is an upper bound.");
    }
}
