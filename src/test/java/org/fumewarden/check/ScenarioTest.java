package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.engine.WrittenRule;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every scenario gives the advice that a person wrote down for it. Every rule fires in one, and is silent in a near miss that
 * says so; every duty is due in one.
 */
final class ScenarioTest {
    @TestFactory
    Stream<DynamicTest> everyScenarioIsAsExpected() {
        return ShippedRuns.all().stream()
                .map(run -> DynamicTest.dynamicTest(
                        ShippedRuns.FOLDER.relativize(run.file()).toString(),
                        run.file().toUri(),
                        () -> assertEquals("", text(run))));
    }

    @Test
    void everyRuleFiresSomewhereAndIsSilentSomewhere() {
        List<ScenarioRun> runs = ShippedRuns.all();
        Coverage coverage = Coverage.of(RuleBaseCheck.rules(RuleFolder.shipped()), runs);
        System.out.println(coverage.counts());
        String missing = Stream.concat(
                        coverage.problems().stream(), DutyReach.problems(RuleFolder.shipped(), runs).stream())
                .map(Problem::text)
                .collect(Collectors.joining("\n"));
        assertEquals("", missing, coverage.counts());
    }

    @Test
    void theTextOfTheRulesHoldsTheRulesThatWereCompiled() {
        Set<String> written = RuleBaseCheck.rules(RuleFolder.shipped()).stream()
                .map(WrittenRule::id)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> compiled = new TreeSet<>();
        RuleFolder.shipped()
                .codes()
                .forEach(code -> compiled.addAll(RuleBase.shipped(code).cards().keySet()));
        assertEquals(compiled, written);
    }

    private static String text(ScenarioRun run) {
        return run.problems().stream().map(Problem::text).collect(Collectors.joining("\n"));
    }
}
