package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.cli.CommandRun;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Force;
import org.fumewarden.model.Subject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever answers from a store says which entry was changed, and shows nothing fit that hangs on it. */
class ChangedEntryTest {
    private static final String TASK = "scenarios/tours/stainless-brackets.yaml";
    private static final LocalDate DAY = LocalDate.parse("2026-03-02");

    @TempDir(factory = MemoryFolder.class)
    Path folder;

    private Path file;

    @BeforeEach
    void fill() {
        file = folder.resolve("yard.db");
        try (Store store = Store.open(file)) {
            store.appendAll(
                    List.of(
                            Samples.registering(new Item.Site("S-1", "Tarn Haven yard", "Quay 1", "", "gb", Map.of())),
                            Samples.registering(Samples.powered("U-1")),
                            Samples.registering(Samples.powered("U-2")),
                            Samples.registering(Samples.mask("M-1", "half")),
                            Samples.registering(Samples.wearer("W-1", "Odran Pell", List.of("M-1"))),
                            Samples.examined("U-1", "2026-02-20", Result.PASSED),
                            Samples.examined("U-2", "2026-02-20", Result.PASSED),
                            new Draft("U-1", DAY.minusDays(5), "Sanna Teller", check(Result.PASSED)),
                            new Draft(
                                    "W-1",
                                    DAY.minusDays(40),
                                    "Sanna Teller",
                                    Forms.details(
                                            "fit-test",
                                            Map.of("result", "passed", "model", "half", "method", "counter")))),
                    Samples.NOW);
        }
    }

    private static Details check(Result result) {
        return new Details.BeforeUseCheck(result, List.of(), Optional.empty(), Optional.empty(), "");
    }

    private void change(String sql) throws Exception {
        try (Connection raw = Sqlite.open(file, false)) {
            Sqlite.run(raw, "DROP TRIGGER entry_not_edited");
            Sqlite.run(raw, "DROP TRIGGER entry_not_deleted");
            Sqlite.run(raw, sql);
        }
    }

    private CommandRun run(String... words) {
        String[] all = new String[words.length + 2];
        System.arraycopy(words, 0, all, 0, words.length);
        all[words.length] = "--store";
        all[words.length + 1] = file.toString();
        return CommandRun.of(all);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "6 | UPDATE entry SET body = replace(body, '2026-02-20', '2026-02-28') WHERE sequence = 6",
                "6 | UPDATE entry SET on_day = on_day + 300 WHERE sequence = 6",
                "6 | UPDATE entry SET body = replace(body, 'passed', 'passed ') WHERE sequence = 6",
                "6 | UPDATE entry SET body = 'gone' WHERE sequence = 6",
                "6 | UPDATE entry SET item = 'U-9' WHERE sequence = 6",
                "6 | UPDATE entry SET hash = zeroblob(32) WHERE sequence = 6",
                "2 | UPDATE entry SET body = replace(body, '160', '100') WHERE sequence = 2",
                "8 | UPDATE entry SET serves = 'cleaning' WHERE sequence = 8",
                "1 | UPDATE entry SET body = replace(body, 'Quay 1', 'Quay 2') WHERE sequence = 1",
                "3 | DELETE FROM entry WHERE sequence = 3",
            })
    void theEntryIsNamedAndWhatHangsOnItIsNotShownFit(int entry, String sql) throws Exception {
        change(sql);
        CommandRun due = run("due", "--on", DAY.toString());
        assertEquals(3, due.exit(), due.out() + due.err());
        assertTrue(due.err().contains("entry " + entry + " "), due.err());
        assertFalse((due.out() + due.err()).contains("SQLITE"), due.err());
        try (Store store = Store.read(file)) {
            assertFalse(store.state("U-1").inService());
        }
    }

    @Test
    void everyReaderTellsIt() throws Exception {
        change("UPDATE entry SET on_day = on_day + 300 WHERE sequence = 6");
        for (List<String> words : List.of(
                List.of("calendar", "--on", DAY.toString()),
                List.of("record", "U-1"),
                List.of("record", "U-1", "--sheet", "card"),
                List.of("log", "--list", "U-1"),
                List.of("register", "--list"),
                List.of("store", "retention"))) {
            CommandRun run = run(words.toArray(String[]::new));
            assertEquals(3, run.exit(), words + run.out() + run.err());
            assertTrue(run.err().contains("entry 6 is indexed under other values"), words + run.err());
        }
    }

    @Test
    void anItemOfWhichNothingWasChangedIsAnsweredForAndTheStoreIsNotSettled() throws Exception {
        change("UPDATE entry SET body = replace(body, '2026-02-20', '2026-02-28') WHERE sequence = 6");
        try (Store store = Store.read(file)) {
            assertTrue(store.state("U-2").inService());
            assertEquals(UnitState.Standing.UNPROVEN, store.state("U-1").standing());
            assertEquals(Optional.of(6L), store.state("U-1").entry());
        }
        CommandRun due = run("due", "--on", DAY.toString());
        String said = due.out().replaceAll("\\s+", " ");
        assertTrue(said.contains("U-1 (blower unit on the belt). The log is damaged: entry 6 was changed"), said);
        assertTrue(said.matches(".*U-2 \\| what: [^|]*; status: in time.*"), said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"advise", "endurance"})
    void adviceDoesNotShowTheUnitFit(String command) throws Exception {
        change("UPDATE entry SET on_day = on_day + 300 WHERE sequence = 6");
        CommandRun run = run(command, TASK, "--on", DAY.toString(), "--set", "kit.unit=U-1");
        String said = run.out().replaceAll("\\s+", " ");
        assertEquals(3, run.exit(), run.err());
        assertTrue(run.err().contains("entry 6 is indexed under other values than it holds"), run.err());
        assertTrue(said.toLowerCase(java.util.Locale.ROOT).contains("unit u-1: do not use it"), said);
    }

    @Test
    void aChangedFitTestDoesNotCount() throws Exception {
        change("UPDATE entry SET on_day = on_day + 30 WHERE sequence = 9");
        try (Store store = Store.read(file)) {
            assertFalse(Proof.of(store, "W-1", "fit-test/half", List.of(), Map.of(), DAY)
                    .stands());
            Duty yearly = Samples.duty("fit", "P1Y", Subject.WEARER_MASK, "fit-test", Force.ACOP);
            DueReport due = new DueList(store, List.of(yearly), DAY, Period.ZERO).compute(Map.of(), Optional.empty());
            assertEquals(DueStatus.BEFORE_FIRST_USE, due.owings().get(0).status());
            assertTrue(due.owings().get(0).note().contains("entry 9"), due.toString());
            assertFalse(due.settled());
        }
    }

    @Test
    void whatIsChangedInAMaskTakesItsFitTestAway() throws Exception {
        change("UPDATE entry SET body = replace(body, 'disposable', 'disposablf') WHERE sequence = 4");
        CommandRun run = run(
                "advise",
                TASK,
                "--on",
                DAY.toString(),
                "--set",
                "wearer.id=W-1",
                "--set",
                "kit.class-in-hand=half-mask-p3");
        assertEquals(3, run.exit(), run.out());
        assertTrue(
                run.out()
                        .replaceAll("\\s+", " ")
                        .contains("M-1 is not shown fit. The log is damaged: entry 4 was changed"),
                run.out());
    }

    @Test
    void aSoundStoreIsAnsweredFromWithoutAWord() {
        CommandRun run = run("record", "U-1", "--sheet", "card", "--on", DAY.toString());
        assertEquals("", run.err());
        try (Store store = Store.read(file)) {
            assertTrue(store.soundness().intact());
            assertTrue(store.state("U-1").inService());
        }
    }

    @Test
    void anEntryCanBeWrittenIntoADamagedStoreAndTheDamageIsTold() throws Exception {
        change("UPDATE entry SET on_day = on_day + 300 WHERE sequence = 6");
        CommandRun run = run("log", "withdrawal", "item=U-2", "on=2026-03-01", "by=Sanna Teller", "reason=dropped");
        assertEquals(3, run.exit(), run.err());
        assertTrue(run.out().contains("Entry 10: withdrawal of U-2"), run.out());
        assertTrue(run.err().contains("entry 6 "), run.err());
    }
}
