package org.fumewarden.upkeep;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** A constant with the word that files use for it. */
interface Keyed {
    String key();

    /** The constant with a key. */
    static <E extends Enum<E> & Keyed> Optional<E> find(Class<E> type, String key) {
        return Arrays.stream(type.getEnumConstants())
                .filter(c -> c.key().equals(key))
                .findFirst();
    }

    /** The constant with a key; a complaint that lists the known keys when there is none. */
    static <E extends Enum<E> & Keyed> E named(Class<E> type, String what, String key) {
        return find(type, key)
                .orElseThrow(() -> StoreException.refused(
                        what + " cannot be \"" + key + "\".",
                        Arrays.stream(type.getEnumConstants()).map(Keyed::key).collect(Collectors.joining(", "))
                                + "."));
    }
}
