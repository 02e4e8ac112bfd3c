package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Suitability;
import org.fumewarden.check.EditedRules;
import org.fumewarden.check.ScenarioRun;
import org.fumewarden.check.ScenarioRunner;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.Phase;
import org.fumewarden.engine.RuleBase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A throw-away code in a folder of its own gives advice, and no Java knows of it. */
final class NewCodesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    private Path home;

    private Path rules;
    private Path scenarios;

    @BeforeEach
    void copySharedRules() {
        rules = home.resolve("rules");
        scenarios = home.resolve("scenarios");
        EditedRules.folder(Path.of("rules", "shared"), rules.resolve("shared"));
    }

    private Scaffold scaffold() {
        return new Scaffold(rules, scenarios, DAY);
    }

    private List<ScenarioRun> run(String code) {
        RuleFolder folder = RuleFolder.at(rules);
        return new ScenarioRunner(id -> RuleBase.compiled(folder, id)).runAll(scenarios.resolve(code));
    }

    private Advice advice(String code, String scenario) {
        RuleFolder folder = RuleFolder.at(rules);
        return new ScenarioRunner(id -> RuleBase.compiled(folder, id))
                .advice(scenarios.resolve(code).resolve(scenario))
                .orElseThrow();
    }

    private void replace(Path file, String old, String now) throws IOException {
        String text = Files.readString(file);
        assertTrue(text.contains(old), () -> file + " lacks " + old);
        Files.writeString(file, text.replace(old, now));
    }

    @Test
    void aNewCodePassesItsOwnScenariosAndNamesWhatItLacks() {
        scaffold().code("tarn-haven");
        run("tarn-haven")
                .forEach(run ->
                        assertEquals(List.of(), run.problems(), run.file().toString()));
        Advice advice = advice("tarn-haven", "TARN-HAVEN-ATMOSPHERE-020-tank-not.yaml");
        assertTrue(advice.recommended().isEmpty(), "a code without factors recommends nothing");
        long named = advice.cautions().stream()
                .filter(c -> c.rule().equals("SHARED-CAUTION-900"))
                .count();
        assertEquals(9, named, "each item of tables/not-covered.yaml is one caution");
    }

    /** The command of the how-to; the program ships no such code to compare it with. */
    @Test
    void itAdvisesOnceItsGapsAreFilledIn() throws IOException {
        scaffold().code("tarn-haven");
        String file = scenarios
                .resolve("tarn-haven/TARN-HAVEN-ATMOSPHERE-020-tank-not.yaml")
                .toString();
        String[] advise = {"advise", "--rules", rules.toString(), file};
        assertTrue(CommandRun.of(advise).err().contains("give-a-name is not filled in"));
        try (Stream<Path> paths = Files.walk(rules.resolve("tarn-haven"))) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                Files.writeString(
                        path,
                        Files.readString(path)
                                .replace("give-a-source", "practice")
                                .replaceAll("give-an?-[a-z]+", "Tarn Haven"));
            }
        }
        CommandRun run = CommandRun.of(advise);
        // Where a line breaks depends on how long the name of the folder is.
        String said = run.out().replaceAll("\\s+", " ");
        assertTrue(said.contains("Tarn Haven (tarn-haven)"), run.out() + run.err());
        assertTrue(said.contains("no protection factors yet") || !said.contains("STOP"), run.out());
    }

    @Test
    @Tag("ci")
    void factorsAndLimitsInItsTablesMakeItAdvise() throws IOException {
        scaffold().code("tarn-haven");
        Path tables = rules.resolve("tarn-haven").resolve("tables");
        replace(
                tables.resolve("factors.yaml"),
                "rows: []",
                "rows:\n  - {class: th3, against: any, factor: 40}\n  - {class: ffp2, against: particles, factor: 10}");
        replace(
                tables.resolve("limits.yaml"),
                "rows: []",
                "rows:\n  - {agent: manganese-respirable, unit: mg/m3, twa: 0.005, from: 2026-01-01}\n"
                        // Invented, as the code is: an agent without a limit would leave the advice open.
                        + "  - {agent: welding-fume, unit: mg/m3, twa: 5}\n  - {agent: iron-oxide, unit: mg/m3, twa: 5}\n"
                        + "  - {agent: ozone, unit: ppm, stel: 0.1}\n  - {agent: carbon-monoxide, unit: ppm, twa: 20}");
        Advice advice = advice("tarn-haven", "TARN-HAVEN-ATMOSPHERE-020-tank-not.yaml");
        // 0.1 mg/m3 against 0.005 mg/m3 needs 20: above the 10 of one class, within the 40 of the other
        assertEquals(
                0, advice.requiredFactor().value().compareTo(java.math.BigDecimal.valueOf(20)), "0.1 / 0.005 is 20");
        assertEquals("th3", advice.recommended().map(Respirator::deviceClass).orElse("none"));
        assertEquals(
                Suitability.BARRED,
                advice.respirators().stream()
                        .filter(r -> r.deviceClass().equals("ffp2"))
                        .findFirst()
                        .orElseThrow()
                        .verdict());
    }

    @Test
    @Tag("ci")
    void aNewRuleIsSilentAndItsScenarioRedUntilItIsFilledIn() throws IOException {
        scaffold().code("tarn-haven");
        for (Phase phase : Phase.values()) {
            scaffold().rule("tarn-haven", phase);
        }
        Path caution = rules.resolve("tarn-haven").resolve("caution.drl");
        List<String> red = run("tarn-haven").stream()
                .filter(r -> !r.problems().isEmpty())
                .map(r -> r.file().getFileName() + " " + r.problems().get(0).text())
                .toList();
        assertEquals(
                Phase.values().length,
                red.size(),
                "every firing scenario fails, every counter-example passes: " + String.join("\n", red));
        replace(caution, "give-a-process", "mag-solid-wire");
        assertFalse(run("tarn-haven").stream()
                .filter(r -> !r.problems().isEmpty())
                .anyMatch(r -> r.file().toString().contains("CAUTION")));
    }

    @Test
    void theNextRuleGetsTheNextNumberInTens() throws IOException {
        scaffold().code("tarn-haven");
        scaffold().rule("tarn-haven", Phase.ATMOSPHERE);
        String text = Files.readString(rules.resolve("tarn-haven").resolve("atmosphere.drl"));
        assertTrue(text.contains("rule \"TARN-HAVEN-ATMOSPHERE-030 "), "after 010 and 020 comes 030");
    }

    @Test
    void wrongIdsAreRefusedAndNothingIsWrittenOver() {
        assertThrows(InputException.class, () -> scaffold().code("do"), "a word of Java cannot name a package");
        assertThrows(InputException.class, () -> scaffold().code("Tarn Haven"));
        assertThrows(InputException.class, () -> scaffold().code("../escape"));
        assertThrows(InputException.class, () -> scaffold().code("shared"));
        scaffold().code("tarn-haven");
        assertThrows(InputException.class, () -> scaffold().code("tarn-haven"));
        assertThrows(InputException.class, () -> scaffold().rule("tarn-heaven", Phase.NEED));
    }

    @Test
    void aBorrowedFolderMustBeThere() throws IOException {
        scaffold().code("tarn-haven");
        replace(rules.resolve("tarn-haven").resolve("code.yaml"), "borrows: []", "borrows: [nowhere]");
        InputException fault =
                assertThrows(InputException.class, () -> RuleBase.compiled(RuleFolder.at(rules), "tarn-haven"));
        assertTrue(fault.getMessage().contains("nowhere"), fault.getMessage());
    }
}
