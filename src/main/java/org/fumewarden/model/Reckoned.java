package org.fumewarden.model;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A result with its remarks.
 *
 * @param result what was reckoned; a number is always finite
 * @param status sound, or the warning that goes with the result
 * @param remarks sentences the reader must see beside it, most important first
 */
public record Reckoned<T>(T result, Soundness status, List<String> remarks) implements Reckoning<T> {
    public Reckoned {
        if (result == null || status == null || result instanceof Double number && !Double.isFinite(number)) {
            throw new IllegalArgumentException("A result needs a finite value and a status, but is " + result + ".");
        }
        remarks = List.copyOf(remarks);
    }

    @Override
    public String sentence() {
        return String.join(" ", remarks);
    }

    @Override
    public Optional<T> value() {
        return Optional.of(result);
    }

    @Override
    public <R> Reckoning<R> then(Function<? super T, Reckoning<R>> function) {
        Reckoning<R> next = function.apply(result);
        return next instanceof Reckoned<R> sound && sound.status() == Soundness.SOUND
                ? new Reckoned<>(
                        sound.result(),
                        status,
                        Stream.concat(remarks.stream(), sound.remarks().stream())
                                .toList())
                : next;
    }
}
