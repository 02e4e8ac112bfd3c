package org.fumewarden.check;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fumewarden.engine.RuleBase;

/** All scenarios on the shipped rules, run once for all tests of a process, and only when one of them asks. */
final class ShippedRuns {
    static final Path FOLDER = Path.of("scenarios");

    private ShippedRuns() {}

    static List<ScenarioRun> all() {
        return Once.RUNS;
    }

    /** The files that may tell of a rule: those that bear its id, then those whose runs do, one filter after the other. */
    static Stream<Path> tellingOf(String rule, List<Predicate<ScenarioRun>> then) {
        Supplier<Stream<Path>> named = () -> Scenario.files(FOLDER).stream()
                .filter(f -> f.getFileName().toString().startsWith(rule));
        Stream<Supplier<Stream<Path>>> others = then.stream()
                .<Supplier<Stream<Path>>>map(
                        wanted -> () -> all().stream().filter(wanted).map(ScenarioRun::file));
        return Stream.concat(Stream.of(named), others).flatMap(Supplier::get).distinct();
    }

    private static final class Once {
        static final List<ScenarioRun> RUNS = new ScenarioRunner(RuleBase::shipped).runAll(FOLDER);
    }
}
