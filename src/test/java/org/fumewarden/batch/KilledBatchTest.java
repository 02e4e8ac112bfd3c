package org.fumewarden.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.fumewarden.Extent;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a batch in a process of its own, as no program can foresee, and goes on. The build server kills a short one;
 * {@code -Dfumewarden.killed.tasks=100000} kills a long one, the long run one twenty times.
 */
final class KilledBatchTest {
    private static final int TASKS = Integer.getInteger("fumewarden.killed.tasks", 200);
    private static final int KILLS = Extent.of(3, 3, 20);

    /** Half a megabyte of advice a task would fill the disk. */
    private static final List<String> FORM = TASKS > 2000 ? List.of("--brief") : List.of();

    private static final long PATIENCE_SECONDS = 240 + TASKS / 10;

    @TempDir
    Path folder;

    @Test
    @Tag("ci")
    void aKilledAndResumedBatchEqualsAnUninterruptedOneByteForByte() throws Exception {
        Path input = Files.write(folder.resolve("tasks.jsonl"), BatchTasks.mixed(TASKS));
        Path whole = folder.resolve("whole.jsonl");
        assertEquals(2, finish(start(input, whole)));
        long expected = Files.size(whole);
        Random random = new Random(Extent.SEED);
        Path out = folder.resolve("killed.jsonl");
        List<Long> killedAt = new ArrayList<>();
        for (int i = 0; i < KILLS; i++) {
            long size = Files.exists(out) ? Files.size(out) : 0;
            long moment = size + random.nextLong(expected - size + 1) / 2;
            Process process = start(input, out);
            while (process.isAlive() && (!Files.exists(out) || Files.size(out) < moment)) {
                Thread.sleep(1);
            }
            process.destroyForcibly().waitFor();
            killedAt.add(Files.exists(out) ? Files.size(out) : 0);
        }
        assertTrue(killedAt.get(0) < expected, "the first kill came before the end, at " + killedAt);
        assertEquals(2, finish(start(input, out)));
        assertEquals(-1, Files.mismatch(whole, out), "first other byte; killed at " + killedAt);
        assertEquals(
                -1,
                Files.mismatch(folder.resolve("whole.jsonl.rejects"), folder.resolve("killed.jsonl.rejects")),
                "first other byte; killed at " + killedAt);
    }

    private static Process start(Path input, Path out) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command = new ArrayList<>(List.of(
                java,
                "-XX:TieredStopAtLevel=" + (TASKS > 2000 ? 4 : 1),
                "-cp",
                System.getProperty("java.class.path"),
                "org.fumewarden.cli.Main",
                "batch",
                input.toString(),
                "--out",
                out.toString(),
                "--resume"));
        command.addAll(FORM);
        return new ProcessBuilder(command)
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
