package org.fumewarden.upkeep;

/** What stands behind a duty, strongest first. */
public enum Force implements Keyed {
    LAW("law", "law"),
    ACOP("acop", "approved code of practice"),
    GUIDANCE("guidance", "guidance"),
    STANDARD("standard", "standard"),
    PRACTICE("practice", "common practice");

    private final String key;
    private final String words;

    Force(String key, String words) {
        this.key = key;
        this.words = words;
    }

    @Override
    public String key() {
        return key;
    }

    /** As people read it. */
    public String words() {
        return words;
    }
}
