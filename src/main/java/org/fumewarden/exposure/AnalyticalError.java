package org.fumewarden.exposure;

import java.util.List;

/**
 * Sampling and analytical error of a result.
 *
 * <p>Source: OSHA Technical Manual, section II chapter 1, one-sided 95 % limits of a result over its limit.
 */
public final class AnalyticalError {
    private AnalyticalError() {}

    /** What a result with its error says about the limit. */
    public enum Finding {
        NO_VIOLATION,
        POSSIBLE,
        VIOLATION
    }

    /**
     * A result over its limit, with 95 % limits.
     *
     * @param ratio result over limit
     */
    public record Band(double ratio, double lower, double upper) {
        /** Above the limit even after the error is taken off, below it even with the error added, or neither. */
        public Finding finding() {
            if (lower > 1) {
                return Finding.VIOLATION;
            }
            return upper <= 1 ? Finding.NO_VIOLATION : Finding.POSSIBLE;
        }
    }

    /**
     * One sample over the whole reference time.
     *
     * @param error sampling and analytical error as a share, such as 0.23
     */
    public static Outcome<Band> single(double result, double limit, double error) {
        if (!(error >= 0) || !Double.isFinite(error)) {
            return Outcome.none(Status.INVALID_VALUE, "The error is " + error + ". Write 0.23 for 23 %.");
        }
        return Ratios.of(result, limit).map(y -> new Band(y, Math.max(0, y - error), y + error));
    }

    /** Samples one after the other, all with the same error, which partly cancels. */
    public static Outcome<Band> consecutive(List<Period> samples, double limit, double error) {
        double minutes = samples.stream().mapToDouble(Period::minutes).sum();
        return TimeWeightedAverage.of(samples, minutes)
                .then(mean -> single(mean, limit, error))
                .map(whole -> {
                    double squares = samples.stream()
                            .mapToDouble(s -> Math.pow(s.minutes() * s.concentration(), 2))
                            .sum();
                    double half = error * Math.sqrt(squares) / (limit * minutes);
                    return new Band(whole.ratio(), Math.max(0, whole.ratio() - half), whole.ratio() + half);
                });
    }

    /** mg/m3 from a mass in mg, a flow in L/min and a time in min. */
    public static Outcome<Double> concentration(double milligrams, double litresPerMinute, double minutes) {
        if (!(milligrams >= 0) || !SampleSet.isConcentration(litresPerMinute) || !SampleSet.isConcentration(minutes)) {
            return Outcome.none(
                    Status.INVALID_VALUE,
                    "A mass of " + milligrams + " mg at " + litresPerMinute + " L/min over " + minutes
                            + " min gives no concentration. Give every value.");
        }
        return Outcome.finite(milligrams * 1000 / (litresPerMinute * minutes));
    }

    /**
     * Standard uncertainty of the average of independent samples, by linear propagation (JCGM 100:2008, 5.1).
     *
     * @param relative relative standard uncertainty of each sample
     */
    public static Outcome<Double> ofAverage(List<Period> samples, List<Double> relative) {
        double minutes = samples.stream().mapToDouble(Period::minutes).sum();
        if (samples.size() != relative.size()) {
            return Outcome.none(
                    Status.INVALID_VALUE,
                    samples.size() + " samples have " + relative.size() + " uncertainties. Give one for each.");
        }
        return TimeWeightedAverage.of(samples, minutes).then(any -> {
            double squares = 0;
            for (int i = 0; i < samples.size(); i++) {
                Period sample = samples.get(i);
                squares += Math.pow(sample.concentration() * sample.minutes() * relative.get(i), 2);
            }
            return Outcome.finite(Math.sqrt(squares) / minutes);
        });
    }

    /**
     * Geometric standard deviation with the analytical error put in.
     *
     * <p>Only for a deviation that did not come from measured results: those hold the error already.
     *
     * @param variation coefficient of variation of the method as a share
     */
    public static Outcome<Double> widened(double geometricDeviation, double variation) {
        if (!(geometricDeviation >= 1) || !(variation >= 0)) {
            return Outcome.none(
                    Status.INVALID_VALUE,
                    "A geometric standard deviation of " + geometricDeviation + " with a variation of " + variation
                            + " is not possible. Write 0.12 for 12 %.");
        }
        double environment = Math.log(geometricDeviation);
        return Outcome.finite(Math.exp(Math.sqrt(environment * environment + Math.log1p(variation * variation))));
    }
}
