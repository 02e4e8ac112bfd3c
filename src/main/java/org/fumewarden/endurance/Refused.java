package org.fumewarden.endurance;

import java.util.Optional;

/**
 * The reason why there is no result.
 *
 * @param reason for the program
 * @param sentence for the reader: what was found and what would help
 * @param shortens a time that the refused method can no longer justify but that still must not be exceeded, so that a
 *     harder use never gets more time because a method dropped out
 */
public record Refused<T>(Refusal reason, String sentence, Optional<Bound> shortens) implements Reckoning<T> {

    /** A refusal that shortens nothing. */
    public Refused(Refusal reason, String sentence) {
        this(reason, sentence, Optional.empty());
    }

    public Refused {
        if (reason == null || sentence == null || sentence.isBlank()) {
            throw new IllegalArgumentException("A refusal needs a reason and a sentence.");
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

    /** The same refusal where another kind of result was wanted. */
    public <R> Refused<R> as() {
        return new Refused<>(reason, sentence, shortens);
    }
}
