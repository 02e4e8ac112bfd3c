package org.fumewarden.exposure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * The value that drives the advice.
 *
 * <p>Fails towards more protection:
 *
 * <ul>
 *   <li>fewer than 6 samples, or too few detected for a fit: the larger of a bound with an assumed spread and what published
 *       studies and the samples give together, with a caution;
 *   <li>6 and more: the larger of the highest sample and the upper tolerance limit 95 %, 70 % confidence; where the figure
 *       for few samples is larger still, it is mixed in and fades out until there are nineteen;
 *   <li>3 to 5 that pass the preliminary test of EN 689: that figure, held at the limit;
 *   <li>a geometric standard deviation below 1.2 is raised to 1.2 first;
 *   <li>6 and more, nothing detected: the highest detection limit in place of the tolerance limit, with a caution;
 *   <li>a statistic that was asked for counts only when it is higher.
 * </ul>
 *
 * @param value in the unit of the samples, never below the highest sample
 * @param cautions what weakens it, in words, with their status
 * @param measureMore true when samples are missing or prove nothing
 */
public record Governing(
        Statistic statistic, double value, String sentence, List<Caution> cautions, boolean measureMore) {
    private static final int FIT_FROM = 3;
    /** Two sides, 95 %. */
    private static final double SURPRISE = StandardNormal.quantile(0.975);

    public Governing {
        cautions = List.copyOf(cautions);
        if (!SampleSet.isConcentration(value)) {
            throw new IllegalArgumentException("A governing value must be above zero but is " + value + ".");
        }
    }

    /** Something that weakens the value. */
    public record Caution(Soundness status, String sentence) {}

    /** Whether a caution of this kind weakens it. */
    public boolean holds(Soundness status) {
        return cautions.stream().anyMatch(c -> c.status() == status);
    }

    /** Each sentence once. */
    private static List<Caution> once(List<Caution> cautions) {
        Map<String, Caution> bySentence = new LinkedHashMap<>();
        cautions.forEach(c -> bySentence.putIfAbsent(c.sentence(), c));
        return List.copyOf(bySentence.values());
    }

    /** Samples so far from what others found that one of the two is not about this work. */
    private static Optional<Caution> disagreement(Prior prior, SampleSet set) {
        double off = prior.surprise(set);
        return Math.abs(off) <= SURPRISE
                ? Optional.empty()
                : Optional.of(new Caution(
                        Soundness.WARN_PRIOR_DISAGREES,
                        "The samples lie far " + (off > 0 ? "above" : "below")
                                + " what published studies of such work found (median "
                                + ResultWords.number(Math.exp(prior.meanLog()))
                                + "). Check the samples, the unit and the description of the work."));
    }

    static Governing of(SampleSet set, Reckoning<LognormalFit> fitted, Appraisal.Question question) {
        double limit = question.limit();
        List<Caution> cautions = new ArrayList<>();
        boolean more = set.size() < FewSamples.ENOUGH;
        boolean few = FewSamples.few(set, fitted);
        if (few) {
            cautions.add(new Caution(Soundness.TOO_FEW, FewSamples.sentence(set)));
        }
        if (fitted.status() != Soundness.SOUND && set.size() >= FIT_FROM) {
            cautions.add(new Caution(fitted.status(), fitted.sentence()));
            more = true;
        }
        question.prior().flatMap(p -> disagreement(p, set)).ifPresent(cautions::add);
        if (set.highestDetectionLimit() >= limit) {
            cautions.add(new Caution(
                    Soundness.LIMIT_BELOW_DETECTION,
                    "A detection limit of " + ResultWords.number(set.highestDetectionLimit())
                            + " is not below the exposure limit of " + ResultWords.number(limit)
                            + ", so that sample proves nothing. Sample longer or with a finer method."));
            more = true;
        }
        List<Statistic> candidates = new ArrayList<>();
        if (!few) {
            candidates.add(Statistic.UPPER_TOLERANCE_70);
        }
        candidates.add(Statistic.ASSUMED_SPREAD);
        question.prior().ifPresent(p -> candidates.add(Statistic.POSTERIOR));
        question.desired()
                .filter(s -> s != Statistic.HIGHEST_SAMPLE && !candidates.contains(s))
                .ifPresent(candidates::add);
        double most = Compliance.passesFrom(set, limit).orElse(Double.POSITIVE_INFINITY);
        boolean held = false;
        Statistic chosen = Statistic.HIGHEST_SAMPLE;
        double value = set.highest();
        for (Statistic statistic : candidates) {
            Reckoning<Double> found =
                    statistic.of(set, fitted.map(LognormalFit::withPlausibleSpread), question.prior());
            if (found.value().isEmpty() && found.status() != Soundness.NOT_NEEDED && set.size() >= FIT_FROM) {
                cautions.add(new Caution(found.status(), "No " + statistic.words() + ": " + found.sentence()));
            }
            double figure = found.value().orElse(0.0);
            boolean above = figure > most && !question.desired().equals(Optional.of(statistic));
            held |= above;
            if ((above ? most : figure) > value) {
                value = above ? most : figure;
                chosen = statistic;
            }
        }
        if (held && value <= most) {
            cautions.add(new Caution(
                    Soundness.HELD_AT_LIMIT,
                    "All " + set.size()
                            + " samples are so far below the limit that the preliminary test of EN 689 passes."
                            + " They count as " + ResultWords.number(value)
                            + ", the lowest limit at which that test would still pass."));
        }
        String sentence = "The ratio rests on the " + chosen.words() + ", " + ResultWords.number(value) + ".";
        return new Governing(chosen, value, sentence, once(cautions), more);
    }
}
