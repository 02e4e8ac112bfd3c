package org.fumewarden.upkeep;

/** What a duty applies to: a kind of item, or each pair of a wearer and a mask. */
public enum Subject implements Keyed {
    WEARER("wearer"),
    WEARER_MASK("wearer-mask"),
    UNIT("unit"),
    MASK("mask"),
    FILTER("filter"),
    BATTERY("battery"),
    PLANT("plant"),
    AIR_SUPPLY("air-supply"),
    SITE("site");

    private final String key;

    Subject(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }

    /** The subject with a key. */
    public static Subject named(String key) {
        return Keyed.named(Subject.class, "applies-to", key);
    }
}
