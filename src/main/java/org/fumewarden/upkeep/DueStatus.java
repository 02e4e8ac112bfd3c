package org.fumewarden.upkeep;

/** Where today stands to a due day; most urgent first. */
public enum DueStatus {
    OVERDUE("overdue"),
    /** Never done: due before the first use. */
    BEFORE_FIRST_USE("due before first use"),
    DUE_TODAY("due today"),
    DUE_SOON("due soon"),
    IN_TIME("in time"),
    /** The item is withdrawn; the clock keeps running, and it is examined before it returns to use. */
    NOT_IN_SERVICE("do not use");

    private final String words;

    DueStatus(String words) {
        this.words = words;
    }

    /** As people read it. */
    public String words() {
        return words;
    }
}
