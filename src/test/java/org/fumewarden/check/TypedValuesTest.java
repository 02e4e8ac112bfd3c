package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An officer's edit of a value, or the loss of a rule, is seen without the source tree. */
final class TypedValuesTest {
    private static final String LIMITS = "gb/tables/limits.yaml";

    @TempDir
    private Path folder;

    private Path rules;

    @BeforeEach
    void copy() {
        rules = EditedRules.copy(folder);
    }

    private List<String> problems() {
        return TypedValues.check(RuleFolder.at(rules)).stream()
                .map(Problem::text)
                .toList();
    }

    private void named(String words) {
        List<String> problems = problems();
        assertTrue(problems.stream().anyMatch(p -> p.contains(words)), problems.toString());
    }

    @Test
    void theShippedRulesAreAsTheyWereTyped() {
        assertEquals(List.of(), problems());
        assertEquals(List.of(), TypedValues.check(RuleFolder.shipped()));
    }

    @Test
    void aChangedLimitIsNamedWithItsLine() {
        EditedRules.edit(rules, LIMITS, "agent: tin, unit: mg/m3, twa: 2,", "agent: tin, unit: mg/m3, twa: 200,");
        named("is 200, but 2 was typed from");
    }

    @Test
    void aLostRowAndALostRuleAreNamed() throws IOException {
        Path table = rules.resolve(LIMITS);
        Files.write(
                table,
                Files.readAllLines(table).stream()
                        .filter(l -> !l.contains("agent: ozone"))
                        .toList());
        Files.delete(rules.resolve("gb/need.drl"));
        named("gb-limits / ozone / stel is gone");
        named("GB-NEED-010 is a rule of the program that this rule base has not");
    }

    @Test
    void aRowClosedOnADayIsNoLoss() {
        EditedRules.edit(
                rules,
                LIMITS,
                "agent: tin, unit: mg/m3, twa: 2,",
                "agent: tin, until: 2030-01-01, unit: mg/m3, twa: 2,");
        assertEquals(List.of(), problems());
    }

    @Test
    void aNewValueIsAcceptedOnceItIsTypedASecondTimeBesideTheRules() throws IOException {
        EditedRules.append(rules, LIMITS, "  - {agent: tin, unit: mg/m3, twa: 1, from: 2030-01-01}\n");
        EditedRules.edit(
                rules,
                LIMITS,
                "agent: tin, unit: mg/m3, twa: 2,",
                "agent: tin, until: 2030-01-01, unit: mg/m3, twa: 2,");
        named("was typed once only");
        Files.writeString(
                folder.resolve("typed-apart.csv"),
                "table,row,cell,value,source\ngb-limits,tin from 2030-01-01,twa,1,our list\nrules,GB-NEED-010,withdrawn,2030-01-01,replaced\n");
        Files.delete(rules.resolve("gb/need.drl"));
        List<String> problems = problems();
        assertTrue(
                problems.stream().noneMatch(p -> p.contains("tin") || p.contains("GB-NEED-010")), problems.toString());
    }
}
