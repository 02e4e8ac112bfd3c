package org.fumewarden.exposure;

import java.util.Optional;
import java.util.function.Function;

/**
 * The reason why there is no value.
 *
 * @param sentence what was found and what would help
 */
public record NoValue<T>(Soundness status, String sentence) implements Computed<T> {
    public NoValue {
        if (status == null || status == Soundness.SOUND || sentence == null || sentence.isBlank()) {
            throw new IllegalArgumentException("A missing value needs a status and a sentence.");
        }
    }

    @Override
    public Optional<T> value() {
        return Optional.empty();
    }

    @Override
    public <R> Computed<R> map(Function<? super T, ? extends R> function) {
        return new NoValue<>(status, sentence);
    }

    @Override
    public <R> Computed<R> then(Function<? super T, Computed<R>> function) {
        return new NoValue<>(status, sentence);
    }
}
