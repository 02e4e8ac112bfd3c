package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing confirmed is lost when the process dies, and two processes do not tread on each other. */
class StoreCrashTest {
    @TempDir(factory = MemoryFolder.class)
    Path folder;

    /** Writes entries until it is stopped, and says the number of each once it is confirmed. */
    static final class Writer {
        private Writer() {}

        public static void main(String[] arguments) {
            PrintStream out = System.out;
            try (Store store = Store.open(Path.of(arguments[0]))) {
                int count = Integer.parseInt(arguments[2]);
                for (int i = 0; i < count; i++) {
                    LogEntry entry = store.append(
                            new Draft(
                                    "U-014",
                                    Samples.day("2026-03-02"),
                                    arguments[1],
                                    new Details.Repair("turn " + i, "")),
                            Instant.now());
                    out.println(entry.sequence());
                    out.flush();
                }
            }
        }
    }

    private Process writer(Path file, String name, int count) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Xmx256m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        file.toString(),
                        name,
                        String.valueOf(count))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private Path prepared() {
        Path file = folder.resolve("log.db");
        try (Store store = Store.open(file)) {
            store.append(Samples.registering(Samples.powered("U-014")), Samples.NOW);
        }
        return file;
    }

    @Test
    @Tag("ci")
    void killedInTheMiddleOfThousandsOfWritesNothingConfirmedIsLost() throws Exception {
        Path file = prepared();
        long confirmed = 1;
        for (int round = 1; round <= 3; round++) {
            Process process = writer(file, "round " + round, 1_000_000);
            try (BufferedReader lines = process.inputReader()) {
                for (int i = 0; i < 500 * round; i++) {
                    confirmed = Long.parseLong(lines.readLine());
                }
                // The child goes on writing while the signal is on its way.
                process.toHandle().destroyForcibly();
                for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                    confirmed = line.matches("[0-9]+") ? Math.max(confirmed, Long.parseLong(line)) : confirmed;
                }
            }
            assertEquals(137, process.waitFor());
            Verification verification = StoreCheck.verify(file);
            assertTrue(verification.intact(), verification.damages().toString());
            assertTrue(
                    verification.head().entries() >= confirmed,
                    confirmed + " confirmed, " + verification.head().entries() + " there");
        }
        assertTrue(confirmed > 3000, confirmed + " writes were confirmed");
    }

    @Test
    void twoWritersAtOnceMakeOneUnbrokenChain() throws Exception {
        Path file = prepared();
        List<Process> processes = new ArrayList<>();
        for (String name : List.of("first", "second")) {
            processes.add(writer(file, name, 150));
        }
        for (Process process : processes) {
            try (BufferedReader lines = process.inputReader()) {
                assertEquals(150, lines.lines().count());
            }
            assertTrue(process.waitFor(60, TimeUnit.SECONDS));
            assertEquals(0, process.exitValue());
        }
        Verification verification = StoreCheck.verify(file);
        assertTrue(verification.intact(), verification.damages().toString());
        assertEquals(301, verification.head().entries());
    }
}
