package org.fumewarden.exposure;

/**
 * A quantity above zero that is known only within a spread, lognormal.
 *
 * <p>A published range is read as the central 90 % of values. Shares such as arc time are treated the same way; their
 * tail above 1 errs towards more fume.
 *
 * @param median in the unit of the quantity
 * @param deviationLog standard deviation of the natural logarithm, 0 when exact
 */
public record Spread(double median, double deviationLog) {
    private static final double TAIL = 0.05;

    public Spread {
        if (!SampleSet.isConcentration(median) || !(deviationLog >= 0) || !Double.isFinite(deviationLog)) {
            throw new IllegalArgumentException(
                    "A spread around " + median + " with deviation " + deviationLog + " is not possible.");
        }
    }

    /** The spread whose central 90 % reach from low to high. */
    public static Spread between(double low, double high) {
        if (!SampleSet.isConcentration(low) || !SampleSet.isConcentration(high) || low > high) {
            throw new IllegalArgumentException(
                    "A range from " + low + " to " + high + " is not possible. Give the lower end first.");
        }
        double width = Math.log(high / low);
        return new Spread(Math.sqrt(low) * Math.sqrt(high), width / (2 * StandardNormal.quantile(1 - TAIL)));
    }

    /** A quantity without spread. */
    public static Spread exactly(double value) {
        return new Spread(value, 0);
    }

    /** The product with an independent quantity. */
    public Spread times(Spread other) {
        return new Spread(median * other.median, Math.hypot(deviationLog, other.deviationLog));
    }
}
