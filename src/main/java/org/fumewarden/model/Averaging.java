package org.fumewarden.model;

/** The time over which a level and its limit are averaged. */
public enum Averaging implements Keyed {
    TWA("8 h average"),
    STEL("15 min average"),
    CEILING("ceiling");

    private final String words;

    Averaging(String words) {
        this.words = words;
    }

    /** The word used in sentences. */
    public String words() {
        return words;
    }
}
