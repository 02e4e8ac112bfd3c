package org.fumewarden.model;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What was found for the keys last asked about; a key that nobody asks about makes room. Safe for many threads. */
public final class Recent<K, V> {
    private final Map<K, V> found;

    /** @param most how many are kept, 1 or more */
    public Recent(int most) {
        this.found = new LinkedHashMap<>(most, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    /** What was found for a key, if it is still kept. */
    public synchronized Optional<V> of(K key) {
        return Optional.ofNullable(found.get(key));
    }

    /** Keeps what was found. */
    public synchronized V keep(K key, V value) {
        found.put(key, value);
        return value;
    }
}
