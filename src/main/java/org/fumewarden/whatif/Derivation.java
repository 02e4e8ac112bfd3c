package org.fumewarden.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.advice.Advice;
import org.fumewarden.model.Need;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;

/** The steps behind a conclusion, down to inputs and table rows. */
public final class Derivation {
    private final Advice advice;

    public Derivation(Advice advice) {
        this.advice = advice;
    }

    /**
     * The steps that an id names.
     *
     * @param id number of a step, id of a rule, name of a class, agent or question, or {@code required-factor}
     */
    public List<Step> named(String id) {
        return advice.trail().steps().stream().filter(s -> names(s, id)).toList();
    }

    private boolean names(Step step, String id) {
        if (id.equals("required-factor")) {
            return step.conclusion() instanceof Need
                    && advice.requiredFactor().reasons().stream()
                            .anyMatch(r -> r.step().equals(step.id()));
        }
        return step.id().equals(id)
                || step.rule().equals(id)
                || step.conclusion().subject().equals(id);
    }

    /** Everything that {@link #named} would find. */
    public Set<String> names() {
        Set<String> names = new TreeSet<>();
        names.add("required-factor");
        for (Step step : advice.trail().steps()) {
            names.add(step.rule());
            names.add(step.conclusion().subject());
        }
        return names;
    }

    /** A line of the tree: how deep it stands and what it says. */
    public record Line(int depth, Step step, Premise premise) {}

    /** The tree under a step, in reading order; a step that was already shown is not opened again. */
    public List<Line> tree(Step step) {
        List<Line> lines = new ArrayList<>();
        walk(step, 0, new TreeSet<>(), lines);
        return lines;
    }

    private void walk(Step step, int depth, Set<String> shown, List<Line> lines) {
        lines.add(new Line(depth, step, null));
        if (!shown.add(step.id())) {
            return;
        }
        for (Premise premise : step.premises()) {
            if (premise.kind().equals("step")) {
                advice.trail().step(premise.address()).ifPresent(s -> walk(s, depth + 1, shown, lines));
            } else {
                lines.add(new Line(depth + 1, null, premise));
            }
        }
    }
}
