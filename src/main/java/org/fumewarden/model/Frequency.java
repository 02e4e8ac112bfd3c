package org.fumewarden.model;

/** How often a duty comes back. */
public enum Frequency implements Keyed {
    ONCE,
    EACH_USE,
    EACH_DONNING,
    AFTER_USE,
    DURING_CLEANING,
    MAX_INTERVAL,
    CALENDAR_BUCKET,
    EVENT,
    ON_CHANGE,
    CONTINUOUS,
    DAY_COUNT;

    /** True when the duty falls due on a day that can be counted. */
    public boolean dated() {
        return this == MAX_INTERVAL || this == ONCE;
    }
}
