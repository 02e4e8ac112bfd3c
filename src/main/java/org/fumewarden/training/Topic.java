package org.fumewarden.training;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a round is about, and which questions it asks; what cannot be asked gives way to a question of practice. */
public enum Topic {
    PARTICLE,
    GAS,
    CONFINED_SPACE,
    OXYGEN,
    LEAD,
    STAINLESS,
    FIT("class", "change", "practice", "practice", "duty"),
    UPKEEP("duty", "interval", "interval", "practice", "practice"),
    ALARMS("practice", "practice", "practice", "practice", "practice");

    /** The questions of a task from a file. */
    static final List<String> ANY = List.of("factor", "class", "filter", "duty", "change");

    private final List<String> kinds;

    Topic(String... kinds) {
        this.kinds = List.of(kinds);
    }

    /** The word used on the command line. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    List<String> kinds() {
        return kinds.isEmpty() ? ANY : kinds;
    }

    public static Optional<Topic> of(String key) {
        return Arrays.stream(values()).filter(t -> t.key().equals(key)).findFirst();
    }

    public static List<String> keys() {
        return Arrays.stream(values()).map(Topic::key).toList();
    }
}
