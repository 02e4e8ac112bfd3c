package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.Collectors;
import org.fumewarden.Extent;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.engine.WrittenRule;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Test;

/**
 * A rule that is switched off breaks a scenario by its outcome. That the rule itself no longer fires does not count: a scenario
 * has to miss what the rule concludes. The gate tries a sample; {@code mvn verify -Psoundness} tries all.
 */
final class SwitchedOffTest {
    private static final Path LISTED = Path.of("docs/survivors.txt");
    private static final Path FOUND = Path.of("target/survivors.txt");

    @Test
    void everyRuleMattersOrIsListed() throws IOException {
        Set<String> survivors = new ConcurrentSkipListSet<>();
        List<String> rules = Extent.sample(
                RuleBaseCheck.rules(RuleFolder.shipped()).stream()
                        .map(WrittenRule::id)
                        .toList(),
                id -> id,
                Extent.of(2, 80, Extent.ALL));
        rules.parallelStream().forEach(rule -> {
            if (ShippedRuns.tellingOf(rule, List.of(run -> run.fired().contains(rule)))
                    .noneMatch(file -> breaks(file, rule))) {
                survivors.add(rule);
            }
        });
        System.out.println("rules switched off " + rules.size() + ": killed " + (rules.size() - survivors.size())
                + ", survived " + survivors.size());
        Files.createDirectories(FOUND.getParent());
        Files.write(FOUND, survivors);
        Set<String> listed = Files.readAllLines(LISTED).stream()
                .filter(l -> !l.isBlank() && !l.startsWith("#"))
                .map(l -> l.split("\\s+")[0])
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> news = new TreeSet<>(survivors);
        news.removeAll(listed);
        assertEquals(Set.of(), news, "switching these off breaks no scenario; expect in a scenario what they conclude");
        listed.retainAll(rules);
        listed.removeAll(survivors);
        assertEquals(Set.of(), listed, "these no longer survive; delete their lines from " + LISTED);
    }

    /** As shipped every scenario is as it expects, or ScenarioTest says so. */
    private boolean breaks(Path file, String rule) {
        ScenarioRun after;
        try {
            after = new ScenarioRunner(RuleBase::shipped, Set.of(rule)).run(file);
        } catch (IllegalStateException e) {
            return true; // no rule says any more how far the advice may be relied on
        }
        return after.problems().stream().anyMatch(p -> !p.field().startsWith("expect.fires"));
    }

    @Test
    void theScenariosNameACode() {
        for (Path file : Scenario.files(Path.of("scenarios"))) {
            String code = TaskTree.top(Scenario.read(file).tree(), "code").orElse("none");
            assertDoesNotThrow(() -> RuleBase.shipped(code), file + " names the code " + code);
        }
    }
}
