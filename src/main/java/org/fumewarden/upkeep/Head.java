package org.fumewarden.upkeep;

import java.util.HexFormat;

/**
 * Where the chain ends.
 *
 * <p>Whoever keeps these two values outside the store can later prove that no entry was cut off the end.
 *
 * @param entries number of entries
 * @param hash hash of the last entry, 64 hexadecimal digits; all zero in an empty store
 */
public record Head(long entries, String hash) {
    static Head of(long entries, byte[] hash) {
        return new Head(entries, HexFormat.of().formatHex(hash));
    }

    byte[] bytes() {
        return HexFormat.of().parseHex(hash);
    }

    /** Both values in one word, as printed and as compared. */
    public String word() {
        return entries + ":" + hash;
    }
}
