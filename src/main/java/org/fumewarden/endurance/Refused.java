package org.fumewarden.endurance;

import java.util.Optional;

/**
 * The reason why there is no result.
 *
 * @param reason for the program
 * @param found for the reader: what was found
 * @param remedy for the reader: what to do
 * @param shortens a time that the refused method can no longer justify but that still must not be exceeded, so that a
 *     harder use never gets more time because a method dropped out
 */
public record Refused<T>(Refusal reason, String found, String remedy, Optional<TimeBound> shortens)
        implements Reckoning<T> {

    /** A refusal that shortens nothing. */
    public Refused(Refusal reason, String found, String remedy) {
        this(reason, found, remedy, Optional.empty());
    }

    public Refused {
        if (reason == null || found.isBlank() || remedy.isBlank()) {
            throw new IllegalArgumentException("A refusal needs a reason, a sentence and a remedy.");
        }
    }

    @Override
    public Optional<T> value() {
        return Optional.empty();
    }

    @Override
    public Optional<Refusal> refusal() {
        return Optional.of(reason);
    }

    /** Both sentences. */
    public String sentence() {
        return found + " " + remedy;
    }

    /** The same refusal where another kind of result was wanted. */
    public <R> Refused<R> as() {
        return new Refused<>(reason, found, remedy, shortens);
    }
}
