package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.fumewarden.check.EditedRules;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A reviewer's check of a row is one cell of one line, and the row counts as better known by it. */
final class AffirmTest {
    private static final String REVIEWER = "reviewer A of Tarn Haven";

    @TempDir
    private Path folder;

    private Path rules;

    @BeforeEach
    void copy() {
        rules = EditedRules.copy(folder);
    }

    @Test
    void oneLineChangesAndTheRowCountsAsRead() throws IOException {
        Path table = rules.resolve("gb/tables/limits.yaml");
        List<String> before = Files.readAllLines(table);
        CommandRun run = affirm("gb-limits#magnesium-oxide/twa", REVIEWER, "the regulations, \"reg 2\"", "2026-03-02");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("was memory, counts as read now"), run.out());
        List<String> after = Files.readAllLines(table);
        List<Integer> changed = IntStream.range(0, before.size())
                .filter(i -> !before.get(i).equals(after.get(i)))
                .boxed()
                .toList();
        assertEquals(before.size(), after.size());
        assertEquals(1, changed.size());
        String cell =
                ", affirmed: [{by: \"" + REVIEWER + "\", on: 2026-03-02, source: \"the regulations, \\\"reg 2\\\"\"}]}";
        String was = before.get(changed.get(0));
        assertEquals(was.substring(0, was.length() - 1) + cell, after.get(changed.get(0)));
    }

    @Test
    void theConfidencePageNamesWhoWhenAndAgainstWhat() {
        affirm("gb-limits#magnesium-oxide/twa", REVIEWER, "the regulations", "2026-03-02");
        CommandRun page = CommandRun.of("rules", "--confidence", "--rules", rules.toString());
        assertTrue(
                page.out()
                        .contains("gb-limits#magnesium-oxide/twa read, affirmed by " + REVIEWER
                                + " on 2026-03-02 against the regulations"),
                page.out());
        assertTrue(page.out().lines().noneMatch(l -> l.contains("gb-limits#magnesium-oxide/twa (")), page.out());
    }

    @Test
    void aSecondDocumentMakesItCrossCheckedAndTheSameOneDoesNot() {
        affirm("gb-limits#magnesium-oxide/twa", REVIEWER, "the regulations", "2026-03-02");
        CommandRun same =
                affirm("gb-limits#magnesium-oxide/twa", "reviewer B of Tarn Haven", "The regulations ", "2026-03-03");
        assertTrue(same.out().contains("was read, counts as read now"), same.out());
        CommandRun other =
                affirm("gb-limits#magnesium-oxide/twa", "reviewer B of Tarn Haven", "the union's table", "2026-03-03");
        assertTrue(other.out().contains("was read, counts as cross-checked now"), other.out());
    }

    @Test
    void aCheckOfOneFigureOfALineDoesNotRaiseItsNeighbour() {
        CommandRun one = affirm("gb-limits#molybdenum/twa", REVIEWER, "the list", "2026-03-02");
        assertEquals(0, one.exit(), one.err());
        CommandRun page = CommandRun.of("rules", "--confidence", "--rules", rules.toString());
        assertTrue(page.out().contains("gb-limits#molybdenum/stel ("), page.out());
        assertTrue(!page.out().contains("gb-limits#molybdenum/twa ("), page.out());
    }

    @Test
    void aRowInTheLongFormIsWrittenInItsOwnIndent() throws IOException {
        String file = "gb/tables/limits.yaml";
        EditedRules.append(rules, file, """
                  # kept as it is
                  - agent: ozone
                    unit: ppm   # and this
                    ceiling: 1
                """);
        CommandRun run = affirm("gb-limits#ozone/ceiling", REVIEWER, "the list", "2026-03-02");
        assertEquals(0, run.exit(), run.err());
        assertTrue(Files.readString(rules.resolve(file)).contains("""
                          # kept as it is
                          - affirmed: [{by: "reviewer A of Tarn Haven", on: 2026-03-02, source: "the list"}]
                            agent: ozone
                            unit: ppm   # and this
                        """));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "gb-limits#led/twa|2026-03-02|names no row|gb-limits#lead/twa",
                "gb-limits#magnesium-oxide/twa|2126-03-02|is a day to come|on which the row was compared",
            })
    void whatCannotBeAffirmedIsNamed(String row, String day, String message, String maybe) {
        CommandRun run = affirm(row, REVIEWER, "the list", day);
        assertEquals(2, run.exit());
        assertTrue(run.err().contains(message) && run.err().contains(maybe), run.err());
    }

    @Test
    void theShippedRulesAreNotChanged() {
        CommandRun run =
                CommandRun.of("rules", "--affirm", "gb-limits#magnesium-oxide/twa", "--by", "x", "--source", "y");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("Maybe name the rules folder of a source checkout"), run.err());
    }

    private CommandRun affirm(String row, String by, String source, String day) {
        return CommandRun.of(
                "rules", "--affirm", row, "--by", by, "--source", source, "--on", day, "--rules", rules.toString());
    }
}
