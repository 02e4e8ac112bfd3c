package org.fumewarden.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.fumewarden.batch.BatchTasks;
import org.fumewarden.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example of docs/scale.md in local mode: two threads, three partitions, the same lines as the batch command. */
class RegisterOnClusterTest {
    private static final int TASKS = 120;

    @TempDir
    Path folder;

    @Test
    void aClusterWritesTheLinesThatTheBatchWrites() throws Exception {
        List<String> tasks =
                BatchTasks.mixed(TASKS).stream().filter(line -> !line.isBlank()).toList();
        Path input = Files.write(folder.resolve("tasks.jsonl"), tasks);
        Path out = folder.resolve("advice.jsonl");
        CommandRun batch = CommandRun.of("batch", input.toString(), "--out", out.toString());
        assertEquals(2, batch.exit(), batch.err());
        List<String> advice = Files.readAllLines(out, StandardCharsets.UTF_8);
        List<String> rejects =
                Files.readAllLines(folder.resolve("advice.jsonl.rejects"), StandardCharsets.UTF_8);
        SparkConf local = new SparkConf()
                .setMaster("local[2]")
                .setAppName("register")
                .set("spark.ui.enabled", "false")
                .set("spark.driver.host", "127.0.0.1")
                .set("spark.driver.bindAddress", "127.0.0.1");
        List<String> cluster;
        try (JavaSparkContext spark = new JavaSparkContext(local)) {
            cluster = RegisterOnCluster.advise(spark.textFile(input.toString(), 3)).collect();
        }
        assertSame(advice, cluster, "\"advice\":{");
        assertSame(rejects, cluster, "\"problems\":[");
        assertTrue(!advice.isEmpty() && !rejects.isEmpty(), "both kinds are there");
        List<String> numbers = new ArrayList<>();
        cluster.forEach(line -> numbers.add(line.replaceFirst("^\\{\"line\":(\\d+).*", "$1")));
        assertEquals(
                java.util.stream.IntStream.rangeClosed(1, tasks.size())
                        .mapToObj(Integer::toString)
                        .toList(),
                numbers,
                "each task once, in the order of the input");
    }

    /** Below the line by which a batch knows its own files, the same lines; one that differs is shown, not all. */
    private static void assertSame(List<String> file, List<String> cluster, String kind) {
        List<String> batch =
                file.stream().filter(line -> !line.contains("\"line\":0,")).toList();
        List<String> here = cluster.stream().filter(line -> line.contains(kind)).toList();
        assertEquals(batch.size(), here.size(), kind);
        for (int at = 0; at < batch.size(); at++) {
            assertEquals(batch.get(at), here.get(at), kind + " " + at);
        }
    }
}
