package org.fumewarden.model;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * What was worked out for the keys asked about lately. Old keys go by generation, so that it never grows beyond twice
 * its size. Safe to share between threads.
 */
public final class Kept<K, V> {
    private final int size;
    private volatile Map<K, V> young = new ConcurrentHashMap<>();
    private volatile Map<K, V> old = Map.of();

    /** Keeps between so many and twice as many. */
    public Kept(int size) {
        this.size = size;
    }

    /** The value of a key, worked out unless kept. Two threads may work out the same value at once. */
    public V of(K key, Function<? super K, ? extends V> maker) {
        V kept = get(key);
        if (kept != null) {
            return kept;
        }
        V value = maker.apply(key);
        put(key, value);
        return value;
    }

    /** The value of a key, or null when it is not kept. */
    public V get(K key) {
        V kept = young.get(key);
        if (kept != null) {
            return kept;
        }
        V older = old.isEmpty() ? null : old.get(key);
        if (older != null) {
            put(key, older);
        }
        return older;
    }

    /** Keeps the value of a key. */
    public void put(K key, V value) {
        if (young.size() >= size) {
            synchronized (this) {
                if (young.size() >= size) {
                    old = young;
                    young = new ConcurrentHashMap<>();
                }
            }
        }
        young.put(key, value);
    }
}
