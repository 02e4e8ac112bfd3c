package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fumewarden.codes.Affirmations;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RowAffirmer;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A check says one cause once, and says how many scenarios it cost. */
final class OneCauseTest {
    private static final String LIMITS = "gb/tables/limits.yaml";
    private static final CheckScope GB = new CheckScope(Optional.of("gb"), Optional.empty());
    private static final LocalDate TODAY = LocalDate.of(2026, 12, 1);

    @TempDir
    private Path folder;

    private List<String> check(Path rules, Path scenarios, LocalDate today) {
        RuleFolder base = RuleFolder.at(rules);
        return RuleBaseCheck.run(GB, base, code -> RuleBase.compiled(base, code), scenarios, Optional.empty(), today)
                .problems()
                .stream()
                .map(Problem::text)
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tin, unit: mg/m3, twa: 2,|tin, unit: mg/m3, twa: .nan,|must be a number but is \".nan\"",
                "tin, unit: mg/m3, twa: 2,|tin, unit: mg/m4, twa: 2,|has the unit \"mg/m4\"",
                "tin, unit: mg/m3, twa: 2,|tin, unit: mg/m3, tvva: 2,|is not a cell of this kind of table",
            })
    void oneBadCellIsOneCause(String from, String to, String message) {
        Path rules = EditedRules.copy(folder);
        EditedRules.edit(rules, LIMITS, from, to);
        List<String> problems = check(rules, Path.of("scenarios/gb"), TODAY);
        assertTrue(problems.get(0).contains(message), problems.toString());
        assertTrue(problems.size() <= 3, problems.toString());
        assertTrue(
                problems.get(problems.size() - 1).contains("scenarios that could not be run because of it"),
                problems.toString());
    }

    @Test
    void aTableComparedOnADayToComeIsNamed() {
        Path rules = EditedRules.copy(folder);
        Path scenario = Path.of("scenarios/shared/SHARED-SELECTION-010-plain-bench.yaml");
        EditedRules.edit(rules, LIMITS, "checked-on: 2026-11-25", "checked-on: 2026-12-02");
        assertTrue(check(rules, scenario, TODAY).stream()
                .anyMatch(p -> p.contains("gb/tables/limits.yaml") && p.contains("is a day to come: 2026-12-02")));
        assertTrue(check(rules, scenario, TODAY.plusDays(1)).stream().noneMatch(p -> p.contains("is a day to come")));
    }

    @Test
    void anAffirmationOfAnotherCodeIsNoneOfThisOnesBusiness() {
        Path rules = EditedRules.copy(folder, "us");
        RowAffirmer affirmer = new RowAffirmer(rules);
        affirmer.affirm(
                "us-limits#lead/twa",
                java.util.Optional.empty(),
                "reviewer A",
                LocalDate.of(2026, 11, 30),
                "the act",
                "its table");
        RuleFolder whole = RuleFolder.at(rules);
        assertEquals(List.of(), Affirmations.voided(whole, GB.of(whole)));
    }
}
