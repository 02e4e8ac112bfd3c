package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.CodeUsed;
import org.fumewarden.check.EditedRules;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A row that ended and that nothing follows still counts where its absence would be milder; the sheet and the file say so. */
final class EndedRowTest {
    private static final String TASK = """
            title: Cold store
            code: gb
            on: %s
            task: {process: mag-solid-wire, base-metal: carbon-steel, coating: none, place: indoors, extraction: none}
            exposures:
              - {agent: ammonia, twa: 400 ppm}
            """;

    @TempDir
    private Path folder;

    private Advice advice(String on) {
        Path rules = EditedRules.copy(folder);
        EditedRules.edit(
                rules,
                "shared/tables/danger-levels.yaml",
                "agent: ammonia, value",
                "agent: ammonia, until: 2026-03-02, value");
        RuleFolder base = RuleFolder.at(rules);
        return Bench.ofText("task", TASK.formatted(on), code -> new Advisor(RuleBase.compiled(base, code)))
                .advise();
    }

    @Test
    void theDayBeforeSaysUntilWhenAndTheDayItselfSaysThatItEnded() {
        Advice before = advice("2026-03-01");
        assertEquals(List.of(), before.codeUsed().ended());
        assertEquals(LocalDate.of(2026, 3, 1), before.endsSoon().orElseThrow());
        assertTrue(!AdviceJson.write(before).contains("\"ended\""));
    }

    @Test
    void aLevelPastItsEndStillStopsTheWorkAndIsSaid() {
        Advice after = advice("2026-03-02");
        assertEquals(
                List.of("danger-levels#ammonia"),
                after.codeUsed().ended().stream().map(CodeUsed.Ended::row).toList());
        assertTrue(!after.stops().isEmpty());
        assertTrue(AdviceJson.write(after).contains("\"ended\""), AdviceJson.write(after));
    }
}
