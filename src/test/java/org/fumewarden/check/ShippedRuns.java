package org.fumewarden.check;

import java.nio.file.Path;
import java.util.List;
import org.fumewarden.engine.RuleBase;

/** All scenarios on the shipped rules, run once for all tests of a process. */
final class ShippedRuns {
    static final Path FOLDER = Path.of("scenarios");
    static final List<ScenarioRun> ALL = new ScenarioRunner(RuleBase::shipped).runAll(FOLDER);

    private ShippedRuns() {}
}
