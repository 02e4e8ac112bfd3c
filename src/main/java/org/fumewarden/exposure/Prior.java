package org.fumewarden.exposure;

/**
 * What is expected of a place before it is measured: logarithms of concentrations, normal with unknown mean and deviation.
 *
 * @param meanLog expected mean of the logarithms
 * @param unsure standard deviation of that mean
 * @param daily expected standard deviation of the logarithms within the place
 */
public record Prior(double meanLog, double unsure, double daily) {
    /** Spread of the deviation itself, on the log scale: it lies within a factor of two of what is expected (our choice). */
    static final double DAILY_SPREAD = Math.log(2) / 2;

    public Prior {
        if (!Double.isFinite(meanLog) || !(unsure > 0) || !(daily > 0)) {
            throw new IllegalArgumentException("A prior of " + meanLog + ", " + unsure + ", " + daily + " is none.");
        }
    }

    /** The same in a unit in which numbers are larger by the factor. */
    public Prior scaled(double factor) {
        return new Prior(meanLog + Math.log(factor), unsure, daily);
    }

    /** Density up to a constant, as a logarithm. */
    double logDensity(double mean, double deviation) {
        double z = (mean - meanLog) / unsure;
        double y = Math.log(deviation / daily) / DAILY_SPREAD;
        return -(z * z + y * y) / 2;
    }

    /** How many standard deviations the mean of these results lies from what is expected. */
    double surprise(SampleSet set) {
        double mean = java.util.Arrays.stream(set.logs()).average().orElseThrow();
        return (mean - meanLog) / Math.sqrt(unsure * unsure + daily * daily / set.size());
    }
}
