package org.fumewarden.exposure;

import java.util.Optional;
import java.util.function.Function;

/**
 * A value, or the reason why there is none.
 *
 * @param <T> what was to be computed
 */
public sealed interface Computed<T> permits Value, NoValue {

    /** A sound value. */
    static <T> Computed<T> of(T value) {
        return new Value<>(value, Soundness.SOUND, "");
    }

    /** A number, or a plain refusal when the arithmetic left the range of numbers. */
    static Computed<Double> finite(double value) {
        return Double.isFinite(value)
                ? of(value)
                : new NoValue<>(
                        Soundness.OUT_OF_RANGE,
                        "The arithmetic left the range of numbers. Check the units of the values.");
    }

    /** No value, with its reason. */
    static <T> Computed<T> none(Soundness status, String sentence) {
        return new NoValue<>(status, sentence);
    }

    /** {@link Soundness#SOUND}, a warning, or the reason why there is no value. */
    Soundness status();

    /** One sentence for the reader; empty when there is nothing to add. */
    String sentence();

    /** The value when there is one. */
    Optional<T> value();

    /** Applies a function to the value and keeps the status. */
    <R> Computed<R> map(Function<? super T, ? extends R> function);

    /** Chains a computation that may itself have no value; a warning is kept unless the next brings its own. */
    <R> Computed<R> then(Function<? super T, Computed<R>> function);
}
