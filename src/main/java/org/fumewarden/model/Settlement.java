package org.fumewarden.model;

/** How a hazard is settled for one averaging time, the firmest first. */
public enum Settlement implements Keyed {
    COMPARED,
    BENCHMARKED,
    ESTIMATED,
    JUDGED,
    /** Nobody measured it: the level that the law, or the whole that holds the part, has people assume until somebody does. */
    ASSUMED,
    FLOORED,
    BOUNDED,
    OPEN
}
