package org.fumewarden.exposure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Regression on order statistics for samples with several detection limits.
 *
 * <p>Plotting positions after Hirsch and Stedinger 1987 (Water Resources Research 23:715); a straight line through the
 * detected logarithms against normal quantiles. The constant 0.375 (Blom) is fixed, since 0 moves the second decimal.
 */
public final class OrderRegression {
    /** Blom's plotting constant. */
    public static final double BLOM = 0.375;

    private final List<Mark> marks;
    private final Moments line;
    private final Moments filled;

    /**
     * A sample with its place on log-probability axes.
     *
     * @param share estimated share of exposures below it, 0 to 1 without the ends
     */
    public record Mark(double concentration, double share, boolean detected) {}

    private OrderRegression(List<Mark> marks) {
        this.marks = List.copyOf(marks);
        this.line = straightLine(marks);
        double[] values = marks.stream()
                .mapToDouble(m -> m.detected()
                        ? Math.log(m.concentration())
                        : line.mean() + line.deviation() * StandardNormal.quantile(m.share()))
                .toArray();
        this.filled = Moments.of(values);
    }

    static OrderRegression of(SampleSet set, double constant) {
        return new OrderRegression(positions(set, constant));
    }

    /** Where the samples stand on log-probability axes, lowest share first. */
    public static List<Mark> marks(SampleSet set) {
        return positions(set, BLOM).stream()
                .sorted(Comparator.comparingDouble(Mark::share))
                .toList();
    }

    Moments line() {
        return line;
    }

    Moments filled() {
        return filled;
    }

    private static Moments straightLine(List<Mark> marks) {
        List<Mark> found = marks.stream().filter(Mark::detected).toList();
        double[] x = found.stream()
                .mapToDouble(m -> StandardNormal.quantile(m.share()))
                .toArray();
        double[] y =
                found.stream().mapToDouble(m -> Math.log(m.concentration())).toArray();
        Moments mx = Moments.of(x);
        Moments my = Moments.of(y);
        double slope = covariance(x, y, mx) / (mx.deviation() * mx.deviation());
        return new Moments(found.size(), my.mean() - slope * mx.mean(), slope);
    }

    private static double covariance(double[] x, double[] y, Moments mx) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += (x[i] - mx.mean()) * y[i];
        }
        return sum / (x.length - 1);
    }

    private static List<Mark> positions(SampleSet set, double constant) {
        List<Sample> samples = set.samples();
        double[] limits = samples.stream()
                .filter(s -> !s.detected())
                .mapToDouble(Sample::concentration)
                .distinct()
                .sorted()
                .toArray();
        List<Mark> marks = new ArrayList<>();
        double exceedAbove = 0;
        for (int j = limits.length; j >= 0; j--) {
            double from = j == 0 ? 0 : limits[j - 1];
            double to = j == limits.length ? Double.POSITIVE_INFINITY : limits[j];
            double[] within = samples.stream()
                    .filter(s -> s.detected() && s.concentration() >= from && s.concentration() < to)
                    .mapToDouble(Sample::concentration)
                    .sorted()
                    .toArray();
            long below = samples.stream().filter(s -> isBelow(s, from)).count();
            double exceed = j == 0
                    ? 1
                    : exceedAbove + (1 - exceedAbove) * within.length / (double) Math.max(1, within.length + below);
            for (int r = 0; r < within.length; r++) {
                double place = (r + 1 - constant) / (within.length + 1 - 2 * constant);
                marks.add(new Mark(within[r], 1 - exceed + place * (exceed - exceedAbove), true));
            }
            if (j > 0) {
                int censored = (int) samples.stream()
                        .filter(s -> !s.detected() && s.concentration() == from)
                        .count();
                for (int r = 0; r < censored; r++) {
                    double place = (r + 1 - constant) / (censored + 1 - 2 * constant);
                    marks.add(new Mark(from, place * (1 - exceed), false));
                }
            }
            exceedAbove = exceed;
        }
        return marks;
    }

    private static boolean isBelow(Sample sample, double limit) {
        return sample.detected() ? sample.concentration() < limit : sample.concentration() <= limit;
    }
}
