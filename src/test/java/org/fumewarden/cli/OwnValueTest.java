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
import org.fumewarden.check.CopiedRules;
import org.fumewarden.check.EditedRules;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A value that an organisation put in place of ours, and typed apart, is cited as its own: EH40/2005 gives 0.5 mg/m3 for nickel and
 * not the 0.1 that the invented house list of Tarn Haven does.
 */
@Tag("ci")
final class OwnValueTest extends CopiedRules {
    private static final String TASK = "scenarios/tours/stainless-brackets.yaml";
    private static final String OWN =
            "value of this organisation, typed apart on 2026-03-01, A. Officer, typed-apart.csv line 2";
    private static final String EVERY = "period: P3M\n    anchor: last-done\n    who: \"competent";

    @BeforeEach
    void edit() throws IOException {
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
        assertTrue(notes.contains("the program has period 1 month (gb-rpe-exam-monthly)"), notes);
        String issue = notes.substring(notes.indexOf("ISSUE "), notes.indexOf("Before you sign"));
        assertTrue(issue.contains("Changed and not compared: the program has period 1 month."), issue);
        assertTrue(issue.contains(": at least every 3 months. Changed"), issue);
        assertFalse(issue.matches(".*\\bP\\d+[DWMY]\\b.*"), issue);
        String german = run("advise", TASK, "--detail", "--language", "de").replaceAll("\\s+", " ");
        assertTrue(german.contains("mindestens alle 3 Monate. Geändert"), german);
        assertTrue(german.contains("das Programm hat die Frist 1 Monat"), german);
        assertTrue(german.contains("mit nichts verglichen, das Programm hat twa 0"), german);
        assertFalse(CommandRun.of("advise", TASK, "--detail").out().contains("value of this organisation"));
    }

    @Test
    void aSentenceOfARuleCitesTheValueThatItRestsOn() throws IOException {
        EditedRules.edit(
                rules, "gb/tables/policy.yaml", "welding-fume-floor, value: 20", "welding-fume-floor, value: 30");
        type("gb-policy,welding-fume-floor,value,30,floors of Tarn Haven,A. Officer,2026-03-01");
        String notes = run("advise", TASK, "--detail").replaceAll("\\s+", " ");
        assertTrue(notes.contains("floors of Tarn Haven, " + OWN + ", in the place of "), notes);
        String why = run("explain", TASK, "--why", "required-factor").replaceAll("\\s+", " ");
        assertTrue(why.contains("[GB-NEED-010: floors of Tarn Haven, " + OWN + ", in the place of "), why);
    }

    @Test
    void aValueThatSilencesAStopIsNamed() throws IOException {
        EditedRules.edit(
                rules, "shared/tables/thresholds.yaml", "oxygen-enriched, value: 22.0", "oxygen-enriched, value: 23.5");
        type("shared-thresholds,oxygen-enriched,value,23.5,gases of Tarn Haven,A. Officer,2026-03-01");
        String page = run("advise", TASK, "--set", "atmosphere.oxygen=23 %").replaceAll("\\s+", " ");
        assertTrue(page.contains("Changed, the program has 22 %: another state"), page);
    }

    /** Nothing of the program speaks for a value of the house: no reason, no force of law, no mark on what did not change. */
    @Test
    void nothingOfTheProgramSpeaksForIt() throws IOException {
        EditedRules.edit(rules, "gb/tables/benchmarks.yaml", "mg/m3, twa: 4, fraction", "mg/m3, twa: 3, fraction");
        EditedRules.edit(
                rules, "gb/tables/duties.yaml", "period: P1M\n    anchor: last-done\n    who: \"competent", EVERY);
        type("gb-duties,gb-rpe-exam-monthly,period,P3M,house list,A. Officer,2026-03-01");
        Path task = Files.writeString(
                folder.resolve("fume.yaml"),
                "extends: " + Path.of(TASK).toAbsolutePath()
                        + "\nexposures:\n  - {agent: welding-fume, twa: 5 mg/m3}\n");
        String reasons =
                run("explain", task.toString(), "--why", "welding-fume").replaceAll("\\s+", " ");
        assertTrue(
                reasons.contains(
                        "The benchmark is not law: this organisation has it in the place of that of the program."),
                reasons);
        String json = run("advise", TASK, "--format", "json");
        assertTrue(json.contains("\"id\":\"gb-rpe-exam-monthly\""), json);
        String duty = json.substring(json.indexOf("\"id\":\"gb-rpe-exam-monthly\""));
        assertTrue(duty.substring(0, duty.indexOf("}")).contains("\"force\":\"own\""), duty.substring(0, 900));
    }

    /** What the house deleted or added is tried with what the program has; a list marks only its own items. */
    @Test
    void aDeletedOrAddedItemIsNamed() {
        EditedRules.edit(rules, "gb/tables/notations.yaml", "[chromium-vi, cobalt]", "[cobalt]");
        EditedRules.edit(rules, "gb/tables/notations.yaml", "[lead, mercury]", "[lead, mercury, chromium-vi]");
        String page = run("advise", TASK, "--detail").replaceAll("\\s+", " ");
        assertTrue(
                page.contains(
                        "chromium(VI): listed among asthmagens. Changed, the program has this row: other measures."),
                page);
        assertFalse(page.contains("nickel and its insoluble compounds: listed among asthmagens. Changed"), page);
        assertTrue(
                page.contains(", in the place of Management of Health and Safety at Work Regulations 1999, reg 16"),
                page);
    }

    /** Of two averaging times in one line only that which differs is the organisation's. */
    @Test
    void onlyTheCellThatDiffersIsMarked() {
        EditedRules.edit(
                rules,
                "gb/tables/limits.yaml",
                "agent: carbon-monoxide, unit: ppm, twa: 20",
                "agent: carbon-monoxide, unit: ppm, twa: 10");
        String page = run("advise", TASK, "--detail").replaceAll("\\s+", " ");
        assertTrue(page.contains("carbon monoxide: limit of 10 ppm, 8 h average. Changed and not compared"), page);
        assertFalse(page.contains("carbon monoxide: limit of 100 ppm"), page);
    }

    /** TRGS 900 has 0.02 mg/m3 for respirable manganese; where a looser one is written, the 0.05 of Directive 2017/164/EU takes over. */
    @Test
    void aLooserLimitIsNamedWhereABorrowedOneTakesOver() {
        List.of("de", "eu").forEach(part -> EditedRules.folder(Path.of("rules", part), rules.resolve(part)));
        EditedRules.edit(
                rules,
                "de/tables/limits.yaml",
                "manganese-respirable, unit: mg/m3, twa: 0.02",
                "manganese-respirable, unit: mg/m3, twa: 0.2");
        String page = run("advise", TASK, "--code", "de").replaceAll("\\s+", " ");
        assertTrue(
                page.matches(".*manganese[^.:]*: limit of 0\\.02 mg/m3[^.]*\\. Changed, the program has this row\\..*"),
                page);
        String german = run("advise", TASK, "--code", "de", "--language", "de").replaceAll("\\s+", " ");
        assertTrue(german.matches(".*Mangan[^.:]*: Grenzwert 0,02 mg/m3[^.]*\\. Geändert, das Programm hat.*"), german);
    }

    /** Two rows in force on one day: no sheet is written, and both lines are named. */
    @Test
    void rowsThatOverlapStopTheSheet() {
        EditedRules.append(
                rules, "gb/tables/limits.yaml", "  - {agent: ozone, unit: ppm, stel: 0.3, from: 2025-01-01}\n");
        CommandRun run = CommandRun.of("advise", TASK, "--rules", rules.toString());
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains("ozone/stel holds at the same time as gb-limits#ozone/stel"), run.err());
    }

    /** Without the list of what processes give off nothing would be in the air: no sheet is written. */
    @Test
    void aTableThatIsGoneStopsTheSheet() throws IOException {
        Path lost = rules.resolve("shared/tables/emitters-process.yaml");
        Files.delete(lost);
        CommandRun run = CommandRun.of("advise", TASK, "--rules", rules.toString());
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains(lost + " is missing (the program has it)."), run.err());
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
