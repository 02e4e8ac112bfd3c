package org.fumewarden.upkeep;

/** How often a duty comes back. */
public enum Frequency implements Keyed {
    ONCE("once"),
    EACH_USE("each-use"),
    EACH_DONNING("each-donning"),
    AFTER_USE("after-use"),
    DURING_CLEANING("during-cleaning"),
    MAX_INTERVAL("max-interval"),
    CALENDAR_BUCKET("calendar-bucket"),
    EVENT("event"),
    ON_CHANGE("on-change"),
    CONTINUOUS("continuous"),
    DAY_COUNT("day-count");

    private final String key;

    Frequency(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }

    /** True when the duty falls due on a day that can be counted. */
    public boolean dated() {
        return this == MAX_INTERVAL || this == ONCE;
    }
}
