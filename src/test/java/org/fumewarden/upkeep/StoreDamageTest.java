package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Damage is found, named by its first entry, and the rest can be saved. */
class StoreDamageTest {
    private static final int ENTRIES = 300;

    @TempDir(factory = MemoryFolder.class)
    Path folder;

    private Path file;
    private Head head;
    private byte[] whole;
    private final List<LogEntry> written = new ArrayList<>();

    @BeforeEach
    void fill() throws IOException {
        file = folder.resolve("log.db");
        try (Store store = Store.open(file)) {
            List<Draft> drafts = new ArrayList<>(List.of(Samples.registering(Samples.powered("U-014"))));
            for (int i = 2; i <= ENTRIES; i++) {
                drafts.add(new Draft(
                        "U-014",
                        Samples.day("2026-01-01").plusDays(i),
                        "Sanna Teller",
                        new Details.Repair("work number " + i, "part " + i)));
            }
            written.addAll(store.appendAll(drafts, Samples.NOW));
            head = store.head();
        }
        whole = Files.readAllBytes(file);
    }

    private int placeOf(String words) {
        byte[] wanted = words.getBytes(StandardCharsets.UTF_8);
        for (int at = 0; at + wanted.length <= whole.length; at++) {
            if (Arrays.equals(whole, at, at + wanted.length, wanted, 0, wanted.length)) {
                return at;
            }
        }
        throw new AssertionError(words + " is not in the file");
    }

    private TreeMap<Long, LogEntry> salvaged() throws IOException {
        StringWriter out = new StringWriter();
        Salvage.export(file, out);
        Path rescue = folder.resolve("rescue-" + System.nanoTime() + ".db");
        TreeMap<Long, LogEntry> found = new TreeMap<>();
        out.toString().lines().skip(1).forEach(line -> {
            LogEntry entry = Canon.entry(Numbered.object(line, 1).path("entry").toString());
            found.put(entry.sequence(), entry);
        });
        try (Store store = Store.open(rescue)) {
            JsonLines.importSalvaged(store, new BufferedReader(new StringReader(out.toString())));
            assertEquals(found.size(), store.head().entries());
        }
        assertTrue(StoreCheck.verify(rescue).intact());
        return found;
    }

    @Test
    void aFlippedBitInTheWordsOfAnEntryIsNamed() throws IOException {
        byte[] flipped = whole.clone();
        flipped[placeOf("work number 57\"") + 3] ^= 0x04;
        Files.write(file, flipped);
        Verification found = StoreCheck.verify(file);
        assertEquals(57, found.first().orElseThrow().entry());
        assertTrue(found.first().orElseThrow().what().contains("its hash does not fit its words"));
        assertEquals(56, found.head().entries());
        TreeMap<Long, LogEntry> saved = salvaged();
        assertEquals(ENTRIES - 1, saved.size());
        assertFalse(saved.containsKey(57L));
        assertEquals(written.get(57), saved.get(58L));
    }

    @Test
    void anyFlippedBitIsEitherFoundOrHarmless() throws IOException {
        Random random = new Random(20260302);
        int found = 0;
        for (int turn = 0; turn < 150; turn++) {
            byte[] flipped = whole.clone();
            flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
            Files.write(file, flipped);
            if (StoreCheckOutcome.broken(file)) {
                found++;
            } else {
                try (Store store = Store.read(file)) {
                    assertEquals(written, store.entriesOf("U-014"));
                    assertEquals(head, store.head());
                }
            }
        }
        assertTrue(found > 30, "only " + found + " of 150 were found");
    }

    /** A file that cannot even be opened counts as broken. */
    private static final class StoreCheckOutcome {
        static boolean broken(Path file) {
            try {
                return !StoreCheck.verify(file).intact();
            } catch (StoreException e) {
                return true;
            }
        }
    }

    @Test
    void aTruncatedStoreIsNamedAndTheRestIsSaved() throws IOException {
        for (double share : new double[] {0.9, 0.5, 0.25}) {
            int cut = (int) (whole.length * share);
            Files.write(file, Arrays.copyOf(whole, cut));
            Verification verification = StoreCheck.verify(file);
            assertFalse(verification.intact());
            assertTrue(verification.first().isPresent());
            List<LogEntry> intact = written.stream()
                    .filter(e -> endOf(Canon.write(e)) + Canon.HASH_BYTES <= cut)
                    .toList();
            assertTrue(intact.size() > 10, "the cut leaves something to save");
            assertEquals(intact, List.copyOf(salvaged().values()));
        }
    }

    private int endOf(String words) {
        return placeOf(words) + words.getBytes(StandardCharsets.UTF_8).length;
    }

    @Test
    void entriesAreFoundInTheRawBytesWhenTheFirstPageIsGone() throws IOException {
        byte[] broken = whole.clone();
        Arrays.fill(broken, 0, Sqlite.PAGE_BYTES, (byte) 0x5a);
        Files.write(file, broken);
        assertFalse(StoreCheck.verify(file).intact());
        assertEquals(ENTRIES, salvaged().size());
    }

    @Test
    void aForgedEntryThatWasHashedAnewBreaksTheChainAtTheNext() throws Exception {
        LogEntry old = written.get(99);
        String body = Canon.write(new LogEntry(
                100, old.item(), old.on(), old.recorded(), old.by(), new Details.Repair("nothing was done", "")));
        try (Connection raw = Sqlite.open(file, false)) {
            Sqlite.run(raw, "DROP TRIGGER entry_not_edited");
            try (var previous = raw.createStatement().executeQuery("SELECT previous FROM entry WHERE sequence = 100");
                    var update = raw.prepareStatement("UPDATE entry SET body = ?, hash = ? WHERE sequence = 100")) {
                previous.next();
                update.setString(1, body);
                update.setBytes(2, Canon.hash(previous.getBytes(1), body));
                update.executeUpdate();
            }
        }
        Verification found = StoreCheck.verify(file);
        assertEquals(101, found.first().orElseThrow().entry());
        assertTrue(found.first().orElseThrow().what().contains("does not follow on entry 100"));
    }

    @Test
    void anIndexThatTellsAnotherDayIsFound() throws Exception {
        try (Connection raw = Sqlite.open(file, false)) {
            Sqlite.run(raw, "DROP TRIGGER entry_not_edited");
            Sqlite.run(raw, "UPDATE entry SET on_day = on_day + 30 WHERE sequence = 12");
        }
        assertEquals(12, StoreCheck.verify(file).first().orElseThrow().entry());
    }

    @Test
    void entriesCutOffTheEndAreFoundWithAHeadKeptElsewhere() throws Exception {
        try (Connection raw = Sqlite.open(file, false)) {
            Sqlite.run(raw, "DROP TRIGGER entry_not_deleted");
            Sqlite.run(raw, "DELETE FROM entry WHERE sequence > 290");
        }
        assertTrue(StoreCheck.verify(file).intact(), "the chain alone cannot know");
        assertEquals(
                291,
                StoreCheck.verify(file, Optional.of(head)).first().orElseThrow().entry());
    }

    @Test
    void anEntryTakenOutOfTheMiddleIsNamed() throws Exception {
        try (Connection raw = Sqlite.open(file, false)) {
            Sqlite.run(raw, "DROP TRIGGER entry_not_deleted");
            Sqlite.run(raw, "DELETE FROM entry WHERE sequence = 30");
        }
        assertEquals(30, StoreCheck.verify(file).first().orElseThrow().entry());
    }

    /** Lets the file grow by so many pages, as a full disk would. */
    private static void room(Store store, int pages) throws SQLException {
        Sqlite.run(
                store.connection,
                "PRAGMA max_page_count = " + (Sqlite.number(store.connection, "PRAGMA page_count") + pages));
    }

    @Test
    void aFullDiskWritesNothingOfTheEntryAndLosesNothing() throws Exception {
        try (Store store = Store.open(file)) {
            room(store, 2);
            StoreException full = assertThrows(StoreException.class, () -> {
                for (int i = 0; i < 10_000; i++) {
                    written.add(store.append(Samples.repaired("U-014", "2027-01-01"), Samples.NOW));
                }
            });
            assertEquals(StoreException.Cause.FULL, full.reason());
            assertTrue(full.text().contains("Nothing of this entry was written.\nFree some space"));
            assertTrue(written.size() > ENTRIES, "some entries still fitted");
            assertEquals(written.size(), store.head().entries());
            room(store, 100);
            written.add(store.append(Samples.repaired("U-014", "2027-01-02"), Samples.NOW));
        }
        assertTrue(StoreCheck.verify(file).intact());
        try (Store store = Store.read(file)) {
            assertEquals(written, store.entriesOf("U-014"));
        }
    }

    @Test
    void aReadOnlyStoreCanBeReadButNotWritten() throws IOException {
        try (Store store = Store.read(file)) {
            assertEquals(head, store.head());
            StoreException refused = assertThrows(
                    StoreException.class, () -> store.append(Samples.repaired("U-014", "2027-01-01"), Samples.NOW));
            assertEquals(StoreException.Cause.READ_ONLY, refused.reason());
        }
        assertArrayEquals(whole, Files.readAllBytes(file));
    }

    @Test
    void anExportComesBackByteForByteAndACutOneIsRefused() throws IOException {
        StringWriter out = new StringWriter();
        try (Store store = Store.read(file)) {
            JsonLines.export(store, out);
        }
        Path copy = folder.resolve("copy.db");
        try (Store store = Store.open(copy)) {
            assertEquals(head, JsonLines.importInto(store, new BufferedReader(new StringReader(out.toString()))));
            StringWriter again = new StringWriter();
            JsonLines.export(store, again);
            assertEquals(out.toString(), again.toString());
            assertEquals(written, store.entriesOf("U-014"));
        }
        refused(out.toString().lines().limit(200).reduce("", (a, b) -> a + b + "\n"), "promises 300");
        refused(out.toString().replace("work number 41\"", "work number 42\""), "line 42 (entry 41)");
    }

    private void refused(String text, String words) {
        try (Store store = Store.open(folder.resolve("refused.db"))) {
            StoreException refused = assertThrows(
                    StoreException.class,
                    () -> JsonLines.importInto(store, new BufferedReader(new StringReader(text))));
            assertTrue(refused.getMessage().contains(words), refused.getMessage());
            assertEquals(0, store.head().entries());
        }
    }
}
