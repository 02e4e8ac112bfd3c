package org.fumewarden.endurance;

import java.util.List;
import java.util.Optional;

/**
 * A result with its remarks.
 *
 * @param result what was reckoned
 * @param remarks sentences the reader must see beside it, most important first
 */
public record Reckoned<T>(T result, List<String> remarks) implements Reckoning<T> {
    public Reckoned {
        if (result == null) {
            throw new BadFigure("A result is missing.", "Refuse instead.");
        }
        remarks = List.copyOf(remarks);
    }

    @Override
    public Optional<T> value() {
        return Optional.of(result);
    }

    @Override
    public Optional<Refusal> refusal() {
        return Optional.empty();
    }
}
