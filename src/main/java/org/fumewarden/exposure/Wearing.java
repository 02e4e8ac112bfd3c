package org.fumewarden.exposure;

import java.util.List;

/** What is left inside a respirator, over the time it is worn and the time it is off. */
public final class Wearing {
    private Wearing() {}

    /**
     * A stretch of work.
     *
     * @param factor protection factor while it lasts, 1 when nothing is worn
     */
    public record Stretch(double concentration, double minutes, double factor) {}

    /**
     * The protection that is left when the respirator is off for part of the exposed time: 1 / ((1-w) + w / factor).
     *
     * <p>Derived by time-weighting; 29 CFR 1926.62(c)(3) allows such averaging for lead, no other rule is known to. It
     * shows what breaks cost; it is no reason to take a respirator off.
     *
     * @param factor protection factor while worn, 1 or more
     * @param wornShare share of the exposed time, 0 to 1
     */
    public static Outcome<Double> effectiveFactor(double factor, double wornShare) {
        if (!(factor >= 1) || !Double.isFinite(factor) || !(wornShare >= 0 && wornShare <= 1)) {
            return Outcome.none(
                    Status.INVALID_VALUE,
                    "A factor of " + factor + " worn for " + wornShare
                            + " of the time is not possible. Write 0.95 for 95 %.");
        }
        return Outcome.finite(1 / ((1 - wornShare) + wornShare / factor));
    }

    /** The average inside the respirator over worn and unworn time. */
    public static Outcome<Double> averageInside(List<Stretch> stretches, double referenceMinutes) {
        if (stretches.stream().anyMatch(s -> !(s.factor() >= 1) || !Double.isFinite(s.factor()))) {
            return Outcome.none(
                    Status.INVALID_VALUE, "A protection factor is below 1. Write 1 for time without a respirator.");
        }
        return TimeWeightedAverage.of(
                stretches.stream()
                        .map(s -> new Period(s.concentration() / s.factor(), s.minutes()))
                        .toList(),
                referenceMinutes);
    }

    /**
     * Lognormal concentrations inside a respirator.
     *
     * @param geometricMean in the unit of the concentration outside
     */
    public record Inside(double geometricMean, double geometricDeviation) {
        /** How likely the inside is above the limit. */
        public Outcome<Double> above(double limit) {
            if (!SampleSet.isConcentration(limit)) {
                return Outcome.none(Status.INVALID_LIMIT, Ratios.limitSentence(limit));
            }
            double spread = Math.log(geometricDeviation);
            if (spread < LognormalFit.NO_SPREAD) {
                return Outcome.none(Status.DEGENERATE_VARIANCE, "Without any spread there is no probability.");
            }
            return Outcome.finite(StandardNormal.above((Math.log(limit) - Math.log(geometricMean)) / spread));
        }
    }

    /** Outside concentrations divided by independent workplace protection factors, both lognormal. */
    public static Outcome<Inside> inside(
            double outsideMean, double outsideDeviation, double factorMean, double factorDeviation) {
        if (!SampleSet.isConcentration(outsideMean)
                || !SampleSet.isConcentration(factorMean)
                || !(outsideDeviation >= 1)
                || !(factorDeviation >= 1)) {
            return Outcome.none(
                    Status.INVALID_VALUE,
                    "Means must be above zero and geometric standard deviations 1 or more. Check their order.");
        }
        double spread = Math.hypot(Math.log(outsideDeviation), Math.log(factorDeviation));
        return Outcome.finite(Math.exp(spread)).map(gsd -> new Inside(outsideMean / factorMean, gsd));
    }

    /**
     * The factor that 95 % of measured workplace protection factors reach.
     *
     * <p>Source: Myers and others 1983 as quoted by NIOSH, GM / GSD^1.645.
     */
    public static Outcome<Double> fifthPercentile(double factorMean, double factorDeviation) {
        if (!SampleSet.isConcentration(factorMean) || !(factorDeviation >= 1)) {
            return Outcome.none(Status.INVALID_VALUE, "The factors have no mean or no spread. Check their order.");
        }
        return Outcome.finite(factorMean * Math.exp(-StandardNormal.quantile(0.95) * Math.log(factorDeviation)));
    }
}
