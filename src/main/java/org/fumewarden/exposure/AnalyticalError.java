package org.fumewarden.exposure;

import java.util.List;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

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
    public static Reckoning<Band> single(double result, double limit, double error) {
        if (!(error >= 0) || !Double.isFinite(error)) {
            return Reckoning.none(Soundness.INVALID_VALUE, "The error is " + error + ". Write 0.23 for 23 %.");
        }
        return Ratios.of(result, limit).map(y -> new Band(y, Math.max(0, y - error), y + error));
    }

    /** Samples one after the other, all with the same error, which partly cancels. */
    public static Reckoning<Band> consecutive(List<Period> samples, double limit, double error) {
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
}
