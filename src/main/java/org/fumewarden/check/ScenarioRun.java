package org.fumewarden.check;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.codes.Problem;

/**
 * What came of running one scenario.
 *
 * @param shown what its advice showed, empty when the file could not be read as a task
 * @param silent rules that the scenario says do not fire
 * @param problems everything that is not as expected, empty when all is well
 */
public record ScenarioRun(Path file, Optional<Shown> shown, Set<String> silent, List<Problem> problems) {
    public ScenarioRun {
        silent = Set.copyOf(silent);
        problems = List.copyOf(problems);
    }

    /** Ids of the rules that fired, sorted. */
    public Set<String> fired() {
        return shown.map(s -> s.read().keySet()).orElse(Set.of());
    }
}
