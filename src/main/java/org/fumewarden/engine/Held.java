package org.fumewarden.engine;

import java.util.BitSet;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.fumewarden.model.Fact;

/** A fact as it goes from phase to phase: its hash and the rules that read it are worked out once. */
final class Held {
    private static final int PHASES = Phase.values().length;

    private final Fact fact;
    private final int hash;
    private final AtomicReferenceArray<BitSet> readers = new AtomicReferenceArray<>(PHASES);

    Held(Fact fact) {
        this.fact = fact;
        this.hash = fact.hashCode();
    }

    Fact fact() {
        return fact;
    }

    /** The rules of a phase that read it, by their places; not to be changed. Always of the same rule base. */
    BitSet readers(PhaseRules rules) {
        int phase = rules.phase().ordinal();
        BitSet known = readers.get(phase);
        if (known == null) {
            known = rules.read().of(fact);
            readers.set(phase, known);
        }
        return known;
    }

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Held held && hash == held.hash && fact.equals(held.fact);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
