package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.fumewarden.Extent;
import org.fumewarden.cli.CommandRun;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever happened to the file: words, never a fault; what proves itself is saved; no claim that cannot be known. */
class DamagedStoresTest {
    private static final int ENTRIES = 120;
    private static final int TURNS = Extent.of(8, 40, 500);

    /** What can happen to a file. */
    enum Damage {
        CUT,
        CUT_AT_PAGE,
        FLIPPED,
        ZEROED_PAGE,
        GARBAGE_PAGE,
        VERSION,
        EMPTY,
        GARBAGE
    }

    @TempDir(factory = MemoryFolder.class)
    Path folder;

    private Path file;
    private byte[] whole;
    private final TreeMap<Long, String> written = new TreeMap<>();

    @BeforeEach
    void fill() throws IOException {
        file = folder.resolve("log.db");
        try (Store store = Store.open(file)) {
            List<Draft> drafts = new ArrayList<>(List.of(Samples.registering(Samples.powered("U-014"))));
            for (int i = 2; i <= ENTRIES; i++) {
                drafts.add(new Draft(
                        "U-014", Samples.day("2026-02-01"), "Sanna Teller", new Details.Repair("work " + i, "part")));
            }
            store.appendAll(drafts, Samples.NOW).forEach(e -> written.put(e.sequence(), Canon.write(e)));
        }
        whole = Files.readAllBytes(file);
    }

    private byte[] damaged(Damage damage, Random random) {
        byte[] bytes = whole.clone();
        int pages = bytes.length / Sqlite.PAGE_BYTES;
        int page = random.nextInt(pages) * Sqlite.PAGE_BYTES;
        switch (damage) {
            case CUT -> {
                return Arrays.copyOf(bytes, random.nextInt(bytes.length));
            }
            case CUT_AT_PAGE -> {
                return Arrays.copyOf(bytes, page);
            }
            case FLIPPED -> bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            case ZEROED_PAGE -> Arrays.fill(bytes, page, page + Sqlite.PAGE_BYTES, (byte) 0);
            case GARBAGE_PAGE -> {
                byte[] garbage = new byte[Sqlite.PAGE_BYTES];
                random.nextBytes(garbage);
                System.arraycopy(garbage, 0, bytes, page, garbage.length);
            }
            case VERSION -> bytes[60 + random.nextInt(4)] ^= (byte) (1 << random.nextInt(8));
            case EMPTY -> {
                return new byte[0];
            }
            case GARBAGE -> random.nextBytes(bytes);
        }
        return bytes;
    }

    @ParameterizedTest
    @EnumSource(Damage.class)
    void everyDamageIsToldInWordsAndTheRestIsSaved(Damage damage) throws IOException {
        Random random = new Random(Extent.SEED);
        for (int turn = 0; turn < TURNS; turn++) {
            byte[] bytes = damaged(damage, random);
            Files.write(file, bytes);
            CommandRun verify = CommandRun.of("store", "verify", "--store", file.toString());
            assertTrue(verify.exit() == 0 || verify.exit() == 3, damage + " " + turn + ": " + verify);
            assertFalse((verify.out() + verify.err()).contains("Exception"), verify.toString());
            Path rescued = folder.resolve("rescued-" + turn + ".jsonl");
            CommandRun salvage = CommandRun.of("store", "salvage", rescued.toString(), "--store", file.toString());
            assertEquals(verify.exit(), salvage.exit(), damage + " " + turn + ": " + salvage);
            TreeMap<Long, String> saved = saved(rescued);
            assertEquals(saved.isEmpty(), !Files.exists(rescued), "no empty file is left");
            saved.forEach((number, body) -> assertEquals(written.get(number), body));
            String raw = new String(bytes, StandardCharsets.ISO_8859_1);
            int turned = turn;
            written.forEach((number, body) -> {
                // The words and both hashes must be there: 32 bytes on either side.
                int at = raw.indexOf(new String(body.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1));
                boolean there = at >= Canon.HASH_BYTES && at + body.length() + Canon.HASH_BYTES <= bytes.length;
                if (there && damage != Damage.FLIPPED) {
                    assertTrue(saved.containsKey(number), damage + " " + turned + " lost entry " + number);
                }
            });
            if (verify.exit() == 3 && !saved.isEmpty()) {
                assertTrue(salvage.out().contains("it cannot tell"), salvage.out());
            }
        }
    }

    private static TreeMap<Long, String> saved(Path rescued) throws IOException {
        TreeMap<Long, String> saved = new TreeMap<>();
        if (Files.exists(rescued)) {
            Files.readAllLines(rescued).stream().skip(1).forEach(line -> {
                String body = Numbered.object(line, 1).path("entry").toString();
                saved.put(Canon.entry(body).sequence(), body);
            });
        }
        return saved;
    }

    @Test
    void aReaderReadsAroundACommitThatWasNeverFinished() throws Exception {
        // A journal with the pages as they were, and a file with half of the new ones: what a kill inside a commit
        // leaves.
        Path crashed = folder.resolve("crashed.db");
        Path journal = folder.resolve("crashed.db-journal");
        Files.write(crashed, whole);
        boolean caught = false;
        for (int round = 0; round < 20 && !caught; round++) {
            Process writer = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path"),
                            HalfWriter.class.getName(),
                            crashed.toString())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            writer.waitFor();
            caught = Files.exists(journal) && Files.size(journal) > 0;
        }
        assertTrue(caught, "the writer left a journal");
        for (List<String> command : List.of(
                List.of("log", "--list", "U-014"), List.of("due", "--code", "gb"), List.of("store", "verify"))) {
            List<String> arguments = new ArrayList<>(command);
            arguments.addAll(List.of("--store", crashed.toString()));
            CommandRun run = CommandRun.of(arguments.toArray(String[]::new));
            assertTrue(run.exit() == 0 || run.exit() == 3, command + run.err());
            assertFalse(run.err().contains("permission"), run.err());
        }
        Verification found = StoreCheck.verify(crashed);
        assertTrue(found.intact(), found.damages().toString());
        assertEquals(ENTRIES, found.head().entries());
    }

    /** Begins a commit, forces part of it to the disk and dies there. */
    static final class HalfWriter {
        private HalfWriter() {}

        public static void main(String[] arguments) throws Exception {
            var connection = Sqlite.open(Path.of(arguments[0]), false);
            Sqlite.run(connection, "PRAGMA cache_size = 1");
            Sqlite.run(connection, "BEGIN IMMEDIATE");
            Sqlite.run(connection, "DROP TRIGGER entry_not_edited");
            // More pages than the cache holds: they spill into the file, and the journal holds what they were.
            Sqlite.run(connection, "UPDATE entry SET body = replace(body, 'work', 'WORK')");
            Runtime.getRuntime().halt(137);
        }
    }
}
