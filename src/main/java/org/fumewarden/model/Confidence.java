package org.fumewarden.model;

/** How well a value is known, best first. */
public enum Confidence {
    CROSS_CHECKED("cross-checked"),
    READ("read"),
    DERIVED("derived"),
    PRACTICE("practice"),
    MEMORY("memory");

    private final String key;

    Confidence(String key) {
        this.key = key;
    }

    /** The word used in files. */
    public String key() {
        return key;
    }

    /** True when nobody has yet compared the value with its primary text. */
    public boolean unverified() {
        return this == MEMORY;
    }

    /** The weaker of two. */
    public Confidence weaker(Confidence other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
