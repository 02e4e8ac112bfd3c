package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.Problem;
import org.fumewarden.engine.RuleBase;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every scenario gives the advice that a person wrote down for it. */
final class ScenarioTest {
    private static final Path FOLDER = Path.of("scenarios");

    @TestFactory
    Stream<DynamicTest> everyScenarioIsAsExpected() {
        ScenarioRunner runner = new ScenarioRunner(RuleBase::shipped);
        return Scenario.files(FOLDER).stream()
                .map(file -> DynamicTest.dynamicTest(
                        FOLDER.relativize(file).toString(),
                        file.toUri(),
                        () -> assertEquals("", text(runner.run(file)))));
    }

    private static String text(ScenarioRun run) {
        return run.problems().stream().map(Problem::text).collect(Collectors.joining("\n"));
    }
}
