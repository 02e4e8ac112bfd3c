package org.fumewarden.trail;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.model.Conclusion;

/** All steps of one piece of advice, in the order of phases and rules. */
public final class Trail {
    private final List<Step> steps;

    /** The steps that stand, by what they conclude. */
    private final Map<Class<?>, List<Step>> standing = new HashMap<>();

    public Trail(List<Step> steps) {
        this.steps = List.copyOf(steps);
        for (Step step : this.steps) {
            if (step.stands()) {
                standing.computeIfAbsent(step.conclusion().getClass(), type -> new ArrayList<>())
                        .add(step);
            }
        }
    }

    public List<Step> steps() {
        return steps;
    }

    /** The steps that stand and conclude something of the given kind. */
    public <C extends Conclusion> Stream<Step> concluding(Class<C> kind) {
        return standing.getOrDefault(kind, List.of()).stream();
    }

    /** The standing conclusions of the given kind, each once. */
    public <C extends Conclusion> List<C> all(Class<C> kind) {
        return concluding(kind).map(s -> kind.cast(s.conclusion())).distinct().toList();
    }

    public Optional<Step> step(String id) {
        return steps.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Trail trail && steps.equals(trail.steps);
    }

    @Override
    public int hashCode() {
        return steps.hashCode();
    }

    @Override
    public String toString() {
        return "Trail" + steps;
    }
}
