package org.fumewarden.exposure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.fumewarden.model.Kept;

/**
 * What is known of a place after some samples: a prior times the likelihood of the results, on a plain grid.
 *
 * <p>A result below its detection limit counts by the probability of lying below it. The grid is the same for the same
 * input, so the same digits come back. With a prior that says nothing, the value that lies above the 95th percentile with
 * 70 % probability is the classical upper tolerance limit.
 */
public final class Posterior {
    private static final int MEANS = 161;
    private static final int DEVIATIONS = 81;
    private static final double WIDTH = 6;
    /** The grid of deviations reaches so many times below and above what is expected and what was found. */
    private static final double REACH = 4;

    /** Logarithms between two heights at which results below the middle of the prior are tried. */
    private static final double STEP = 0.6;

    /** Points so far below the highest, on the log scale, weigh nothing. */
    private static final double NOTHING = 40;

    /** An advice is tried with each of its values changed, while its samples stay. */
    private static final Kept<Asked, Double> BOUNDS = new Kept<>(128);

    private final List<Point> points;
    private final double total;

    private record Asked(Prior prior, List<Sample> samples) {}

    private record Point(double percentile, double mean, double deviation, double weight) {}

    private Posterior(double centre, double half, double smallest, double largest, DoubleBinaryOperator logWeight) {
        double[] deviations = new double[DEVIATIONS];
        for (int j = 0; j < DEVIATIONS; j++) {
            deviations[j] = smallest * Math.pow(largest / smallest, j / (DEVIATIONS - 1.0));
        }
        List<double[]> grid = new ArrayList<>();
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < MEANS; i++) {
            double mean = centre + half * (2.0 * i / (MEANS - 1) - 1);
            for (double deviation : deviations) {
                double log = logWeight.applyAsDouble(mean, deviation);
                highest = Math.max(highest, log);
                grid.add(new double[] {mean, deviation, log});
            }
        }
        double z = StandardNormal.quantile(Compliance.COVERAGE);
        List<Point> all = new ArrayList<>();
        double sum = 0;
        for (double[] g : grid) {
            if (g[2] < highest - NOTHING) {
                continue;
            }
            double weight = Math.exp(g[2] - highest);
            sum += weight;
            all.add(new Point(g[0] + z * g[1], g[0], g[1], weight));
        }
        all.sort(Comparator.comparingDouble(Point::percentile));
        this.points = all;
        this.total = sum;
    }

    /** The posterior of a prior and samples. */
    public static Posterior of(Prior prior, SampleSet set) {
        return of(prior, set, set.size());
    }

    /** The posterior as though the same mean and spread of logarithms stood on so many results. */
    static Posterior of(Prior prior, SampleSet set, int results) {
        Moments moments = Moments.of(set.logs());
        double centre = (prior.meanLog() + moments.mean()) / 2;
        double half = Math.abs(prior.meanLog() - moments.mean()) / 2
                + WIDTH * Math.max(Math.min(prior.unsure(), 2), moments.deviation() / Math.sqrt(set.size()));
        double own = Math.max(moments.deviation(), prior.daily() / REACH);
        return new Posterior(
                centre,
                half,
                Math.min(prior.daily(), own) / REACH,
                Math.max(prior.daily(), own) * REACH,
                (m, s) -> prior.logDensity(m, s) + likelihood(set, moments, results, m, s));
    }

    private static double likelihood(SampleSet set, Moments moments, int results, double mean, double deviation) {
        if (set.complete()) {
            double off = moments.mean() - mean;
            double squares = (results - 1) * moments.deviation() * moments.deviation() + results * off * off;
            return -results * Math.log(deviation) - squares / (2 * deviation * deviation);
        }
        double sum = 0;
        for (Sample sample : set.samples()) {
            double z = (Math.log(sample.concentration()) - mean) / deviation;
            sum += sample.detected()
                    ? -Math.log(deviation) - z * z / 2
                    : Math.log(Math.max(StandardNormal.below(z), Double.MIN_NORMAL));
        }
        return sum * results / set.size();
    }

    /** The value that lies above the 95th percentile of exposures with the given probability. */
    public double percentileBound(double probability) {
        double sum = 0;
        double before = points.get(0).percentile();
        for (Point point : points) {
            double next = sum + point.weight();
            if (next >= probability * total) {
                double share = point.weight() > 0 ? (probability * total - sum) / point.weight() : 1;
                return Math.exp(before + share * (point.percentile() - before));
            }
            sum = next;
            before = point.percentile();
        }
        return Math.exp(before);
    }

    /** The middle of what the geometric mean may be. */
    public double geometricMean() {
        double sum = 0;
        for (Point point : points) {
            sum += point.weight() * point.mean();
        }
        return Math.exp(sum / total);
    }

    /** What the geometric standard deviation is expected to be. */
    public double geometricDeviation() {
        double sum = 0;
        for (Point point : points) {
            sum += point.weight() * point.deviation();
        }
        return Math.exp(sum / total);
    }

    /**
     * The bound for few samples. Results far below what the prior expects speak for a wide spread, which would lift the
     * bound above that of higher results; so it is never above what the same results would give, had all of them been
     * higher, up to a geometric mean at the middle of the prior.
     */
    static double bound(Prior prior, SampleSet set) {
        return BOUNDS.of(new Asked(prior, set.samples()), asked -> reckoned(prior, set));
    }

    private static double reckoned(Prior prior, SampleSet set) {
        double below = prior.meanLog() - Moments.of(set.logs()).mean();
        double lowest = asFound(prior, set);
        int steps = (int) Math.ceil(Math.max(below, 0) / STEP);
        for (int step = 1; step <= steps; step++) {
            double raised = Math.exp(below * step / steps);
            lowest = Math.min(lowest, raised * asFound(prior.scaled(1 / raised), set));
        }
        return lowest;
    }

    /** The highest of the bounds that as many or more results, but still few, would give. */
    private static double asFound(Prior prior, SampleSet set) {
        double highest = 0;
        for (int n = set.size(); n <= Math.max(set.size(), FewSamples.ENOUGH - 1); n++) {
            highest = Math.max(highest, of(prior, set, n).percentileBound(Compliance.CONFIDENCE));
        }
        return highest;
    }
}
