package org.fumewarden.endurance;

/** Why nothing was reckoned. */
public enum Refusal {
    /** A figure that the method needs was not given. */
    NOT_GIVEN,
    /** A number that cannot be: negative, zero where it must not be, not a number. */
    BAD_NUMBER,
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
