package org.fumewarden.trail;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.model.Conclusion;

/** All steps of one piece of advice, in the order of phases and rules. */
public record Trail(List<Step> steps) {
    public Trail {
        steps = List.copyOf(steps);
    }

    /** The steps that stand and conclude something of the given type. */
    public <C extends Conclusion> Stream<Step> concluding(Class<C> type) {
        return steps.stream().filter(Step::stands).filter(s -> type.isInstance(s.conclusion()));
    }

    /** The standing conclusions of the given type, each once. */
    public <C extends Conclusion> List<C> all(Class<C> type) {
        return concluding(type).map(s -> type.cast(s.conclusion())).distinct().toList();
    }

    public Optional<Step> step(String id) {
        return steps.stream().filter(s -> s.id().equals(id)).findFirst();
    }
}
