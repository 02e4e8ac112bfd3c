package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.fumewarden.check.CopiedRules;
import org.fumewarden.check.EditedRules;
import org.fumewarden.check.RuleBaseCheck;
import org.fumewarden.codes.Affirmations;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A reviewer's check of a row is one cell of one line, and the row counts as better known by it. */
final class AffirmTest extends CopiedRules {
    private static final String REVIEWER = "reviewer A of Tarn Haven";

    AffirmTest() {
        super("eu", "fi");
    }

    @Test
    void theCheckStandsBesideTheRulesAndNoTableChanges() throws IOException {
        String before = Files.readString(rules.resolve("gb/tables/limits.yaml"));
        CommandRun run = affirm("gb-limits#magnesium-oxide/twa", REVIEWER, "the list, \"4th\"", "2026-03-02");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("was memory, counts as read now"), run.out());
        assertEquals(before, Files.readString(rules.resolve("gb/tables/limits.yaml")));
        String beside = Files.readString(folder.resolve("affirmations.yaml"));
        assertTrue(beside.contains("document: \"the list, \\\"4th\\\"\", place: \"Table 1\"}"), beside);
    }

    @Test
    @Tag("ci")
    void theConfidencePageNamesWhoWhenAndAgainstWhat() {
        affirm("gb-limits#magnesium-oxide/twa", REVIEWER, "the list", "2026-03-02");
        CommandRun page = CommandRun.of("rules", "--confidence", "--rules", rules.toString());
        assertTrue(
                page.out()
                        .contains("gb-limits#magnesium-oxide/twa read, affirmed by " + REVIEWER
                                + " on 2026-03-02 against the list, Table 1"),
                page.out());
        assertTrue(page.out().contains("gb-benchmarks#naphthalene/twa ("), page.out());
        assertTrue(!page.out().contains("gb-limits#magnesium-oxide/twa ("), page.out());
    }

    @Test
    void aSecondDocumentMakesItCrossCheckedAndTheSameOneDoesNot() {
        affirm("gb-limits#magnesium-oxide/twa", REVIEWER, "the list", "2026-03-02");
        CommandRun same =
                affirm("gb-limits#magnesium-oxide/twa", "reviewer B of Tarn Haven", "The list ", "2026-03-03");
        assertTrue(same.out().contains("was read, counts as read now"), same.out());
        CommandRun other =
                affirm("gb-limits#magnesium-oxide/twa", "reviewer B of Tarn Haven", "its table", "2026-03-03");
        assertTrue(other.out().contains("was read, counts as cross-checked now"), other.out());
    }

    /** EH40/2005 Table 1: magnesium oxide, respirable 4 mg/m3. */
    @Test
    void theValueIsSaidAndAnotherOneIsRefused() {
        CommandRun run = affirm("gb-limits#magnesium-oxide/twa", REVIEWER, "the list", "2026-03-02");
        assertTrue(run.out().contains("averaging twa, value 4, unit mg/m3"), run.out());
        assertTrue(run.out().contains("Compared with the list; the document of the row is another: "), run.out());
        for (String value : List.of("5", "4 ppm")) {
            CommandRun other = affirm("gb-limits#magnesium-oxide/twa", REVIEWER, "B", "2026-03-02", "--value", value);
            assertEquals(2, other.exit(), other.out());
            assertTrue(other.err().contains("is " + value + " in B, but the row has another: "), other.err());
        }
        assertEquals(
                0,
                affirm("gb-limits#magnesium-oxide/twa", REVIEWER, "B", "2026-03-02", "--value", "4.0 mg/m3")
                        .exit());
    }

    @Test
    void anEditedValueIsNotAffirmedAgainstTheDocumentOfTheProgram() {
        String own = CodeBook.read(RuleFolder.at(rules), "gb").rows(LocalDate.of(2026, 3, 2)).stream()
                .filter(r -> r.ref().address().equals("gb-limits#magnesium-oxide/twa"))
                .findFirst()
                .orElseThrow()
                .citation()
                .source();
        EditedRules.edit(
                rules,
                "gb/tables/limits.yaml",
                "magnesium-oxide, unit: mg/m3, twa: 4,",
                "magnesium-oxide, unit: mg/m3, twa: 5,");
        CommandRun run = affirm("gb-limits#magnesium-oxide/twa", REVIEWER, own, "2026-03-02");
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains("the program has twa 4") && run.err().contains("value 5, unit mg/m3"), run.err());
    }

    @Test
    void anotherValueVoidsTheCheck() throws IOException {
        affirm("gb-limits#magnesium-oxide/twa", REVIEWER, "the list", "2026-03-02");
        EditedRules.edit(
                rules,
                "gb/tables/limits.yaml",
                "magnesium-oxide, unit: mg/m3, twa: 4,",
                "magnesium-oxide, unit: mg/m3, twa: 5,");
        CommandRun page = CommandRun.of("rules", "--confidence", "--rules", rules.toString());
        assertTrue(page.out().contains("gb-limits#magnesium-oxide/twa ("), page.out());
        assertTrue(RuleBaseCheck.lint(RuleFolder.at(rules), Path.of("rules/shared/sources.yaml")).stream()
                .anyMatch(p ->
                        p.text().contains("it is void") && p.file().endsWith("affirmations.yaml") && p.line() > 0));
    }

    @Test
    void aRowThatBeginsOnADayToComeIsAffirmedByThatDay() {
        CommandRun run =
                affirm("eu-limits-carcinogens#cadmium/twa from 2027-07-11", REVIEWER, "the directive", "2026-03-02");
        assertEquals(0, run.exit(), run.err());
        CodeBook book = CodeBook.read(RuleFolder.at(rules), "fi");
        assertTrue(affirmed(book, LocalDate.of(2027, 7, 11)));
        assertTrue(!affirmed(book, LocalDate.of(2027, 7, 10)));
    }

    @Test
    void aRowWithADayIsStoredEchoedAndVoidedWithThatDay() throws IOException {
        String row = "eu-limits-carcinogens#cadmium/twa from 2027-07-11";
        CommandRun run = affirm(row, REVIEWER, "the directive", "2026-03-02");
        assertTrue(run.out().contains(row), run.out());
        CommandRun again = affirm(row, REVIEWER, "the directive", "2026-03-03");
        assertEquals(2, again.exit());
        assertTrue(again.err().contains("is affirmed already"), again.err());
        EditedRules.edit(
                rules,
                "eu/tables/limits-carcinogens.yaml",
                "cadmium, unit: mg/m3, twa: 0.001",
                "cadmium, unit: mg/m3, twa: 0.002");
        assertTrue(voided().contains("field=" + row + ", message=affirms another value"), voided());
    }

    @Test
    @Tag("ci")
    void theCheckNamesAnEntryOfADayToCome() throws IOException {
        affirm("gb-limits#tin/twa", REVIEWER, "the list", "2026-03-02");
        Path file = folder.resolve("affirmations.yaml");
        Files.writeString(file, Files.readString(file).replace("2026-03-02", "2130-01-01"));
        CommandRun run = CommandRun.of("check", "--code", "gb", "--rules", rules.toString());
        assertEquals(2, run.exit());
        assertTrue((run.out() + run.err()).contains("was compared on a day to come: 2130-01-01"), run.out());
    }

    @Test
    void anEntryOfNobodyOrOfADayToComeIsNamedByItsLine() throws IOException {
        affirm("gb-limits#tin/twa", REVIEWER, "the list", "2026-03-02");
        Path file = folder.resolve("affirmations.yaml");
        Files.writeString(file, Files.readString(file).replace("2026-03-02", "2130-01-01"));
        String toCome = "was compared on a day to come: 2130-01-01";
        CommandRun run =
                CommandRun.of("advise", "scenarios/tours/stainless-brackets.yaml", "--rules", rules.toString());
        assertEquals(2, run.exit());
        assertTrue(run.err().contains(toCome), run.err());
        List<Problem> found = Affirmations.toCome(RuleFolder.at(rules), LocalDate.now());
        assertTrue(found.toString().contains(toCome), found.toString());
        Files.writeString(file, Files.readString(file).replace(REVIEWER, ""));
        assertTrue(voided().contains("says nothing"), voided());
    }

    private String voided() {
        try {
            return Affirmations.voided(RuleFolder.at(rules), RuleFolder.at(rules))
                    .toString();
        } catch (InputException e) {
            return e.problems().toString();
        }
    }

    private static boolean affirmed(CodeBook book, LocalDate day) {
        return book.rows(day).stream()
                .anyMatch(r -> r.ref().address().equals("eu-limits-carcinogens#cadmium/twa")
                        && r.ref().affirmed().contains(REVIEWER));
    }

    @Test
    void theTrailNamesWhoAffirmed() {
        affirm("gb-limits#tin/twa", REVIEWER, "the list", "2026-03-02");
        assertTrue(CodeBook.read(RuleFolder.at(rules), "gb").rows(LocalDate.of(2026, 3, 2)).stream()
                .anyMatch(r -> r.ref().address().equals("gb-limits#tin/twa")
                        && r.ref().affirmed().contains(REVIEWER)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "gb-limits#led/twa|2026-03-02|names no row|gb-limits#lead/twa",
                "gb-limits#lead/twa|2126-03-02|is a day to come|on which the row was compared",
            })
    void whatCannotBeAffirmedIsNamed(String row, String day, String message, String maybe) {
        CommandRun run = affirm(row, REVIEWER, "the list", day);
        assertEquals(2, run.exit());
        assertTrue(run.err().contains(message) && run.err().contains(maybe), run.err());
    }

    @Test
    void theShippedRulesAreNotChanged() {
        CommandRun run = CommandRun.of(
                "rules", "--affirm", "gb-limits#lead/twa", "--by", "x", "--document", "y", "--place", "z");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("Name your folder of rules"), run.err());
    }

    private CommandRun affirm(String row, String by, String document, String day, String... more) {
        List<String> args = new ArrayList<>(List.of("rules", "--affirm", row, "--by", by, "--document", document));
        args.addAll(List.of("--place", "Table 1", "--on", day, "--rules", rules.toString()));
        args.addAll(List.of(more));
        return CommandRun.of(args.toArray(String[]::new));
    }
}
