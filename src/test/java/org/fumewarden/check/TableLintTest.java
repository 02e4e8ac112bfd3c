package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Threshold;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lint of tables names the row that names nothing, or that answers what another row answers. */
final class TableLintTest {
    @TempDir
    private Path folder;

    @Test
    void aRowThatFollowsAnotherInTimeIsFine() {
        Path rules = EditedRules.copy(folder);
        String before = text(lint(rules));
        EditedRules.append(rules, "gb/tables/limits.yaml", """
                  - {agent: ozone, unit: ppm, ceiling: 1, from: 2000-01-01, until: 2010-01-01}
                  - {agent: ozone, unit: ppm, ceiling: 2, from: 2010-01-01}
                """);
        assertEquals(before, text(lint(rules)));
    }

    @Test
    void aRowThatEndsWithoutAnotherInItsPlaceIsNamed() {
        Path rules = EditedRules.copy(folder, "eu", "fi");
        EditedRules.edit(rules, "eu/tables/limits-carcinogens.yaml", "until: 2027-07-11", "until: 2027-06-11");
        EditedRules.edit(
                rules, "gb/tables/thresholds.yaml", "id: molar-volume,", "id: molar-volume, until: 2028-01-01,");
        EditedRules.edit(
                rules, "shared/tables/danger-levels.yaml", "agent: ammonia,", "agent: ammonia, until: 2021-01-01,");
        String found = text(lint(rules));
        assertTrue(found.contains("ends on 2027-06-11, and the row that follows begins on 2027-07-11"), found);
        assertTrue(found.contains("ends on 2028-01-01, and nothing follows"), found);
        assertTrue(found.contains("ammonia from 2021-01-01 has neither a danger level under gb"), found);
    }

    @Test
    void aDangerLevelAndTheMolarVolumeThatEndStillCount() {
        Path rules = EditedRules.copy(folder);
        EditedRules.edit(
                rules, "gb/tables/thresholds.yaml", "id: molar-volume,", "id: molar-volume, until: 2028-01-01,");
        EditedRules.edit(
                rules, "shared/tables/danger-levels.yaml", "agent: ammonia,", "agent: ammonia, until: 2021-01-01,");
        var rows = CodeBook.read(RuleFolder.at(rules), "gb").rows(LocalDate.of(2028, 1, 2));
        assertTrue(rows.stream().anyMatch(r -> r instanceof Threshold t && t.id().equals("molar-volume")));
        assertTrue(rows.stream()
                .anyMatch(r -> r instanceof DangerLevel d && d.agent().equals("ammonia")));
    }

    @Test
    void aHeadWithoutItsClauseIsNamed() {
        Path rules = EditedRules.copy(folder);
        EditedRules.edit(rules, "gb/tables/limits.yaml", "clause:", "note:");
        assertTrue(text(lint(rules)).contains("lacks \"clause\"."), text(lint(rules)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "gb/tables/limits.yaml|{agent: ozon, unit: ppm, stel: 1}|names \"ozon\", which is not there.",
                "gb/tables/limits.yaml|{agent: ozone, unit: ppm, stel: 1}|holds at the same time as",
                "gb/tables/limits.yaml|{agent: ozone, unit: ppm, ceiling: 1, source: eh41}|cites \"eh41\"",
                "gb/tables/limits.yaml|{agent: ozone, unit: ppm, ceiling: 1, confidence: seen}|cannot be \"seen\".",
                "gb/tables/limits.yaml|{agent: ozone, unit: ppm, ceiling: -1}|must be above zero",
                "gb/tables/limits.yaml|{agent: ozone, unit: pmm, ceiling: 1}|has the unit \"pmm\"",
                "gb/tables/limits.yaml|{agent: nickel, unit: ppm, ceiling: 1}|is ppm, but nickel is a dust or fume",
                "shared/tables/danger-levels.yaml|{agent: nickel, value: 1, unit: ppm}|is ppm, but nickel is a dust or fume",
                "gb/tables/duties.yaml|{id: gb-x, do: x, freq: weekly, period: P1M, anchor: last-done, who: x, applies-to: [unit], done-by: x, keep: not stated, force: law}|cannot be \"weekly\".",
                "gb/tables/duties.yaml|{id: gb-x, do: x, freq: max-interval, period: P0M, anchor: last-done, who: x, applies-to: [unit], done-by: x, keep: not stated, force: law}|cannot be \"P0M\".",
                "gb/tables/duties.yaml|{id: gb-x, do: x, freq: max-interval, period: 1 month, anchor: last-done, who: x, applies-to: [unit], done-by: x, keep: not stated, force: law}|cannot be \"1 month\".",
                "gb/tables/duties.yaml|{id: gb-x, do: x, freq: max-interval, period: P1M, anchor: last-done, who: x, applies-to: [hood], done-by: x, keep: not stated, force: law}|cannot be \"hood\".",
                "gb/tables/duties.yaml|{id: gb-x, do: x, freq: max-interval, period: P1M, anchor: last-done, who: x, applies-to: [unit], done-by: x, keep: five years, force: law}|cannot be \"five years\".",
                "gb/tables/limits.yaml|{agnet: ozone, unit: ppm, ceiling: 1}|is not a cell of this kind of table.",
                "gb/tables/limits.yaml|{agent: ozone, unit: ppm, ceiling: 1, from: 2020-01-01, until: 2019-01-01}|ends on or before",
                "gb/tables/factors.yaml|{class: ffp0, against: any, factor: 4}|names \"ffp0\", which is not there.",
                "gb/tables/factors.yaml|{class: ffp1, against: any, factor: 4}|holds at the same time as",
                "gb/tables/factors.yaml|{class: ffp1, against: particle, factor: 4}|names \"particle\"",
                "gb/tables/factors.yaml|{class: ffp1, against: gas, factor: 4, provided: hood-evidense}|names \"hood-evidense\"",
                "shared/tables/emitters-process.yaml|{of: process, is: tig, with: meltin, principal: [ozone]}|names \"meltin\"",
                "shared/tables/emitters-process.yaml|{of: process, is: tigg, principal: [ozone]}|names \"tigg\"",
                "shared/tables/emitters-process.yaml|{of: process, is: tig, principal: [ozon]}|names \"ozon\"",
                "shared/tables/equipment-sets.yaml|{set: for-fire, items: [self-contained-positiv]}|names \"self-contained-positiv\"",
            })
    void aSpoiltRowIsNamed(String file, String row, String message) {
        Path rules = EditedRules.copy(folder);
        EditedRules.append(rules, file, "  - " + row + "\n");
        List<Problem> problems = lint(rules);
        assertTrue(
                problems.stream()
                        .anyMatch(p -> p.file().endsWith(file)
                                && p.line() > 0
                                && p.text().contains(message)),
                () -> text(problems));
    }

    private static List<Problem> lint(Path rules) {
        return RuleBaseCheck.lint(RuleFolder.at(rules), Path.of("rules/shared/sources.yaml"));
    }

    private static String text(List<Problem> problems) {
        return problems.stream().map(Problem::text).collect(Collectors.joining("\n"));
    }
}
