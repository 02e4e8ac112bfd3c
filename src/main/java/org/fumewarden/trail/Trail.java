package org.fumewarden.trail;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fumewarden.model.Conclusion;

/**
 * All steps of one piece of advice, in the order of phases and rules. Equal conclusions of steps that stand are one
 * object, so that they are told apart without comparing their parts.
 */
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
        Set<Conclusion> met = Collections.newSetFromMap(new IdentityHashMap<>());
        return concluding(kind)
                .map(Step::conclusion)
                .filter(met::add)
                .map(kind::cast)
                .toList();
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
