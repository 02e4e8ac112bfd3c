package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.lang3.ArrayUtils;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.check.CopiedRules;
import org.fumewarden.check.EditedRules;
import org.fumewarden.check.TypedValues;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody changed in words is marked where it is printed, as a changed limit is; a row under a wrong id is refused. */
final class ChangedWordsTest extends CopiedRules {
    private static final String HULL = "scenarios/tours/aluminium-hull.yaml";
    private static final String RESCUE = "scenarios/shared/SHARED-ATMOSPHERE-190-rescue-not.yaml";

    private CommandRun advise(String task, String... more) {
        String[] args = {"advise", task, "--rules", rules.toString()};
        return CommandRun.of(ArrayUtils.addAll(args, more));
    }

    private static String flat(CommandRun run) {
        return run.out().replaceAll("\\s+", " ");
    }

    private static String issue(String sheet) {
        return StringUtils.substringBetween(sheet, "ISSUE ", "Issued by");
    }

    @Test
    void aChangedActIsMarkedWhereItOrdersAndInTheIssue() {
        EditedRules.edit(
                rules,
                "shared/tables/acts.yaml",
                "Raise the alarm and call the rescue team. Do not go in yourself.",
                "Go in and fetch him at once.");
        String sheet = flat(advise(RESCUE));
        assertTrue(sheet.contains("[ ] Changed, see below: Go in and fetch him at once."), sheet);
        assertTrue(
                issue(sheet).contains("Changed and not compared: the program has \"Raise the alarm and call"),
                issue(sheet));
        String german = flat(advise(RESCUE, "--language", "de"));
        assertTrue(german.contains("Geändert, siehe unten: Go in and fetch him at once."), german);
        assertTrue(german.contains("Geändert und nicht verglichen: das Programm hat \"Raise the alarm"), german);
    }

    @Test
    void aChangedClauseIsCitedAsNoLaw() {
        EditedRules.edit(
                rules,
                "gb/tables/clauses.yaml",
                "SHARED-MEASURE-010, source: coshh, clause: \"reg 7(7)(a)\"",
                "SHARED-MEASURE-010, source: coshh, clause: \"reg 99(2)\"");
        String sheet = flat(advise("scenarios/tours/stainless-brackets.yaml", "--detail"));
        assertFalse(sheet.contains("reg 99(2)"), sheet);
        assertTrue(
                issue(sheet)
                        .contains("Clause of the rule SHARED-MEASURE-010: as this folder has it. Changed and not"
                                + " compared: the program has \"reg 7(7)(a)\"."),
                issue(sheet));
    }

    @Test
    void aChangedNameIsInTheIssue() {
        EditedRules.edit(rules, "shared/tables/processes.yaml", "\"MIG welding, solid wire\"", "\"MIG brazing\"");
        String sheet = flat(advise(HULL));
        assertTrue(
                issue(sheet)
                        .contains("MIG brazing: a name of this folder. Changed and not compared: the program has"
                                + " \"MIG welding, solid wire\"."),
                issue(sheet));
    }

    @Test
    void aChangedTitleIsMarkedWhereItIsCitedAndFoundByTheCheck() throws IOException {
        EditedRules.edit(
                rules, "shared/sources.yaml", "HSG53 Respiratory protective equipment at work", "The New Law On Masks");
        String sheet = flat(advise(HULL, "--detail"));
        assertFalse(sheet.contains("The New Law On Masks, "), sheet);
        assertTrue(sheet.contains("The New Law On Masks (changed, the program has \"HSG53 "), sheet);
        assertTrue(issue(sheet).contains("The New Law On Masks: cited under this title. Changed"), issue(sheet));
        assertTrue(TypedValues.check(RuleFolder.at(rules)).stream()
                .anyMatch(p -> p.field().startsWith("sources / hsg53 /")
                        && p.file().endsWith("shared/sources.yaml")
                        && p.line() > 0));
        Files.writeString(
                folder.resolve(RuleFolder.TYPED),
                "table,row,cell,value,source\nsources,hsg53,title,The New Law On Masks,the house\n");
        assertTrue(TypedValues.check(RuleFolder.at(rules)).stream()
                .noneMatch(p -> p.field().startsWith("sources / hsg53 /")));
        assertFalse(flat(advise(HULL)).contains("cited under this title"));
    }

    @ParameterizedTest
    @Tag("ci")
    @CsvSource(
            delimiter = '|',
            value = {
                "shared/tables/acts.yaml | id: toxic-hygiene | What to do: Toxic dust: do not eat",
                "gb/tables/duties.yaml | id: gb-rpe-exam-monthly | Examine all parts of the respirator thoroughly",
                "gb/tables/clauses.yaml | rule: SHARED-MEASURE-010 | Clause of the rule SHARED-MEASURE-010:",
                "gb/tables/policy.yaml | id: welding-fume-floor | welding fume floor: 20",
                "shared/sources.yaml | id: coshh | Control of Substances Hazardous to Health Regulations 2002: cited"
            })
    void aDeletedRowIsInTheIssue(String file, String row, String words) throws IOException {
        Path table = rules.resolve(file);
        String text = Files.readString(table);
        String gone = Arrays.stream(text.split("(?m)^(?= +- )"))
                .filter(part -> part.contains(row + "\n") || part.contains(row + ","))
                .findFirst()
                .orElseThrow();
        Files.writeString(table, text.replace(gone, ""));
        String issue = issue(flat(advise("scenarios/tours/stainless-brackets.yaml")));
        assertTrue(issue.contains(words), issue);
        assertTrue(issue.matches(".*[Cc]hanged.*the program has this (row|document).*"), issue);
    }

    @Test
    void aChangedCardOfTheCodeIsInTheIssueAndFoundByTheCheck() {
        EditedRules.edit(rules, "gb/code.yaml", "name: Great Britain", "name: Little Britain");
        EditedRules.edit(rules, "gb/code.yaml", "COSHH 2002 as amended", "COSHH 2031");
        String issue = issue(flat(advise(HULL)));
        assertTrue(
                issue.contains("Little Britain: named and described on this sheet. Changed and not compared: the"
                        + " program has \"Great Britain\", edition COSHH 2002 as amended"),
                issue);
        String german = flat(advise(HULL, "--language", "de"));
        assertTrue(german.contains("Little Britain: auf diesem Blatt genannt und beschrieben."), german);
        assertTrue(TypedValues.check(RuleFolder.at(rules)).stream()
                .anyMatch(p -> p.field().equals("gb-code / gb / name")));
    }

    /** What decides stands in files of three kinds: rules, their sentences in other languages, and tables that somebody added. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "gb/need.drl | Welding fume has no known safe level | Fume is harmless | Rule GB-NEED-010: as this folder has it. Changed, the program has another rule; by its rules and tables: the same answer.",
                "gb/need.drl | rule \"GB-NEED-010 | rule \"GB-NEED-990 | Rule GB-NEED-010: as this folder has it. Changed, the program has this rule; by its rules and tables: the same answer.",
                "shared/aliases_en.yaml | britain: [gb] | britain: [us] | Word \"britain\" (code), here us: as this folder has them. Changed, the program has gb.",
                "shared/says_de.yaml | 8-h-Mittel | Jahresmittel | Wort \"8 h average\" (de), hier „Jahresmittel“: wie dieser Ordner sie hat. Geändert, das Programm hat „8-h-Mittel“.",
                "gb/says_de.yaml | Für Schweißrauch ist kein sicherer Wert bekannt | Rauch schadet nicht | Regel GB-NEED-010: wie dieser Ordner sie hat. Geändert, das Programm hat eine andere Regel; nach seinen Regeln und Tabellen: dieselbe Antwort."
            })
    void aChangedRuleIsInTheIssue(String file, String was, String is, String words) {
        EditedRules.edit(rules, file, was, is);
        String tour = "scenarios/tours/stainless-brackets.yaml";
        String sheet = flat(file.contains("_de") ? advise(tour, "--language", "de") : advise(tour));
        assertTrue(sheet.contains(words), sheet);
    }

    /** A rule that decides otherwise is named with what of the answer is otherwise by the rules of the program. */
    @Test
    void aChangedRuleIsNamedWithItsEffect() {
        EditedRules.edit(
                rules, "gb/need.drl", "not Answer( question == \"extraction\", value == \"verified\" )", "Gap()");
        String sheet = flat(advise("scenarios/tours/stainless-brackets.yaml"));
        assertTrue(
                sheet.contains("Rule GB-NEED-010: as this folder has it. Changed, the program has another rule; by its"
                        + " rules and tables: another state, a factor of 20 instead of 9.6"),
                sheet);
    }

    /** A sentence in another language is on the sheet in that language, whose number covers it. */
    @Test
    void theRevisionOfAGermanSheetCoversItsSentences() {
        String tour = "scenarios/tours/stainless-brackets.yaml";
        String before = sentences(advise(tour, "--language", "de"));
        EditedRules.edit(
                rules, "gb/says_de.yaml", "Für Schweißrauch ist kein sicherer Wert bekannt", "Rauch schadet nicht");
        assertNotEquals(before, sentences(advise(tour, "--language", "de")));
    }

    private static String sentences(CommandRun sheet) {
        String after = flat(sheet).replaceFirst(".*; Sätze ", "");
        assertTrue(after.matches("[0-9a-f]{12};.*"), after);
        return after.substring(0, 12);
    }

    /** A changed value on which documents differ is no known one: no line beside it says that every value was compared. */
    @Test
    void besideAChangedValueNotEveryOneWasCompared() {
        assertTrue(CommandRun.of("advise", HULL).out().contains("Every value that can change this answer"));
        EditedRules.edit(
                rules,
                "gb/tables/limits.yaml",
                "agent: ozone, unit: ppm, stel: 0.2",
                "agent: ozone, unit: ppm, beside: \"another list\", stel: [0.3, 0.4]");
        String issue = issue(flat(advise(HULL)));
        assertTrue(issue.contains("ozone: limit of 0.3 ppm, 15 min average; another document gives 0.4"), issue);
        assertFalse(issue.contains("Every value"), issue);
        assertTrue(issue.contains("1 value behind this answer has not been checked"), issue);
        assertFalse(issue.contains("the stricter one is used"), issue);
    }

    @Test
    void aLimitInATableThatSomebodyAddedIsNoLimitOfTheProgram() throws IOException {
        Files.writeString(rules.resolve("gb/tables/more-limits.yaml"), """
                id: more-limits
                kind: limits
                source: eh40
                clause: Table 1
                edition: "4th ed. 2020"
                confidence: read
                checked-on: 2026-11-25
                rows:
                  - {agent: welding-fume, unit: mg/m3, twa: 5}
                """);
        String issue = issue(flat(advise("scenarios/tours/stainless-brackets.yaml")));
        assertTrue(
                issue.contains("welding fume: limit of 5 mg/m3, 8 h average. Changed and not compared: the program"
                        + " has no such row."),
                issue);
    }

    @Test
    void whatWouldFallSilentIsRefused() throws IOException {
        List.of("de", "eu").forEach(part -> EditedRules.folder(Path.of("rules", part), rules.resolve(part)));
        EditedRules.edit(rules, "de/code.yaml", "borrows: [eu]", "borrows: []");
        String german = advise(HULL, "--code", "de").err();
        assertTrue(german.contains("de/code.yaml borrows lacks eu"), german);
        Files.move(rules.resolve("gb/need.drl"), rules.resolve("gb/needs.drl"));
        assertTrue(advise(HULL).err().contains("gb/need.drl is missing"));
        Files.copy(rules.resolve("gb/needs.drl"), rules.resolve("gb/need.drl"));
        String idle = advise(HULL).err();
        assertTrue(idle.contains("gb/needs.drl is named after no phase"), idle);
        Files.delete(rules.resolve("gb/needs.drl"));
        Files.delete(rules.resolve("shared/sources.yaml"));
        assertTrue(advise(HULL).err().contains("shared/sources.yaml is missing"));
    }

    @Test
    void aChangedEditionIsSaidOnce() {
        EditedRules.edit(rules, "gb/tables/limits.yaml", "\nedition: \"", "\nedition: \"9th of 2031, not ");
        String issue = issue(flat(advise("scenarios/tours/stainless-brackets.yaml")));
        assertEquals(1, StringUtils.countMatches(issue, "the program has edition"), issue);
        assertTrue(
                issue.matches(".*: \\d+ values stand in it\\. Changed and not compared: the program has edition"
                        + " .*, in the whole table\\..*"),
                issue);
    }

    @ParameterizedTest
    @Tag("ci")
    @CsvSource({
        "gb/tables/policy.yaml, id: welding-fume-floor, id: welding-fume-flor, id, welding-fume-floor",
        "gb/tables/limits.yaml, agent: ozone, agent: ozon, agent, ozone",
        "gb/tables/clauses.yaml, rule: SHARED-HAZARD-020, rule: SHARED-HAZARD-02O, rule, SHARED-HAZARD-020",
        "shared/tables/emitters-metal.yaml, [iron-oxide, [iron-oxid, principal, iron-oxide",
        "shared/tables/questions.yaml, id: process, id: proces, id, process",
        "shared/tables/acts.yaml, part: stop, part: stopp, part, stop",
        "gb/tables/factors.yaml, id: gb-factors, id: gb-factor, id, gb-factors"
    })
    void aWrongIdIsRefusedWithThePlaceAndWhatWasMeant(String file, String was, String slip, String cell, String meant) {
        EditedRules.edit(rules, file, was, slip);
        CommandRun run = advise(HULL);
        assertEquals(2, run.exit(), run.out());
        assertTrue(
                run.err()
                        .matches("(?s).*" + file + ":\\d+ " + cell + " is \"[^\"]+\", which no table of the program.*"),
                run.err());
        assertTrue(run.err().contains("\"" + meant + "\""), run.err());
    }

    @Test
    void oneThatIsMeantIsTypedASecondTime() throws IOException {
        EditedRules.edit(rules, "gb/tables/policy.yaml", "id: welding-fume-floor", "id: house-floor");
        Files.writeString(
                folder.resolve(RuleFolder.TYPED),
                "table,row,cell,value,source\ngb-policy,house-floor,value,20,the house list of Tarn Haven\n");
        assertEquals("", advise(HULL).err());
    }
}
