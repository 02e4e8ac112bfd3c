package org.fumewarden.exposure;

/** The statistics that a ratio can rest on. */
public enum Statistic {
    /** The highest result or detection limit. */
    HIGHEST_SAMPLE("highest sample"),
    /** The fitted 95th percentile, without confidence. */
    PERCENTILE_95("95th percentile"),
    /** With 70 % confidence above 95 % of exposures: the test of EN 689:2018. */
    UPPER_TOLERANCE_70("upper tolerance limit 95 %, 70 % confidence"),
    /** With 95 % confidence above 95 % of exposures. */
    UPPER_TOLERANCE_95("upper tolerance limit 95 %, 95 % confidence"),
    /** Upper 95 % confidence limit of the arithmetic mean after Land. */
    UPPER_MEAN("upper 95 % limit of the mean");

    private final String words;

    Statistic(String words) {
        this.words = words;
    }

    /** The statistic in words. */
    public String words() {
        return words;
    }

    /** The statistic of a fit; the highest sample is not one. */
    Outcome<Double> of(LognormalFit fit) {
        return switch (this) {
            case PERCENTILE_95 -> fit.percentile(Compliance.COVERAGE);
            case UPPER_TOLERANCE_70 -> fit.tolerance(Compliance.COVERAGE, Compliance.CONFIDENCE);
            case UPPER_TOLERANCE_95 -> fit.tolerance(Compliance.COVERAGE, 0.95);
            case UPPER_MEAN -> fit.meanUpper(0.95);
            case HIGHEST_SAMPLE -> throw new IllegalArgumentException("The highest sample needs the samples.");
        };
    }
}
