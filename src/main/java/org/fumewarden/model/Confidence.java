package org.fumewarden.model;

/** How well a value is known, best first. */
public enum Confidence implements Keyed {
    CROSS_CHECKED,
    READ,
    DERIVED,
    PRACTICE,
    MEMORY;

    /** True when nobody has yet compared the value with its primary text. */
    public boolean unverified() {
        return this == MEMORY;
    }

    /** The weaker of two. */
    public Confidence weaker(Confidence other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
