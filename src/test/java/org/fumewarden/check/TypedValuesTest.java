package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.WrittenCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An officer's edit of a value, or the loss of a rule, is seen without the source tree. */
final class TypedValuesTest extends CopiedRules {
    private static final String LIMITS = "gb/tables/limits.yaml";

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
        named(
                "gb-limits / ozone is a row of the program that is gone (stel 0.2, stel-mg 0.4); it stood below this line");
        assertEquals(
                1,
                problems().stream().filter(p -> p.contains("ozone")).count(),
                problems().toString());
        named("GB-NEED-010 is a rule of the program that this rule base has not");
    }

    @Test
    void aRowWrittenTwiceIsOneFinding() throws IOException {
        Path table = rules.resolve(LIMITS);
        List<String> lines = new ArrayList<>(Files.readAllLines(table));
        String tin = lines.stream()
                .filter(l -> l.contains("agent: tin,"))
                .findFirst()
                .orElseThrow();
        lines.add(lines.indexOf(tin) + 1, tin);
        Files.write(table, lines);
        assertEquals(1, problems().size(), problems().toString());
        named("gb-limits / tin is written 2 times");
    }

    @Test
    void anotherFirstDayIsOneFinding() {
        EditedRules.edit(rules, LIMITS, "from: 20", "from: 21");
        assertEquals(1, problems().size(), problems().toString());
        named(", but the program has from: 20");
    }

    @Test
    void aRowIsClosedOnADayOnceTheDayIsTypedASecondTime() throws IOException {
        EditedRules.edit(
                rules,
                LIMITS,
                "agent: tin, unit: mg/m3, twa: 2,",
                "agent: tin, until: 2030-01-01, unit: mg/m3, twa: 2,");
        named("gb-limits / tin / until is 2030-01-01, and the row of the program has no such cell");
        Files.writeString(
                folder.resolve("typed-apart.csv"),
                "table,row,cell,value,source\ngb-limits,tin,until,2030-01-01,our list\n");
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
                "table,row,cell,value,source\ngb-limits,tin from 2030-01-01,twa,1,our list\ngb-limits,tin from 2030-01-01,unit,mg/m3,our list\ngb-limits,tin,until,2030-01-01,our list\nrules,GB-NEED-010,withdrawn,2030-01-01,replaced\n");
        Files.delete(rules.resolve("gb/need.drl"));
        List<String> problems = problems();
        assertTrue(
                problems.stream().noneMatch(p -> p.contains("tin") || p.contains("GB-NEED-010")), problems.toString());
    }

    @Test
    void everyWordOfALimitIsHeld() {
        Set<String> words = new TreeSet<>();
        WrittenCell.words(RuleFolder.shipped()).stream()
                .filter(cell -> !cell.cell().equals("confidence") || cell.saysSeen())
                .forEach(cell -> words.add(cell.key()));
        assertEquals(words, new TreeSet<>(new TypedValues().words().keySet()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "gb/tables/limits.yaml|respirable as Mn|inhalable as Mn|is inhalable as Mn, but it was respirable as Mn on",
                "gb/tables/limits.yaml|edition: \"4th ed. 2020\"|edition: \"5th ed. 2026\"|gb-limits / head / edition is 5th ed. 2026",
                "shared/tables/danger-levels.yaml|basis: \"as Cr|basis: \"as V|basis is as V",
                "gb/tables/factors.yaml|confidence: memory|confidence: read|head / confidence is read, and no list says in which copy it was seen.",
                "shared/tables/danger-levels.yaml|agent: ammonia, value|agent: ammonia, until: 2021-01-01, value|danger-levels / ammonia / until",
                "gb/tables/thresholds.yaml|id: molar-volume, value|id: molar-volume, until: 2028-01-01, value|gb-thresholds / molar-volume / until",
                "gb/tables/duties.yaml|done-by: examination|done-by: inspection|done-by is inspection, but the program has examination",
                "gb/tables/limits-none.yaml|thorium, argon|thorium|but the program has welding-fume, zinc-oxide",
            })
    void aSlipInAnyCellIsNamed(String file, String from, String to, String message) {
        EditedRules.edit(rules, file, from, to);
        named(message);
    }

    @Test
    void whatAnOrganisationPutsInPlaceOfAShippedValueIsSaid() throws IOException {
        EditedRules.edit(rules, LIMITS, "agent: tin, unit: mg/m3, twa: 2,", "agent: tin, unit: mg/m3, twa: 200,");
        Files.writeString(
                folder.resolve("typed-apart.csv"), "table,row,cell,value,source\ngb-limits,tin,twa,200,our list\n");
        assertEquals(List.of(), problems());
        List<String> replaced = TypedValues.replaced(RuleFolder.at(rules));
        assertEquals(1, replaced.size(), replaced.toString());
        assertTrue(
                replaced.get(0)
                        .startsWith(
                                "replaced gb-limits / tin / twa is 200 by typed-apart.csv (our list); the program holds 2 ("),
                replaced.get(0));
    }
}
