package org.fumewarden.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.nio.file.Path;
import java.util.List;
import org.fumewarden.cli.CommandRun;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.report.AdviceSchema;
import org.fumewarden.task.TaskTree;
import org.fumewarden.upkeep.Store;
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

    private InUse.Found found(String code, String wearer) {
        return found(code, wearer, "");
    }

    private InUse.Found found(String code, String wearer, String mask) {
        String kit = mask.isEmpty() ? "" : "\nkit: {mask: " + mask + "}";
        Located task =
                TaskTree.parse("task", "wearer: {id: W-07" + (wearer.isEmpty() ? "" : ", " + wearer) + "}" + kit);
        DutyBook book = DutyBook.of(CodeBook.read(RuleFolder.shipped(), code), DAY);
        try (Store open = Store.read(store)) {
            return WearerInUse.of(task, open, book.duties(), DAY);
        }
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
        assertTrue(found("us", "fit-tested: true")
                .notes()
                .get(0)
                .says()
                .contains("The task says yes, the register shows no valid record: counts as no."));
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
        InUse.Found found = found("us", "fit-tested: false, medically-cleared: powered-only, trained: false");
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
        InUse.Found found = found("us", file.isEmpty() ? "" : "medically-cleared: " + file);
        assertEquals(expected, found.changes().getOrDefault("wearer.medically-cleared", ""));
    }

    /** 29 CFR 1910.134(e)(1) orders a clearance before the fit test; the gb tables order none for every wearer. */
    @Test
    void aMissingClearanceCountsWhereTheCodeOrdersOne() {
        assertEquals("false", found("us", "").changes().get("wearer.medically-cleared"));
        assertFalse(found("gb", "").changes().containsKey("wearer.medically-cleared"));
    }

    /** COSHH regulation 12 and 29 CFR 1910.134(k)(3) order training before use; a code without such a duty leaves it to the file. */
    @Test
    void lackingTrainingIsAnAnswer() {
        assertEquals("false", found("gb", "trained: true").changes().get("wearer.trained"));
        run("log", "training", "item=W-07", "on=2026-02-01", "by=Odran Pell", "result=passed", "content=donning");
        assertEquals("true", found("gb", "").changes().get("wearer.trained"));
        assertFalse(found("gb", "trained: false").changes().containsKey("wearer.trained"));
    }

    @Test
    void theMaskThatIsWornDecidesWhenTheTaskNamesIt() {
        run("register", "mask", "id=M-2", "model=full mask, size L", "face-seal=tight");
        run("register", "wearer", "id=W-07", "name=Sanna Teller", "masks=M-1,M-2");
        fitTest("2026-01-10", "passed");
        assertEquals("false", found("us", "").changes().get("wearer.fit-tested"));
        assertTrue(found("us", "").notes().get(0).says().contains("kit.mask does not say which is worn"));
        assertEquals("true", found("us", "", "M-1").changes().get("wearer.fit-tested"));
        assertEquals("false", found("us", "", "M-2").changes().get("wearer.fit-tested"));
        assertEquals("false", found("us", "", "unknown").changes().get("wearer.fit-tested"));
        assertFalse(found("us", "fit-tested: false", "M-1").changes().containsKey("wearer.fit-tested"));
    }

    @Test
    void aLooseHoodSaysNothingOfTightMasksAndAClosedMaskIsNotWorn() {
        fitTest("2026-01-10", "passed");
        run("register", "mask", "id=H-1", "model=hood", "face-seal=loose");
        assertEquals("true", found("us", "", "H-1").changes().get("wearer.fit-tested"));
        assertEquals("kit.mask", found("us", "", "H-1").notes().get(0).about());
        run("log", "examination", "item=M-1", "on=2026-02-01", "by=Odran Pell", "result=failed", "condition=torn");
        InUse.Found closed = found("us", "", "M-1");
        assertEquals("false", closed.changes().get("wearer.fit-tested"));
        assertTrue(closed.notes().get(0).says().contains("M-1 is out of use since 2026-02-01"));
    }

    private CommandRun advised(String... more) {
        List<String> words = new java.util.ArrayList<>(List.of(
                "advise",
                "scenarios/tours/stainless-brackets.yaml",
                "--store",
                store.toString(),
                "--on",
                "2026-03-02",
                "--set",
                "wearer.id=W-07"));
        words.addAll(List.of(more));
        return CommandRun.of(words.toArray(String[]::new));
    }

    @Test
    void theSheetSaysWhatTheRegisterSaidAndWhyNothingIsCleared() {
        CommandRun asked = advised();
        String said = asked.out().replaceAll("\\s+", " ");
        assertTrue(said.contains("The wearer is not trained in the use of a respirator"), said);
        assertTrue(said.contains("Wearer W-07: training is not in the log."), said);
        assertEquals("", asked.err());
        assertTrue(advised("--format", "html").out().contains("training is not in the log"));
        assertTrue(advised("--detail").out().contains("SHARED-EXCLUSION-590"));
    }

    @Test
    void theReasonsAreInTheJsonAndValidByItsSchema() throws Exception {
        JsonNode advice =
                new ObjectMapper().readTree(advised("--format", "json").out());
        assertTrue(advice.path("register").toString().contains("training is not in the log"), advice.toString());
        assertEquals(
                java.util.Set.of(),
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(AdviceSchema.text())
                        .validate(advice));
        CommandRun plain = CommandRun.of("advise", "scenarios/tours/stainless-brackets.yaml", "--format", "json");
        assertFalse(new ObjectMapper().readTree(plain.out()).has("register"));
    }

    /** The sentences are part of the kept task, so the replay needs no register. */
    @Test
    void keptAdviceReplaysWithoutTheRegister() throws Exception {
        Path kept = folder.resolve("kept");
        advised("--keep", kept.toString());
        java.nio.file.Files.delete(store);
        try (var files = java.nio.file.Files.list(kept)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".json")).toList()) {
                assertTrue(java.nio.file.Files.readString(file).contains("training is not in the log"));
                CommandRun audit = CommandRun.of("audit", file.toString());
                assertEquals(0, audit.exit(), audit.out() + audit.err());
            }
        }
    }

    @Test
    void aMaskThatNobodyRegisteredIsRefused() {
        CommandRun asked = advised("--set", "kit.mask=M-7");
        assertEquals(2, asked.exit());
        assertTrue(
                asked.err().contains("kit.mask") && asked.err().contains("Read the number on the mask again"),
                asked.err());
    }

    @Test
    void aWearerThatNobodyRegisteredIsRefusedAndNoOtherIsNamed() {
        CommandRun asked = CommandRun.of(
                "advise",
                "scenarios/tours/stainless-brackets.yaml",
                "--set",
                "wearer.id=W-70",
                "--store",
                store.toString());
        assertEquals(2, asked.exit());
        assertTrue(asked.err().contains("wearer.id") && !asked.err().contains("W-07"), asked.err());
    }
}
