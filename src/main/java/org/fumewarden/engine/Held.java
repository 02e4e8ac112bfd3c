package org.fumewarden.engine;

import java.util.concurrent.atomic.AtomicReferenceArray;
import org.fumewarden.model.Fact;

/**
 * A fact as it goes from phase to phase: its hash and the rules that read it are worked out once. It is equal to those of
 * the same fact that were made the same way.
 */
final class Held {
    private static final int PHASES = Phase.values().length;

    private final Fact fact;
    private final Object content;
    private final int hash;
    private final AtomicReferenceArray<Readers.Reading> readings = new AtomicReferenceArray<>(PHASES);

    Held(Fact fact) {
        this(fact, fact);
    }

    private Held(Fact fact, Object content) {
        this.fact = fact;
        this.content = content;
        this.hash = content.hashCode();
    }

    /**
     * A fact that is compared by its text. For a program that decides once this is quicker: the virtual machine spins the
     * comparison of records anew for each type of record and each start.
     */
    static Held once(Fact fact) {
        return new Held(fact, FactPart.spelled(fact));
    }

    Fact fact() {
        return fact;
    }

    /** The fact with all its parts. */
    String spelled() {
        return content instanceof String text ? text : FactPart.spelled(fact);
    }

    /** What it is to the rules of a phase; not to be changed. Always of the same rule base. */
    Readers.Reading reading(PhaseRules rules) {
        int phase = rules.phase().ordinal();
        Readers.Reading known = readings.get(phase);
        if (known == null) {
            known = rules.read().of(fact);
            readings.set(phase, known);
        }
        return known;
    }

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Held held && hash == held.hash && content.equals(held.content);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
