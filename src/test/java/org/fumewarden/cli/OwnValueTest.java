package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.batch.BatchTasks;
import org.fumewarden.batch.LineAdvisor;
import org.fumewarden.check.EditedRules;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A value that an organisation put in place of ours, and typed apart, is cited as its own: EH40/2005 gives 0.5 mg/m3 for nickel and
 * not the 0.1 that the invented house list of Tarn Haven does.
 */
final class OwnValueTest {
    private static final String TASK = "scenarios/tours/stainless-brackets.yaml";
    private static final String OWN =
            "value of this organisation, typed apart on 2026-03-01, A. Officer, typed-apart.csv line 2";
    private static final String EVERY = "period: P3M\n    anchor: last-done\n    who: \"competent";

    @TempDir
    private Path folder;

    private Path rules;

    @BeforeEach
    void copy() throws IOException {
        rules = EditedRules.copy(folder);
        EditedRules.edit(
                rules,
                "gb/tables/limits.yaml",
                "agent: nickel, unit: mg/m3, twa: 0.5",
                "agent: nickel, unit: mg/m3, twa: 0.1");
        Files.writeString(
                folder.resolve("typed-apart.csv"),
                "table,row,cell,value,source,by,on\ngb-limits,nickel,twa,0.10,the house list of Tarn Haven,A. Officer,2026-03-01\n");
    }

    private String run(String... args) {
        return CommandRun.of(Stream.concat(List.of(args).stream(), List.of("--rules", rules.toString()).stream())
                        .toArray(String[]::new))
                .out();
    }

    @Test
    void everySheetCitesItAsTheOrganisationsOwn() {
        String notes = run("advise", TASK, "--detail");
        assertTrue(notes.replaceAll("\\s+", " ").contains("the house list of Tarn Haven, " + OWN), notes);
        String german = run("advise", TASK, "--detail", "--language", "de").replaceAll("\\s+", " ");
        assertTrue(german.contains("Wert dieser Organisation, gesondert erfasst am 2026-03-01, A. Officer"), german);
        String json = run("advise", TASK, "--format", "json");
        assertTrue(
                json.contains("\"rules-changed-in\" : \"" + rules) || json.contains("\"rules-changed-in\":\"" + rules),
                json.substring(0, 400));
        assertFalse(CommandRun.of("advise", TASK, "--format", "json").out().contains("rules-changed-in"));
        String line = new LineAdvisor(id -> TaskOptions.advisor(rules, id), Optional.of("gb"), Optional.empty())
                .answer(1, BatchTasks.task(1))
                .json();
        assertTrue(line.contains("\"rules-changed-in\":\"" + rules), line.substring(0, 400));
        assertTrue(json.contains("\"the house list of Tarn Haven\"") && json.contains(OWN), json);
    }

    @Test
    void explainSaysWhoseItIsInThePlaceOfTheList() {
        String why = run("explain", TASK, "--why", "nickel").replaceAll("\\s+", " ");
        assertTrue(why.contains(OWN), why);
        String line = why.substring(why.indexOf("insoluble compounds: limit 0.1"));
        assertFalse(line.substring(0, line.indexOf(OWN)).contains("EH40"), line);
    }

    @Test
    void whatNobodyTypedStandsUnderNoLaw() throws IOException {
        Files.delete(folder.resolve("typed-apart.csv"));
        EditedRules.edit(
                rules, "gb/tables/duties.yaml", "period: P1M\n    anchor: last-done\n    who: \"competent", EVERY);
        String notes = run("advise", TASK, "--detail").replaceAll("\\s+", " ");
        assertTrue(
                notes.contains("value of this organisation, compared with nothing, the program has twa 0.5 (gb-"),
                notes);
        assertTrue(notes.contains("the program has period P1M (gb-rpe-exam-monthly)"), notes);
        String issue = notes.substring(notes.indexOf("ISSUE "), notes.indexOf("Before you sign"));
        assertTrue(issue.contains("Changed and not compared: the program has period P1M."), issue);
        String german = run("advise", TASK, "--detail", "--language", "de").replaceAll("\\s+", " ");
        assertTrue(german.contains("mit nichts verglichen, das Programm hat twa 0"), german);
        assertFalse(CommandRun.of("advise", TASK, "--detail").out().contains("value of this organisation"));
    }

    @Test
    void aSentenceOfARuleCitesTheValueThatItRestsOn() throws IOException {
        EditedRules.edit(
                rules, "gb/tables/policy.yaml", "welding-fume-floor, value: 20", "welding-fume-floor, value: 30");
        type("gb-policy,welding-fume-floor,value,30,floors of Tarn Haven,A. Officer,2026-03-01");
        String notes = run("advise", TASK, "--detail").replaceAll("\\s+", " ");
        assertTrue(notes.contains("floors of Tarn Haven, " + OWN + " (GB-NEED-010)"), notes);
        String why = run("explain", TASK, "--why", "required-factor").replaceAll("\\s+", " ");
        assertTrue(why.contains("[GB-NEED-010: floors of Tarn Haven, " + OWN + "]"), why);
    }

    @Test
    void aValueThatSilencesAStopIsNamed() throws IOException {
        EditedRules.edit(
                rules, "shared/tables/thresholds.yaml", "oxygen-enriched, value: 22.0", "oxygen-enriched, value: 23.5");
        type("shared-thresholds,oxygen-enriched,value,23.5,gases of Tarn Haven,A. Officer,2026-03-01");
        String page = run("advise", TASK, "--set", "atmosphere.oxygen=23 %").replaceAll("\\s+", " ");
        assertTrue(page.contains("Changed, the program has 22 %: another state"), page);
    }

    @Test
    void nobodyTypedAValueOnADayToCome() throws IOException {
        type("gb-limits,nickel,twa,0.10,the house list of Tarn Haven,A. Officer,2999-03-01");
        CommandRun run = CommandRun.of("advise", TASK, "--rules", rules.toString());
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains("was typed on a day to come: 2999-03-01"), run.err());
    }

    private void type(String line) throws IOException {
        Files.writeString(folder.resolve("typed-apart.csv"), "table,row,cell,value,source,by,on\n" + line + "\n");
    }
}
