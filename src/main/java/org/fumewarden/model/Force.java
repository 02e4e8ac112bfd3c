package org.fumewarden.model;

/** What stands behind a duty, strongest first. */
public enum Force implements Keyed {
    LAW("law"),
    ACOP("approved code of practice"),
    GUIDANCE("guidance"),
    STANDARD("standard"),
    PRACTICE("common practice");

    private final String words;

    Force(String words) {
        this.words = words;
    }

    /** As people read it. */
    public String words() {
        return words;
    }
}
