package org.fumewarden.model;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A constant with the word that files use for it. */
public interface Keyed {
    String name();

    /** The word used in files: the name in small letters, its words joined by hyphens. */
    default String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The constant with a key. */
    static <E extends Enum<E> & Keyed> Optional<E> find(Class<E> type, String key) {
        return Arrays.stream(type.getEnumConstants())
                .filter(c -> c.key().equals(key))
                .findFirst();
    }

    /** The keys of all constants in their order. */
    static <E extends Enum<E> & Keyed> List<String> keys(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Keyed::key).toList();
    }
}
