package org.fumewarden.model;

/** How a hazard is settled for one averaging time, the firmest first. */
public enum Settlement {
    COMPARED("compared"),
    BENCHMARKED("benchmarked"),
    ESTIMATED("estimated"),
    JUDGED("judged"),
    /** Nobody measured it: the level that the law, or the whole that holds the part, has people assume until somebody does. */
    ASSUMED("assumed"),
    FLOORED("floored"),
    BOUNDED("bounded"),
    OPEN("open");

    private final String key;

    Settlement(String key) {
        this.key = key;
    }

    /** The word used in files. */
    public String key() {
        return key;
    }
}
