package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.cli.CommandRun;
import org.fumewarden.codes.InputException;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Force;
import org.fumewarden.model.Subject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Days that cannot be, clocks that go wrong, and copies that are as good as the store. */
class DaysAndCopiesTest {
    private static final Instant MORNING = Instant.parse("2026-03-02T09:00:00Z");

    @TempDir(factory = MemoryFolder.class)
    Path folder;

    private Path file;

    @BeforeEach
    void fill() {
        file = folder.resolve("log.db");
        try (Store store = Store.open(file)) {
            store.append(Draft.registering(Samples.powered("U-014"), LocalDate.of(2026, 1, 5), "stores"), MORNING);
        }
    }

    @Test
    void aDayThatHasBegunNowhereIsRefusedAndTheNextDayInTheEastIsNot() {
        try (Store store = Store.open(file)) {
            // 09:00 UTC is 23:00 at UTC+14: there it still is 2 March. At 10:00 UTC the 3rd begins there.
            assertThrows(StoreException.class, () -> store.append(Samples.repaired("U-014", "2026-03-03"), MORNING));
            store.append(Samples.repaired("U-014", "2026-03-03"), Instant.parse("2026-03-02T10:00:00Z"));
            StoreException far = assertThrows(
                    StoreException.class, () -> store.append(Samples.repaired("U-014", "2062-03-02"), MORNING));
            assertTrue(far.text().contains("in the future, anywhere on earth")
                    && far.text().contains("heck the year"));
            assertThrows(StoreException.class, () -> store.append(Samples.repaired("U-014", "0206-03-02"), MORNING));
        }
    }

    @Test
    void noDeedIsOlderThanTheThingItWasDoneTo() {
        Item.Battery made = new Item.Battery(
                "B-1", "pack", Optional.of(LocalDate.of(2024, 5, 1)), Optional.empty(), Optional.empty(), Map.of());
        try (Store store = Store.open(file)) {
            store.append(Draft.registering(made, LocalDate.of(2026, 1, 5), "stores"), MORNING);
            StoreException early = assertThrows(
                    StoreException.class, () -> store.append(Samples.repaired("B-1", "2024-04-30"), MORNING));
            assertTrue(early.getMessage().contains("was made on 2024-05-01"), early.getMessage());
            store.append(Samples.repaired("B-1", "2024-05-01"), MORNING);
        }
    }

    @Test
    void aDeedDatedAheadInAnOldStoreSilencesNothing() {
        Duty monthly = Samples.duty("exam", "P1M", Subject.UNIT, "examination", Force.LAW);
        LocalDate today = LocalDate.of(2026, 12, 18);
        try (Store store = Store.open(file)) {
            store.append(Samples.examined("U-014", "2026-02-01", Result.PASSED), MORNING);
            // Written by an earlier program, which let it in.
            long next = store.head().entries() + 1;
            store.append(() -> List.of(new LogEntry(
                    next,
                    "U-014",
                    LocalDate.of(2062, 3, 2),
                    MORNING,
                    "Sanna Teller",
                    Samples.examination(Result.PASSED))));
            DueReport report =
                    new DueList(store, List.of(monthly), today, Period.ofDays(7)).compute(Map.of(), Optional.empty());
            assertEquals(DueStatus.OVERDUE, report.owings().get(0).status());
            assertEquals(
                    Optional.of(LocalDate.of(2026, 2, 1)),
                    report.owings().get(0).last());
            assertTrue(
                    report.doubts().get(0).contains("dated 2062-03-02"),
                    report.doubts().toString());
            assertFalse(report.settled());
        }
        assertTrue(StoreCheck.verify(file).doubts().get(0).contains("is dated 2062-03-02"));
    }

    @Test
    void aDeedDatedAheadOpensNothing() {
        try (Store store = Store.open(file)) {
            store.append(Samples.checked("U-014", "2026-02-01", Result.FAILED), MORNING);
            store.append(Samples.repaired("U-014", "2026-02-02"), MORNING);
            long next = store.head().entries() + 1;
            store.append(() -> List.of(new LogEntry(
                    next,
                    "U-014",
                    LocalDate.of(2062, 3, 2),
                    MORNING,
                    "Sanna Teller",
                    Samples.examination(Result.PASSED))));
            assertFalse(store.state("U-014").inService());
        }
    }

    @Test
    void aClockThatWentBackwardsIsTold() {
        try (Store store = Store.open(file)) {
            store.append(Samples.repaired("U-014", "2026-01-10"), MORNING.minusSeconds(3600));
            DueReport report = new DueList(store, List.of(), LocalDate.of(2026, 3, 2), Period.ofDays(7))
                    .compute(Map.of(), Optional.empty());
            assertTrue(
                    report.doubts().get(0).contains("entry 2 was written down"),
                    report.doubts().toString());
        }
        Verification found = StoreCheck.verify(file);
        assertTrue(found.intact() && found.doubts().size() == 1, found.toString());
    }

    @Test
    void aBackupTakenWhileOthersWriteIsAsGoodAsTheStore() throws Exception {
        Path copy = folder.resolve("copy.db");
        try (Store writing = Store.open(file)) {
            writing.append(Samples.examined("U-014", "2026-02-01", Result.PASSED), MORNING);
            Head head = Backup.write(file, copy);
            assertEquals(writing.head(), head);
            writing.append(Samples.repaired("U-014", "2026-02-02"), MORNING);
        }
        Path back = folder.resolve("back.db");
        assertEquals(2, Backup.restore(copy, back).entries());
        assertTrue(StoreCheck.verify(back).intact());
        String[] due = {"due", "--code", "gb", "--on", "2026-12-18", "--store"};
        String first = CommandRun.of(with(due, copy)).out();
        assertTrue(first.contains("U-014") && first.contains("examination"), first);
        assertEquals(first, CommandRun.of(with(due, back)).out());
        assertThrows(InputException.class, () -> Backup.restore(copy, back), "no register is overwritten");
        assertThrows(InputException.class, () -> Backup.write(file, copy), "nor is a backup");
        byte[] bad = Files.readAllBytes(copy);
        bad[bad.length - 2000] ^= 1;
        Files.write(copy, bad);
        boolean broken = !StoreCheck.verify(copy).intact();
        if (broken) {
            Path nowhere = folder.resolve("nowhere.db");
            assertThrows(StoreException.class, () -> Backup.restore(copy, nowhere));
            assertFalse(Files.exists(nowhere));
        }
    }

    private static String[] with(String[] command, Path store) {
        String[] all = java.util.Arrays.copyOf(command, command.length + 1);
        all[command.length] = store.toString();
        return all;
    }

    @Test
    void theExportOfAnotherSiteComesInWholeOrNotAtAll() throws Exception {
        Path other = folder.resolve("other.db");
        StringWriter export = new StringWriter();
        try (Store store = Store.open(other)) {
            store.append(Draft.registering(Samples.powered("V-1"), LocalDate.of(2026, 1, 5), "stores"), MORNING);
            LogEntry wrong = store.append(Samples.repaired("V-1", "2026-02-01"), MORNING);
            store.append(
                    new Draft(
                            "V-1",
                            LocalDate.of(2026, 2, 1),
                            "Odran Pell",
                            new Details.Correction(wrong.sequence(), "another hose", Optional.empty())),
                    MORNING);
            JsonLines.export(store, export);
        }
        try (Store store = Store.open(file)) {
            Head head = JsonLines.merge(store, new BufferedReader(new StringReader(export.toString())));
            assertEquals(4, head.entries());
            assertEquals(Optional.of(3L), store.entry(4).orElseThrow().details().corrects());
            StoreException twice = assertThrows(
                    StoreException.class,
                    () -> JsonLines.merge(store, new BufferedReader(new StringReader(export.toString()))));
            assertTrue(twice.getMessage().contains("in both stores: V-1"), twice.getMessage());
            assertEquals(4, store.head().entries());
        }
        assertTrue(StoreCheck.verify(file).intact());
    }

    @ParameterizedTest
    @ValueSource(strings = {"U-1\u202e", "U\n1", "U\u00001", "U-\u200b1"})
    void anIdHoldsNothingUnseen(String id) {
        assertThrows(StoreException.class, () -> Samples.repaired(id, "2026-02-01"));
    }

    @Test
    void twoSpellingsOfOneLetterAreOneId() {
        String composed = "\u00c9-1";
        String apart = "E\u0301-1";
        try (Store store = Store.open(file)) {
            store.append(Draft.registering(Samples.powered(composed), LocalDate.of(2026, 1, 5), "stores"), MORNING);
            store.append(Samples.repaired(apart, "2026-02-01"), MORNING);
            assertEquals(2, store.entriesOf(apart).size());
            assertEquals(composed, store.item(apart).orElseThrow().id());
        }
        assertThrows(StoreException.class, () -> Samples.repaired("U".repeat(101), "2026-02-01"));
    }

    @Test
    void twoStoresFitIntoOneCalendar() {
        String[] calendar = {"calendar", "--code", "gb", "--on", "2026-12-18", "--store"};
        Path other = folder.resolve("other.db");
        try (Store store = Store.open(other)) {
            store.append(Draft.registering(Samples.powered("U-014"), LocalDate.of(2026, 1, 5), "slipway"), MORNING);
        }
        List<String> one = ids(CommandRun.of(with(calendar, file)).out());
        List<String> two = ids(CommandRun.of(with(calendar, other)).out());
        assertTrue(!one.isEmpty() && one.size() == two.size());
        assertTrue(one.stream().noneMatch(two::contains));
        assertEquals(one, ids(CommandRun.of(with(calendar, file)).out()));
    }

    private static List<String> ids(String calendar) {
        return calendar.lines().filter(l -> l.startsWith("UID:")).toList();
    }
}
