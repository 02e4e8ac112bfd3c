package org.fumewarden.model;

/** What is to be said about a result beside its number, or why there is none. */
public enum Soundness {
    /** Computed, nothing to add. */
    SOUND,
    /** Fewer samples than the statistic needs. */
    TOO_FEW,
    /** A number that cannot be: negative, zero where it must not be, not a number. */
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
    /** So few samples that their figure is high, yet so low that EN 689 takes them as complying. */
    HELD_AT_LIMIT,
    /** A stand-in that is not needed here. */
    NOT_NEEDED,
    /** The arithmetic left the range of numbers. */
    OUT_OF_RANGE,
    /** A figure that the method needs was not given. */
    NOT_GIVEN,
    /** Boils too low for the model or for the filter type. */
    LOW_BOILER,
    /** The model is known to run long for this agent. */
    MODEL_DOES_NOT_HOLD,
    /** The air is more humid than the method covers. */
    TOO_HUMID,
    /** The air is warmer or colder than the method covers. */
    OUTSIDE_TEMPERATURE,
    /** Several gases or vapours at once. */
    MIXTURE,
    /** The filter has been used before. */
    REUSED,
    /** More gas than the filter was tested with. */
    ABOVE_TEST_CONCENTRATION,
    /** More gas than the filter class may be used in. */
    ABOVE_CLASS_LIMIT,
    /** Outside the range in which the method was published. */
    OUTSIDE_PUBLISHED_RANGE,
    /** Nobody has shown that the filter holds this agent as well as its test gas. */
    HOLDING_NOT_SHOWN,
    /** The air behind the filter must be cleaner than the test or the model proves. */
    EXIT_LIMIT_TOO_LOW,
    /** The bed is too thin for the flow: gas comes through from the first minute. */
    BREAKS_THROUGH_AT_ONCE,
    /** The shelf life or the time after opening is over. */
    EXPIRED,
    /** The permitted use time is used up. */
    USED_UP,
    /** No filter of this kind holds the agent. */
    NOT_HELD,
    /** Only methods that may not stand alone gave a time. */
    NO_METHOD_STANDS,
    /** Outside the table that was given. */
    OUTSIDE_TABLE,
    /** A table whose values rise where they should fall. */
    NOT_MONOTONE,
    /** The unit delivers less than its minimum design flow. */
    BELOW_MINIMUM_FLOW,
    /** Too little charge left to start. */
    BELOW_RESERVE
}
