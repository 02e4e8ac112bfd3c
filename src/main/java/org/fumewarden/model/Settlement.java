package org.fumewarden.model;

/** How a hazard is settled for one averaging time, the firmest first. */
public enum Settlement implements Keyed {
    COMPARED,
    /** Compared with a limit that the code borrows, since its own list is not held. */
    BORROWED,
    BENCHMARKED,
    ESTIMATED,
    JUDGED,
    /** Nobody measured it: the level that the law, or the whole that holds the part, has people assume until somebody does. */
    ASSUMED,
    FLOORED,
    BOUNDED,
    OPEN
}
