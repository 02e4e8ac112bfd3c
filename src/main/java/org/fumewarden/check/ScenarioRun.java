package org.fumewarden.check;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.codes.Problem;
import org.fumewarden.trail.Step;

/**
 * What came of running one scenario.
 *
 * @param advice the advice, empty when the file could not be read as a task
 * @param silent rules that the scenario says do not fire
 * @param problems everything that is not as expected, empty when all is well
 */
public record ScenarioRun(Path file, Optional<Advice> advice, Set<String> silent, List<Problem> problems) {
    public ScenarioRun {
        silent = Set.copyOf(silent);
        problems = List.copyOf(problems);
    }

    /** Ids of the rules that fired, sorted. */
    public Set<String> fired() {
        return advice.stream()
                .flatMap(a -> a.trail().steps().stream())
                .map(Step::rule)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
