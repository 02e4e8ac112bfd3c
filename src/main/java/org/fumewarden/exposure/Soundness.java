package org.fumewarden.exposure;

/** What is to be said about a result beside its number. */
public enum Soundness {
    /** Computed, nothing to add. */
    SOUND,
    /** Fewer samples than the statistic needs. */
    TOO_FEW,
    /** A concentration or a duration that cannot be a result: zero, negative, or not a number. */
    INVALID_VALUE,
    /** A limit that cannot be compared with: zero, negative, or not a number. */
    INVALID_LIMIT,
    /** All samples are equal: no spread, no test. */
    DEGENERATE_VARIANCE,
    /** A geometric standard deviation below 1.2 is not plausible for personal samples. */
    WARN_GSD_TOO_SMALL,
    /** A geometric standard deviation above 10 says that the samples are not one group. */
    WARN_GSD_TOO_LARGE,
    /** The samples do not look lognormal. */
    WARN_POOR_FIT,
    /** The statistic is known to run away with so few samples and so much spread. */
    WARN_UNSTABLE,
    /** Non-detects were replaced by a fixed share of their detection limit. */
    WARN_SUBSTITUTION,
    /** Workers of the group differ so much that the group does not stand for each of them. */
    WARN_WORKERS_DIFFER,
    /** Samples ran much shorter or longer than the averaging time of the limit. */
    WARN_SAMPLE_TIME,
    /** Every sample is below its detection limit. */
    ALL_CENSORED,
    /** Too many samples are below the detection limit for a fit. */
    TOO_CENSORED,
    /** A detection limit at or above the exposure limit: the sample proves nothing. */
    LIMIT_BELOW_DETECTION,
    /** No value for this averaging time, yet some window of it lay above the limit. */
    INFERRED_EXCEEDANCE,
    /** The samples lie far from what published studies found. */
    WARN_PRIOR_DISAGREES,
    /** A stand-in that is not needed here. */
    NOT_NEEDED,
    /** The arithmetic left the range of numbers. */
    OUT_OF_RANGE
}
