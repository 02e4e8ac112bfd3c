package org.fumewarden.model;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A result, or the reason why there is none.
 *
 * @param <T> what was to be reckoned
 */
public sealed interface Reckoning<T> permits Reckoned, Refused {

    /** A sound result; refused when the arithmetic left the range of numbers. */
    static <T> Reckoning<T> of(T value) {
        return of(value, List.of());
    }

    /** A sound result with remarks for the reader. */
    static <T> Reckoning<T> of(T value, List<String> remarks) {
        return value instanceof Double number && !Double.isFinite(number)
                ? none(
                        Soundness.OUT_OF_RANGE,
                        "The arithmetic left the range of numbers. Check the units of the values.")
                : new Reckoned<>(value, Soundness.SOUND, remarks);
    }

    /** A result with a warning. */
    static <T> Reckoning<T> of(T value, Soundness warning, String sentence) {
        return new Reckoned<>(value, warning, List.of(sentence));
    }

    /** No result: what was found, and what to do. */
    static <T> Reckoning<T> refuse(Soundness reason, String found, String remedy) {
        return new Refused<>(reason, found, remedy, Optional.empty());
    }

    /** No result, and one text that says why. */
    static <T> Reckoning<T> none(Soundness reason, String sentence) {
        return refuse(reason, sentence, "");
    }

    /** {@link Soundness#SOUND}, a warning, or the reason why there is no result. */
    Soundness status();

    /** For the reader; empty when there is nothing to add. */
    String sentence();

    /** The result when there is one. */
    Optional<T> value();

    /** Chains a computation that may itself have no result; a warning is kept unless the next brings its own. */
    <R> Reckoning<R> then(Function<? super T, Reckoning<R>> function);

    /** Applies a function to the result and keeps the status. */
    default <R> Reckoning<R> map(Function<? super T, ? extends R> function) {
        return then(value -> of(function.apply(value)));
    }
}
