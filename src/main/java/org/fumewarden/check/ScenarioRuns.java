package org.fumewarden.check;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;

/**
 * The scenarios that were run, and how many could not be, since the rules of their code cannot be used.
 *
 * @param unusable why, once for each code
 */
record ScenarioRuns(List<ScenarioRun> runs, List<Problem> unusable, int lost) {

    static ScenarioRuns of(List<Path> files, RuleFolder folder, Function<String, RuleBase> bases) {
        Map<String, InputException> broken = new LinkedHashMap<>();
        ScenarioRunner runner = new ScenarioRunner(code -> {
            if (broken.containsKey(code)) {
                throw broken.get(code);
            }
            try {
                return bases.apply(code);
            } catch (InputException e) {
                if (folder.codes().contains(code)) {
                    broken.put(code, e);
                }
                throw e;
            }
        });
        List<ScenarioRun> runs = new ArrayList<>();
        int lost = 0;
        for (Path file : files) {
            ScenarioRun run = runner.run(file);
            if (broken.values().stream().anyMatch(e -> e.problems().equals(run.problems()))) {
                lost++;
            } else {
                runs.add(run);
            }
        }
        List<Problem> unusable = broken.values().stream()
                .flatMap(e -> e.problems().stream())
                .distinct()
                .toList();
        return new ScenarioRuns(List.copyOf(runs), unusable, lost);
    }
}
