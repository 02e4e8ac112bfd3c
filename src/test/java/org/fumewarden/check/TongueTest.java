package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.WrittenRule;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sentences of rules in another language are checked against the rules. */
final class TongueTest {
    private static final String RULES = """
            package rules.xx.need;

            rule "XX-NEED-010 an exposure above its limit"
            @source("xx") @clause("1") @says("{agent} needs {value}.")
            when
            then
            end

            rule "XX-NEED-020 another"
            @source("xx") @clause("2") @says("Keep out.")
            when
            then
            end
            """;

    @TempDir
    private Path rules;

    @BeforeEach
    void rules() throws IOException {
        Files.createDirectories(rules.resolve("xx"));
        Files.writeString(rules.resolve("xx/need.drl"), RULES);
    }

    private List<String> problems(String sentences) throws IOException {
        Files.writeString(rules.resolve("xx/says_de.yaml"), sentences);
        RuleFolder folder = RuleFolder.at(rules);
        List<WrittenRule> read = RuleBaseCheck.rules(folder);
        assertEquals(2, read.size());
        return TongueLint.check(folder, read).stream().map(Problem::text).toList();
    }

    @Test
    void theSamePlacesInAnyOrderAreFine() throws IOException {
        assertEquals(List.of(), problems("""
                complete: true
                rules:
                  XX-NEED-010: "Faktor {value} wegen {agent}."
                  XX-NEED-020: "Draußen bleiben."
                """));
    }

    @Test
    void aPlaceThatIsLostIsNamed() throws IOException {
        List<String> problems = problems("rules:\n  XX-NEED-010: 'Faktor wegen {agent}.'\n");
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).contains("says_de.yaml:2 XX-NEED-010 "), problems.get(0));
        assertTrue(problems.get(0).contains("[{agent}], the rule has [{agent}, {value}]"), problems.get(0));
    }

    @Test
    void aRuleThatIsNotThereIsNamed() throws IOException {
        List<String> problems = problems("rules: {XX-NEED-011: Nichts.}");
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(
                problems.get(0).contains("says_de.yaml:1 XX-NEED-011 is not a rule of this folder."), problems.get(0));
    }

    @Test
    void whatCallsItselfCompleteLacksNothing() throws IOException {
        List<String> problems = problems("complete: true\nrules: {XX-NEED-020: Draußen bleiben.}\n");
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(
                problems.get(0).contains("need.drl:3 XX-NEED-010 has no sentence in xx/says_de.yaml"), problems.get(0));
    }

    @Test
    void aFileThatTheProgramHasIsMissed() throws IOException {
        Files.createDirectories(rules.resolve("gb"));
        Files.writeString(rules.resolve("gb/need.drl"), RULES.replace("xx.need", "gb.need"));
        assertTrue(TongueLint.check(RuleFolder.at(rules), List.of()).stream()
                .map(Problem::text)
                .anyMatch(p -> p.contains("gb/says_de.yaml is missing (the program has it)")));
    }
}
