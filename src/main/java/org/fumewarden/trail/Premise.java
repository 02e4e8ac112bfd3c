package org.fumewarden.trail;

import java.util.Optional;
import org.fumewarden.model.Citation;

/**
 * One thing that a step rests on.
 *
 * @param kind {@code absent}, {@code input}, {@code row} or {@code step}
 * @param address path in the task file, address of the table row, number of the earlier step, or of what was not found
 * @param sentence what it says
 * @param citation where a table row comes from
 */
public record Premise(String kind, String address, Sentence sentence, Optional<Citation> citation)
        implements Comparable<Premise> {
    /** What it says in words. */
    public String words() {
        return sentence.text();
    }

    /** Written out, since the virtual machine puts that of a record together from pieces that it does not join while it is young. */
    @Override
    public boolean equals(Object other) {
        return this == other
                || other instanceof Premise premise
                        && address.equals(premise.address)
                        && kind.equals(premise.kind)
                        && sentence.equals(premise.sentence)
                        && citation.equals(premise.citation);
    }

    @Override
    public int hashCode() {
        return 31 * address.hashCode() + sentence.hashCode();
    }

    @Override
    public int compareTo(Premise other) {
        int byKind = kind.compareTo(other.kind);
        int byAddress = address.compareTo(other.address);
        return byKind != 0 ? byKind : byAddress != 0 ? byAddress : words().compareTo(other.words());
    }
}
