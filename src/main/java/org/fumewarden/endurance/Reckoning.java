package org.fumewarden.endurance;

import java.util.List;
import java.util.Optional;

/**
 * A result, or the reason why there is none.
 *
 * @param <T> what was to be reckoned
 */
public sealed interface Reckoning<T> permits Reckoned, Refused {

    /** A result with nothing to add. */
    static <T> Reckoning<T> of(T value) {
        return new Reckoned<>(value, List.of());
    }

    /** A result with remarks for the reader. */
    static <T> Reckoning<T> of(T value, List<String> remarks) {
        return new Reckoned<>(value, remarks);
    }

    /** No result: what was found, and what to do. */
    static <T> Reckoning<T> refuse(Refusal reason, String found, String remedy) {
        return new Refused<>(reason, found, remedy);
    }

    /** The result when there is one. */
    Optional<T> value();

    /** The reason when there is no result. */
    Optional<Refusal> refusal();
}
