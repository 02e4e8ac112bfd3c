package org.fumewarden.model;

/** How a hazard is settled for one averaging time, the firmest first. */
public enum Settlement implements Keyed {
    COMPARED,
    BENCHMARKED,
    ESTIMATED,
    JUDGED,
    FLOORED,
    BOUNDED,
    OPEN
}
