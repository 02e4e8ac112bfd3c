package org.fumewarden.endurance;

import java.util.Optional;

/**
 * The reason why there is no result.
 *
 * @param reason for the program
 * @param sentence for the reader: what was found and what would help
 */
public record Refused<T>(Refusal reason, String sentence) implements Reckoning<T> {
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
        return new Refused<>(reason, sentence);
    }
}
