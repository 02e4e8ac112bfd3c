package org.fumewarden.model;

import java.util.Optional;
import java.util.function.Function;

/**
 * The reason why there is no result.
 *
 * @param status for the program
 * @param found for the reader: what was found
 * @param remedy for the reader: what to do; empty when the other text says it
 * @param shortens a result that the refused method can no longer justify but that still must not be exceeded, so that a
 *     harder use never gets more time because a method dropped out
 */
public record Refused<T>(Soundness status, String found, String remedy, Optional<T> shortens) implements Reckoning<T> {
    public Refused {
        if (status == null || status == Soundness.SOUND || found.isBlank()) {
            throw new IllegalArgumentException("A refusal needs a reason and a sentence.");
        }
    }

    @Override
    public String sentence() {
        return (found + " " + remedy).strip();
    }

    @Override
    public Optional<T> value() {
        return Optional.empty();
    }

    @Override
    public <R> Reckoning<R> then(Function<? super T, Reckoning<R>> function) {
        return as();
    }

    /** The same refusal where another kind of result was wanted. */
    public <R> Reckoning<R> as() {
        return Reckoning.refuse(status, found, remedy);
    }
}
