package org.fumewarden.exposure;

import java.util.Optional;
import java.util.function.Function;

/**
 * A computed value, sound or with a warning.
 *
 * @param result the value; a number is always finite
 * @param status sound, or the warning that goes with the value
 * @param sentence the warning in words, empty when sound
 */
public record Value<T>(T result, Soundness status, String sentence) implements Computed<T> {
    public Value {
        if (result == null || status == null || sentence == null) {
            throw new IllegalArgumentException("A value needs a result, a status and a sentence.");
        }
        if (result instanceof Double number && !Double.isFinite(number)) {
            throw new IllegalArgumentException("A value must be a finite number but is " + number + ".");
        }
    }

    @Override
    public Optional<T> value() {
        return Optional.of(result);
    }

    @Override
    public <R> Computed<R> map(Function<? super T, ? extends R> function) {
        return then(value -> wrap(function.apply(value)));
    }

    @Override
    public <R> Computed<R> then(Function<? super T, Computed<R>> function) {
        Computed<R> next = function.apply(result);
        if (status != Soundness.SOUND && next instanceof Value<R> value && value.status() == Soundness.SOUND) {
            return new Value<>(value.result(), status, sentence);
        }
        return next;
    }

    private static <R> Computed<R> wrap(R mapped) {
        if (mapped instanceof Double number && !Double.isFinite(number)) {
            return Computed.finite(number).map(any -> mapped);
        }
        return Computed.of(mapped);
    }
}
