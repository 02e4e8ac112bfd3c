package org.fumewarden.batch;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.fumewarden.advice.Advisor;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.report.BriefJson;

/**
 * Measures a batch in this process and prints tasks a second and memory; no test, since times differ with the machine.
 * docs/performance.md says how to run it. Arguments: tasks, threads, then {@code brief} for the short form and {@code complete} for tasks that
 * answer every question; the first tenth warms up and is not counted.
 */
public final class BatchBenchmark {
    private BatchBenchmark() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        int tasks = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
        int threads = arguments.length > 1
                ? Integer.parseInt(arguments[1])
                : Runtime.getRuntime().availableProcessors();
        boolean brief = List.of(arguments).contains("brief");
        IntFunction<String> mix = List.of(arguments).contains("complete") ? BatchTasks::complete : BatchTasks::task;
        LineAdvisor worker = new LineAdvisor(
                code -> new Advisor(RuleBase.shipped(code)),
                Optional.empty(),
                Optional.empty(),
                brief ? BriefJson::write : AdviceJson::writeUntried);
        run(worker, threads, Math.max(1, tasks / 10), mix);
        System.gc();
        long began = System.nanoTime();
        long spent = processor();
        long bytes = run(worker, threads, tasks, mix);
        double seconds = (System.nanoTime() - began) / 1e9;
        double processor = (processor() - spent) / 1e6;
        System.out.printf(
                "%d tasks, %d threads: %.1f s, %.0f tasks/s, %.2f ms of processor a task, %d bytes of advice a task%n",
                tasks, threads, seconds, tasks / seconds, processor / tasks, bytes / tasks);
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                "heap after collection %d MB, heap reserved %d MB%n",
                (runtime.totalMemory() - runtime.freeMemory()) >> 20, runtime.totalMemory() >> 20);
    }

    /** Processor time of this process in nanoseconds: it swings less than the clock where others use the machine too. */
    private static long processor() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    private static long run(LineAdvisor worker, int threads, int tasks, IntFunction<String> mix)
            throws IOException, InterruptedException {
        long[] bytes = {0};
        try (Entries entries = new Entries.Lines(new SequenceInputStream(lines(tasks, mix)))) {
            new Batch(worker, threads)
                    .run(entries, outcome -> bytes[0] += outcome.json().length(), tally -> {});
        }
        return bytes[0];
    }

    /** The lines one at a time, so that the measured memory is that of the batch. */
    private static Enumeration<InputStream> lines(int tasks, IntFunction<String> mix) {
        return new Enumeration<>() {
            private int next = 1;

            @Override
            public boolean hasMoreElements() {
                return next <= tasks;
            }

            @Override
            public InputStream nextElement() {
                return new ByteArrayInputStream((mix.apply(next++) + "\n").getBytes(StandardCharsets.UTF_8));
            }
        };
    }
}
