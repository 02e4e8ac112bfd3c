package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fumewarden.check.EditedRules;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands for people who edit rules. */
final class CheckAndRulesTest {
    private static final String REFRESH = "refresh it: fumewarden rules --markdown > docs/rules.md";

    @TempDir
    private Path folder;

    @Test
    void thePageOfRulesIsFresh() throws IOException {
        CommandRun run = CommandRun.of("rules", "--markdown");
        assertEquals(0, run.exit(), run.err());
        Path page = Path.of("docs/rules.md");
        assertEquals(run.out(), Files.exists(page) ? Files.readString(page) : "", REFRESH);
    }

    @Test
    void oneRuleIsShownWithItsScenariosAndRows() {
        CommandRun run = CommandRun.of("rules", "SHARED-NEED-010", "--scenarios", "scenarios/tours");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("Shown in ("), run.out());
        assertTrue(run.out().contains("scenarios/tours/"), run.out());
    }

    @Test
    void anUnknownRuleIsNamedWithItsNeighbours() {
        CommandRun run = CommandRun.of("rules", "SHARED-NEED-011");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("\"SHARED-NEED-010\""), run.err());
    }

    @Test
    void confidenceIsCounted() {
        CommandRun run = CommandRun.of("rules", "--confidence");
        assertEquals(0, run.exit(), run.err());
        assertTrue(
                run.out().lines().anyMatch(l -> l.matches("gb: cross-checked \\d+, read \\d+, .*memory \\d+")),
                run.out());
    }

    @Test
    void oneRuleIsCheckedWithTheScenariosThatNameIt() {
        CommandRun run = CommandRun.of("check", "--rule", "SHARED-NEED-010");
        assertEquals(0, run.exit(), run.out());
        assertTrue(run.out().contains("rules 0 uncovered of 1, 0 without a counter-example"), run.out());
        CommandRun alone = CommandRun.of(
                "check", "--rule", "SHARED-NEED-010", "--scenarios", "scenarios/tours/odour-complaint.yaml");
        assertEquals(2, alone.exit());
        assertTrue(alone.out().contains("SHARED-NEED-010 fires in no scenario."), alone.out());
    }

    @Test
    void oneCodeIsCheckedWithItsFoldersAndItsScenarios() {
        Path rules = EditedRules.copy(folder);
        EditedRules.edit(rules, "gb/need.drl", "@clause(", "@clausa(");
        String[] check = {"check", "--scenarios", "scenarios/us", "--rules", rules.toString(), "--code", "gb"};
        CommandRun run = CommandRun.of(check);
        assertEquals(2, run.exit());
        assertTrue(run.out().contains("scenarios 0 run"), "those of us are not of gb: " + run.out());
        assertTrue(run.out().matches("(?s).*gb/need\\.drl:\\d+ GB-NEED-010 has no @clause\\..*"), run.out());
        assertFalse(run.out().contains("US-"), run.out());
    }

    @Test
    void aCodeOrARuleThatIsNotThereIsNamedWithItsNeighbours() {
        CommandRun code = CommandRun.of("check", "--code", "gbx");
        assertEquals(2, code.exit());
        assertTrue(code.err().contains("Did you mean \"gb\"?"), code.err());
        CommandRun rule = CommandRun.of("check", "--rule", "SHARED-NEED-011");
        assertEquals(2, rule.exit());
        assertTrue(rule.err().contains("holds no rule \"SHARED-NEED-011\"."), rule.err());
        assertTrue(rule.err().contains("\"SHARED-NEED-010\""), rule.err());
    }

    @Test
    @Tag("ci")
    void theSurveyNamesRowsByFileAndLine() {
        Path rules = EditedRules.copy(folder, "eu", "fi");
        EditedRules.append(
                rules,
                "gb/tables/limits.yaml",
                "  - {agent: ozone, unit: ppm, ceiling: 1, from: 2000-01-01, until: 2010-01-01}\n");
        CommandRun run = CommandRun.of(
                "check",
                "--survey",
                "--rules",
                rules.toString(),
                "--scenarios",
                "scenarios/tours/odour-complaint.yaml");
        assertTrue(
                run.out()
                        .matches(
                                "(?s).*limits\\.yaml:\\d+ gb-limits#ozone/ceiling ended on 2010-01-01 and no row follows.*"),
                run.out());
        assertTrue(run.out().matches("(?s).*factors\\.yaml:\\d+ \\S+#ffp1\\S* is read in no scenario\\..*"), run.out());
        assertTrue(
                run.out().matches("(?s).*work \\d+ without an agent of \\d+ pairs of process and metal.*"), run.out());
    }

    @Test
    @Tag("ci")
    void theSurveyNamesAgentsThatACodeHasNoFigureFor() {
        Path rules = EditedRules.copy(folder, "eu", "fi");
        EditedRules.append(
                rules,
                "shared/tables/agents.yaml",
                "  - {id: hull-vapour, name: hull vapour, form: gas, cas: none, molar-mass: 100}\n");
        EditedRules.append(
                rules, "gb/tables/limits.yaml", "  - {agent: hull-vapour, unit: ppm, twa: 5, from: 2000-01-01}\n");
        String found = CommandRun.of(
                        "check",
                        "--survey",
                        "--rules",
                        rules.toString(),
                        "--scenarios",
                        "scenarios/tours/odour-complaint.yaml")
                .out();
        String gas =
                "(?s).*agents\\.yaml:\\d+ agents#hull-vapour, a gas that is given off or limited, has no filter row under ";
        assertTrue(found.matches(gas + "gb\\..*"), found);
        assertFalse(found.matches(gas + "fi\\..*"), "it is neither given off nor limited there");
        String ozone = "(?s).*agents\\.yaml:\\d+ agents#ozone, given off by some work, has no limit under ";
        assertTrue(found.matches(ozone + "fi\\..*"), found);
        assertFalse(found.matches(ozone + "gb\\..*"), "a limit for ozone is in force there");
        assertTrue(found.matches("(?s).*gaps fi: \\d+ without a limit of \\d+\n.*"), found);
    }

    @Test
    @Tag("ci")
    void aSpoiltRuleIsFoundWithFileAndLine() {
        Path rules = EditedRules.copy(folder);
        EditedRules.append(rules, "gb/need.drl", "rule \"GB-NEED-990 half a rule\"\nwhen\nthen\nend\n");
        CommandRun run = CommandRun.of("check", "--rules", rules.toString(), "--scenarios", "scenarios/tours");
        assertEquals(2, run.exit());
        assertTrue(run.out().matches("(?s).*gb/need\\.drl:\\d+ GB-NEED-990 has no @clause\\..*"), run.out());
        assertTrue(run.out().contains("findings "), run.out());
    }
}
