package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Of one thing the list, the record, the entries and the advice say the same. COSHH regulation 9(3) and L5 paragraph 178: an
 * examination at least once a month, so that what was first used on 10 February is overdue after 10 March.
 */
class OneAnswerTest {
    @TempDir
    Path folder;

    private CommandRun run(String... words) {
        return CommandRun.of(Stream.concat(
                        Stream.of(words),
                        Stream.of("--store", folder.resolve("yard.db").toString()))
                .toArray(String[]::new));
    }

    private static String line(CommandRun run) {
        return run.out().replaceAll("\\s+", " ");
    }

    @BeforeEach
    void register() {
        site("gb");
        run(
                "register",
                "unit",
                "id=U-1",
                "description=blower unit",
                "minimum-flow=160",
                "first-fitted=2026-02-10",
                "air-delivery=powered",
                "face-seal=loose",
                "use-mode=routine",
                "disposable=false");
        run("register", "wearer", "id=W-2", "name=Odran Pell", "exposure-start=2026-01-10");
    }

    private void site(String code) {
        run("register", "site", "id=YARD", "employer=Tarn Haven Yard", "address=1 Quay", "code=" + code);
    }

    @ParameterizedTest(name = "on {0} overdue: {1}")
    @CsvSource({"2026-03-09, false", "2026-03-10, false", "2026-03-11, true", "2026-11-29, true"})
    void aUnitNeverExaminedIsAsLateInEveryPaper(String day, boolean late) throws Exception {
        Path task = folder.resolve("task.yaml");
        Files.writeString(
                task,
                Files.readString(Path.of("scenarios/tours/stainless-brackets.yaml"))
                        .replaceAll("(?m)^on:.*", "on: " + day));
        CommandRun due = run("due", "--on", day);
        CommandRun record = run("record", "U-1", "--on", day);
        CommandRun card = run("record", "U-1", "--sheet", "card", "--on", day);
        CommandRun advice = run("advise", task.toString(), "--set", "kit.unit=U-1");
        assertEquals(late, line(due).contains("name: blower unit; status: overdue; due: 10 March 2026"));
        for (CommandRun paper : List.of(record, card, advice)) {
            assertEquals(
                    late,
                    line(paper).contains("xamination is overdue, it was due on 2026-03-10"),
                    paper.out() + paper.err());
        }
    }

    /** Asbestos and rescue from confined spaces concern this unit only where the register says so. */
    @Test
    void theRecordOrdersWithoutConditionOnlyWhatTheListDoes() {
        String record = line(run("record", "U-1"));
        for (String clause : List.of("CAR 2012 reg 13", "Confined Spaces Regs 1997")) {
            assertTrue(
                    record.matches(".*" + clause + "((?! - ).)*The register does not say whether this applies\\..*"),
                    record);
        }
        assertFalse(record.matches(".*COSHH reg 9\\(3\\)((?! - ).)*does not say whether this applies.*"), record);
    }

    /** 29 CFR 1910.134(e)(1) and (k)(3): clearance and training both before use, so both are late after the first exposure. */
    @Test
    void trainingAndClearanceOfOneDayAreLateAlike() {
        site("us");
        String due = line(run("due", "--on", "2026-11-29"));
        for (String done : List.of("medical clearance", "training")) {
            assertTrue(
                    due.contains("W-2 | what: " + done + "; kind: person; name: Odran Pell; status: overdue;"
                            + " due: 10 January 2026; days overdue: 323; last done: never;"),
                    done + " in " + due);
        }
        assertTrue(line(run("record", "W-2", "--on", "2026-11-29")).contains("overdue, it was due on 2026-01-10"));
    }

    @Test
    void theEntriesSayWhyTheyFailed() {
        run("log", "examination", "item=U-1", "on=2026-02-01", "by=O", "result=passed", "condition=ok", "flow=150");
        run("log", "before-use-check", "item=U-1", "on=2026-02-02", "by=O", "result=failed", "remarks=hose cut");
        run("log", "withdrawal", "item=U-1", "on=2026-02-03", "by=O", "reason=lens cracked");
        String entries = line(run("log", "--list", "U-1"));
        for (String why :
                List.of("failed (flow 150 is below 160 L/min)", "failed (hose cut)", "withdrawn (lens cracked)")) {
            assertTrue(entries.contains(why), entries);
        }
    }

    /** A unit without a blower that is out of use: that it is comes before everything about its flow. */
    @ParameterizedTest
    @ValueSource(strings = {"airline", "scba"})
    void thePlanOfAUnitOutOfUseBeginsWithThat(String supply) {
        run("register", "unit", "id=U-2", "description=set", "air-delivery=" + supply, "face-seal=loose");
        run("log", "withdrawal", "item=U-2", "by=O", "reason=lens cracked");
        String plan = line(run("endurance", "scenarios/tours/stainless-brackets.yaml", "--set", "kit.unit=U-2"));
        assertTrue(plan.indexOf("U-2: do not use it") > 0, plan);
        assertTrue(plan.indexOf("U-2: do not use it") < plan.indexOf("no blower"), plan);
        assertFalse(plan.contains("Use a powered unit"), plan);
        assertTrue(plan.contains("Hand it in for repair and examination."), plan);
    }

    /** EH40/2005: all exposure in any 24 hours; a stretch longer than the shift or the day is refused in the same words. */
    @ParameterizedTest(name = "stretches of {0} h")
    @CsvSource({
        "9, 540, 480 minutes of the shift",
        "24, 1440, 480 minutes of the shift",
        "25, 1500, 1440 minutes of a day"
    })
    void stretchesThatAreTooLongAreRefusedInOneWording(String hours, String minutes, String more) throws Exception {
        Path task = folder.resolve("long.yaml");
        String half = new java.math.BigDecimal(hours)
                .divide(new java.math.BigDecimal("2"))
                .toPlainString();
        Files.writeString(task, """
                title: long shift
                code: gb
                on: 2026-03-02
                task: {process: mag-solid-wire, base-metal: mild-steel, time-on-task: PT8H, shift: PT8H}
                exposures:
                  - {agent: manganese-respirable, periods: [{level: 0.1 mg/m3, duration: %1$s h}, {level: 0.1 mg/m3, duration: %1$s h}]}
                """.formatted(half));
        CommandRun refused = CommandRun.of("advise", task.toString());
        String said = (refused.out() + refused.err()).replaceAll("\\s+", " ");
        assertTrue(said.contains("last " + minutes + " minutes in all, more than the " + more), said);
    }

    @Test
    void anAgentHasBothItsNames() {
        for (String agent : List.of("chromium-vi", "crvi")) {
            assertEquals(
                    0,
                    run("register", "wearer", "id=W-9", "name=Iva", "agent=" + agent)
                            .exit());
            String due = line(run("due", "--fact", "agent=" + agent));
            assertFalse(due.contains("agent is not recorded for 1 wearer (such as W-9)"), due);
        }
        CommandRun other = run("register", "wearer", "id=W-9", "name=Iva", "agent=chromium");
        assertEquals(2, other.exit());
        assertFalse(other.err().contains("id you mean"), other.err());
        assertTrue(other.err().contains("crvi"), other.err());
    }

    /** Health goes through clearance by the doctor; common practice, no source. */
    @ParameterizedTest
    @ValueSource(strings = {"age", "health", "pregnant", "date-of-birth", "nationality", "asthma"})
    void whatIsThePersonsOwnIsNotKept(String field) {
        CommandRun refused = run("register", "wearer", "id=W-9", "name=Iva", field + "=17");
        assertEquals(2, refused.exit());
        assertTrue(refused.err().contains(field + " is not kept here"), refused.err());
        assertFalse(refused.err().contains("id you mean"), refused.err());
    }
}
