package org.fumewarden.upkeep;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a check of the store found.
 *
 * @param head where the intact part of the chain ends
 * @param read number of entries that could be read
 * @param damages in the order of the entries; at most twenty
 * @param doubts what breaks nothing but looks wrong, such as days to come; at most twenty
 * @param touched the first damage of each item of which a damaged entry tells
 * @param everywhere the first damage of which nobody can tell what it hides
 */
public record Verification(
        Head head,
        long read,
        List<Damage> damages,
        List<String> doubts,
        Map<String, Damage> touched,
        Optional<Damage> everywhere) {
    /**
     * One fault.
     *
     * @param entry number of the entry; 0 when the file as a whole is meant
     */
    public record Damage(long entry, String what) {
        /** The fault as a sentence. */
        public String text() {
            return (entry == 0 ? "the file " : "entry " + entry + " ") + what;
        }
    }

    public Verification {
        damages = Given.list(damages);
        doubts = Given.list(doubts);
        touched = Map.copyOf(touched);
    }

    public boolean intact() {
        return damages.isEmpty();
    }

    /** What is damaged of an item, or may be. */
    Optional<Damage> against(String item) {
        return Optional.ofNullable(touched.get(item)).or(() -> everywhere);
    }

    /** The first broken entry. */
    public Optional<Damage> first() {
        return damages.stream().filter(d -> d.entry() > 0).findFirst().or(() -> damages.stream()
                .findFirst());
    }
}
