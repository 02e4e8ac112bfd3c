package org.fumewarden.exposure;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Spread between and within the workers of a similarly exposed group, on the log scale.
 *
 * <p>One-way random effects by analysis of variance. Source of the rules: BOHS and NVvA, Testing compliance with
 * occupational exposure limits (2011), from memory.
 *
 * @param meanLog mean of the logarithms, all samples
 * @param meanSquareBetween mean square between workers
 * @param meanSquareWithin mean square within workers
 * @param between variance between workers, 0 or more
 * @param within variance within workers
 */
public record WorkerVariance(
        double meanLog, double meanSquareBetween, double meanSquareWithin, double between, double within) {
    private static final double SHARE_THAT_MATTERS = 0.2;
    private static final double COVERAGE = 0.95;

    /** The individual test: how likely a worker has more than 5 % of days above the limit. */
    public record Individual(double distance, double probability) {}

    /** The variances of samples that name their workers; needs 2 workers, one of them with 2 samples. */
    public static Reckoning<WorkerVariance> of(SampleSet set) {
        if (!set.complete()) {
            return Reckoning.none(
                    Soundness.TOO_CENSORED, "Spread between workers needs all samples detected. Leave it out.");
        }
        if (set.samples().stream().anyMatch(s -> s.worker().isEmpty())) {
            return Reckoning.none(
                    Soundness.TOO_FEW, "Spread between workers needs the worker of each sample. Name them.");
        }
        Map<String, List<Sample>> byWorker = set.samples().stream()
                .collect(Collectors.groupingBy(s -> s.worker().orElse(""), TreeMap::new, Collectors.toList()));
        List<double[]> groups = byWorker.values().stream()
                .map(list -> list.stream()
                        .mapToDouble(s -> Math.log(s.concentration()))
                        .toArray())
                .toList();
        return analysis(groups, set.size());
    }

    private static Reckoning<WorkerVariance> analysis(List<double[]> groups, int n) {
        int workers = groups.size();
        if (workers < 2 || n <= workers) {
            return Reckoning.none(
                    Soundness.TOO_FEW,
                    "Spread between workers needs 2 workers and more samples than workers; there are " + workers
                            + " workers and " + n + " samples. Repeat samples on the same workers.");
        }
        double grand = groups.stream().flatMapToDouble(Arrays::stream).sum() / n;
        double between = 0;
        double within = 0;
        double squares = 0;
        for (double[] group : groups) {
            double mean = Arrays.stream(group).sum() / group.length;
            between += group.length * Math.pow(mean - grand, 2);
            within += Arrays.stream(group).map(y -> Math.pow(y - mean, 2)).sum();
            squares += (double) group.length * group.length;
        }
        double perWorker = (n - squares / n) / (workers - 1);
        double meanBetween = between / (workers - 1);
        double meanWithin = within / (n - workers);
        return Reckoning.of(new WorkerVariance(
                grand, meanBetween, meanWithin, Math.max(0, (meanBetween - meanWithin) / perWorker), meanWithin));
    }

    /** The share of the variance between workers; empty when there is no variance. */
    public Optional<Double> betweenShare() {
        double total = between + within;
        return total > 0 ? Optional.of(between / total) : Optional.empty();
    }

    /** True when workers differ so much that the group test alone does not do. */
    public boolean individualTestNeeded() {
        return betweenShare().filter(share -> share > SHARE_THAT_MATTERS).isPresent();
    }

    /** The individual test against a limit. */
    public Reckoning<Individual> individual(double limit) {
        if (!SampleSet.isConcentration(limit)) {
            return Reckoning.none(Soundness.INVALID_LIMIT, Ratios.limitSentence(limit));
        }
        if (Math.sqrt(between) < LognormalFit.NO_SPREAD) {
            return Reckoning.none(
                    Soundness.DEGENERATE_VARIANCE, "The workers do not differ, so the test of the group stands alone.");
        }
        double z = StandardNormal.quantile(COVERAGE);
        double distance = (Math.log(limit) - (meanLog + z * Math.sqrt(within))) / Math.sqrt(between);
        return Reckoning.of(distance).map(h -> new Individual(h, StandardNormal.above(h)));
    }
}
