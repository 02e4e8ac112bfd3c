package org.fumewarden.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills a batch in a process of its own, as no program can foresee, and goes on. */
final class KilledBatchTest {
    private static final int TASKS = 200;
    private static final int KILLS = 3;
    private static final long PATIENCE_SECONDS = 240;

    @TempDir
    Path folder;

    @Test
    void aKilledAndResumedBatchEqualsAnUninterruptedOneByteForByte() throws Exception {
        Path input = Files.write(folder.resolve("tasks.jsonl"), BatchTasks.mixed(TASKS));
        Path whole = folder.resolve("whole.jsonl");
        assertEquals(2, finish(start(input, whole)));
        byte[] expected = Files.readAllBytes(whole);
        Random random = new Random();
        Path out = folder.resolve("killed.jsonl");
        List<Long> killedAt = new ArrayList<>();
        for (int i = 0; i < KILLS; i++) {
            long size = Files.exists(out) ? Files.size(out) : 0;
            long moment = size + random.nextLong(expected.length - size + 1) / 2;
            Process process = start(input, out);
            while (process.isAlive() && (!Files.exists(out) || Files.size(out) < moment)) {
                Thread.sleep(1);
            }
            process.destroyForcibly().waitFor();
            killedAt.add(Files.exists(out) ? Files.size(out) : 0);
        }
        assertTrue(killedAt.get(0) < expected.length, "the first kill came before the end, at " + killedAt);
        assertEquals(2, finish(start(input, out)));
        assertArrayEquals(expected, Files.readAllBytes(out), "killed at " + killedAt);
        assertArrayEquals(
                Files.readAllBytes(folder.resolve("whole.jsonl.rejects")),
                Files.readAllBytes(folder.resolve("killed.jsonl.rejects")),
                "killed at " + killedAt);
    }

    private static Process start(Path input, Path out) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.fumewarden.cli.Main",
                        "batch",
                        input.toString(),
                        "--out",
                        out.toString(),
                        "--resume")
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static int finish(Process process) throws InterruptedException {
        boolean ended = process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
        process.destroyForcibly();
        assertTrue(ended, "the batch ends");
        return process.exitValue();
    }
}
