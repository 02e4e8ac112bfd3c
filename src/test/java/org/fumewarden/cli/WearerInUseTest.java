package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.fumewarden.codes.Located;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Of the register and the task file the stricter holds for the wearer. */
class WearerInUseTest {
    private static final java.time.LocalDate DAY = java.time.LocalDate.parse("2026-03-02");

    @TempDir
    private Path folder;

    private Path store;
    private CommandRun last;

    @BeforeEach
    void registerAWearer() {
        store = folder.resolve("yard.db");
        run("register", "mask", "id=M-1", "model=half mask, size M", "face-seal=tight");
        run("register", "wearer", "id=W-07", "name=Sanna Teller", "masks=M-1");
    }

    private void run(String... words) {
        String[] all = java.util.Arrays.copyOf(words, words.length + 2);
        all[words.length] = "--store";
        all[words.length + 1] = store.toString();
        last = CommandRun.of(all);
        assertEquals(0, last.exit(), last.err());
    }

    private void fitTest(String day, String result) {
        run(
                "log",
                "fit-test",
                "item=W-07",
                "on=" + day,
                "by=Odran Pell",
                "result=" + result,
                "model=half mask, size M",
                "method=qualitative, bitter aerosol",
                "face=half",
                "--code",
                "us");
    }

    private void medical(String day, String result, String limits) {
        run(
                "log",
                "medical",
                "item=W-07",
                "on=" + day,
                "by=Dr. Iva Moor",
                "result=" + result,
                "topic=clearance",
                "limits=" + limits);
    }

    private WearerInUse.Found found(String code, String wearer) {
        Located task = TaskTree.parse("task", "wearer: {id: W-07" + (wearer.isEmpty() ? "" : ", " + wearer) + "}");
        return WearerInUse.of(task, store, code, DAY);
    }

    @Test
    void aPassThatStandsAnswersTheQuestion() {
        fitTest("2025-03-02", "passed");
        assertEquals("true", found("us", "").changes().get("wearer.fit-tested"));
    }

    /** 29 CFR 1910.134(f)(2): at least annually; the anniversary is the last day. */
    @Test
    void aPassRunsOutOnTheDayAfterItsAnniversary() {
        fitTest("2025-03-01", "passed");
        assertEquals("false", found("us", "fit-tested: true").changes().get("wearer.fit-tested"));
        assertTrue(found("us", "fit-tested: true").notes().get(0).contains("the file says true, the register false"));
    }

    @Test
    void aLaterFailureTakesThePassAway() {
        fitTest("2026-01-10", "passed");
        fitTest("2026-02-10", "failed");
        assertEquals("false", found("us", "").changes().get("wearer.fit-tested"));
    }

    @Test
    void aTestOfALaterDayDoesNotCountYet() {
        fitTest("2026-03-03", "passed");
        assertEquals("false", found("us", "").changes().get("wearer.fit-tested"));
    }

    @Test
    void whatIsNotInTheLogDoesNotCount() {
        assertEquals("false", found("us", "fit-tested: true").changes().get("wearer.fit-tested"));
    }

    @Test
    void theFileMayBeStricterThanTheRegister() {
        fitTest("2026-01-10", "passed");
        medical("2026-01-10", "passed", "");
        WearerInUse.Found found = found("us", "fit-tested: false, medically-cleared: powered-only");
        assertTrue(found.changes().isEmpty(), found.changes().toString());
    }

    @ParameterizedTest(name = "{0}, limits {1}, file {2}: {3}")
    @CsvSource({
        "passed, '', '', true",
        "passed, powered only, true, powered-only",
        "passed, no night work, true, false",
        "passed, no night work, powered-only, ''",
        "failed, '', true, false"
    })
    void aClearanceIsNeverReadMilderThanItIs(String result, String limits, String file, String expected) {
        medical("2026-01-10", result, limits);
        WearerInUse.Found found = found("us", file.isEmpty() ? "" : "medically-cleared: " + file);
        assertEquals(expected, found.changes().getOrDefault("wearer.medically-cleared", ""));
    }

    /** 29 CFR 1910.134(e)(1) orders a clearance before the fit test; the gb tables order none for every wearer. */
    @Test
    void aMissingClearanceCountsWhereTheCodeOrdersOne() {
        assertEquals("false", found("us", "").changes().get("wearer.medically-cleared"));
        assertFalse(found("gb", "").changes().containsKey("wearer.medically-cleared"));
    }

    @Test
    void lackingTrainingIsSaid() {
        assertTrue(found("gb", "").notes().stream().anyMatch(n -> n.contains("train before use")));
        run("log", "training", "item=W-07", "on=2026-02-01", "by=Odran Pell", "result=passed", "content=donning");
        assertFalse(found("gb", "").notes().stream().anyMatch(n -> n.contains("train before use")));
    }

    @Test
    void theAdviceBarsTightMasksOfAnUntestedWearer() {
        String task = "scenarios/tours/stainless-brackets.yaml";
        CommandRun asked = CommandRun.of(
                "advise", task, "--set", "wearer.id=W-07", "--store", store.toString(), "--on", "2026-03-02");
        assertTrue(asked.out().contains("SHARED-EXCLUSION-120"), asked.out());
        assertTrue(asked.err().contains("Register: wearer.fit-tested"), asked.err());
    }

    @Test
    void aWearerThatNobodyRegisteredIsRefusedWithTheNearestNames() {
        CommandRun asked = CommandRun.of(
                "advise",
                "scenarios/tours/stainless-brackets.yaml",
                "--set",
                "wearer.id=W-70",
                "--store",
                store.toString());
        assertEquals(2, asked.exit());
        assertTrue(asked.err().contains("wearer.id") && asked.err().contains("W-07"), asked.err());
    }
}
