package org.fumewarden.model;

/** The time over which a level and its limit are averaged. */
public enum Averaging {
    TWA("twa", "8 h average"),
    STEL("stel", "15 min average"),
    CEILING("ceiling", "ceiling");

    private final String key;
    private final String words;

    Averaging(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** The word used in files. */
    public String key() {
        return key;
    }

    /** The word used in sentences. */
    public String words() {
        return words;
    }
}
