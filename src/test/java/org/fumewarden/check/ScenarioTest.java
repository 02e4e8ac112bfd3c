package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.Problem;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every scenario gives the advice that a person wrote down for it. */
final class ScenarioTest {
    @TestFactory
    Stream<DynamicTest> everyScenarioIsAsExpected() {
        return ShippedRuns.ALL.stream()
                .map(run -> DynamicTest.dynamicTest(
                        ShippedRuns.FOLDER.relativize(run.file()).toString(),
                        run.file().toUri(),
                        () -> assertEquals("", text(run))));
    }

    private static String text(ScenarioRun run) {
        return run.problems().stream().map(Problem::text).collect(Collectors.joining("\n"));
    }
}
