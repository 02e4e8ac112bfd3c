package org.fumewarden.assessment;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.fumewarden.exposure.BestPrediction;

/**
 * Published levels of all processes and agents, each saying something of the others.
 *
 * <p>The logarithm of a level over its share of the fume is a sum of normal effects: a straight line over the emission of
 * the process, the process about that line, the agent, the agent in the process, the place, the study, and what is left in
 * one row. Two rows are as alike as the effects they have in common. docs/decisions/screening-estimate.md
 */
final class Pooling {
    private final List<Point> points;
    private final Function<String, Base> bases;
    private final ToDoubleFunction<String> variances;
    private final double middle;

    /**
     * A level.
     *
     * @param metal the agent without its fraction, empty for the fume itself
     * @param log natural logarithm of the level over its share of the fume
     */
    record Point(String process, String metal, boolean enclosed, String study, String row, double log) {}

    /**
     * What is expected of a process before any study of it.
     *
     * @param line whether it stands on the line over emission, or on figures of the trade
     * @param at logarithm of the emission, or of what the trade finds
     */
    record Base(boolean line, double at) {}

    /** Variances and the start of the line are asked for by the names of the table of spreads. */
    Pooling(List<Point> points, Function<String, Base> bases, ToDoubleFunction<String> variances) {
        this.points = points;
        this.bases = bases;
        this.variances = variances;
        this.middle = points.stream()
                .map(p -> bases.apply(p.process()))
                .filter(Base::line)
                .mapToDouble(Base::at)
                .average()
                .orElse(0);
    }

    /** What is to be expected of a place that nobody has measured, the doubt of study and row left out. */
    BestPrediction at(Point wanted, double startLog, double slope) {
        int n = points.size();
        double[] residuals = new double[n];
        double[] with = new double[n];
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            Point one = points.get(i);
            residuals[i] = one.log() - mean(one, startLog, slope);
            with[i] = alike(one, wanted);
            for (int j = 0; j < n; j++) {
                covariance[i][j] = alike(one, points.get(j)) + sampled(one, points.get(j));
            }
        }
        BestPrediction found = BestPrediction.of(residuals, covariance, with, alike(wanted, wanted));
        return new BestPrediction(mean(wanted, startLog, slope) + found.off(), found.variance());
    }

    private double mean(Point point, double startLog, double slope) {
        Base base = bases.apply(point.process());
        return base.line() ? startLog + slope * (base.at() - middle) : base.at();
    }

    private double alike(Point one, Point two) {
        Base first = bases.apply(one.process());
        Base second = bases.apply(two.process());
        boolean process = one.process().equals(two.process());
        double sum = 0;
        if (first.line() && second.line()) {
            sum += variance("level-spread")
                    + variance("slope-spread") * (first.at() - middle) * (second.at() - middle)
                    + (process ? variance("process-spread") : 0);
        } else if (process) {
            sum += variance("trade-spread");
        }
        if (!one.metal().isEmpty() && one.metal().equals(two.metal())) {
            sum += variance("agent-spread") + (process ? variance("agent-process-spread") : 0);
        }
        return sum + (one.enclosed() && two.enclosed() ? variance("place-spread") : 0);
    }

    private double sampled(Point one, Point two) {
        return (one.study().equals(two.study()) ? variance("study-spread") : 0)
                + (one.row().equals(two.row()) ? variance("row-spread") : 0);
    }

    private double variance(String spread) {
        return variances.applyAsDouble(spread);
    }
}
