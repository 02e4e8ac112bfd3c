package org.fumewarden.benchmark;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.fumewarden.advice.Advisor;
import org.fumewarden.batch.BatchTasks;
import org.fumewarden.batch.LineAdvisor;
import org.fumewarden.batch.Outcome;
import org.fumewarden.engine.RuleBase;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Lines a second of one worker, from text to text, all trails written; {@code -t 2} shares it between two threads. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xmx1g", "-XX:+UseParallelGC"})
@Warmup(iterations = 5, time = 3)
@Measurement(iterations = 5, time = 3)
public class LineBenchmark {
    private final LineAdvisor worker =
            new LineAdvisor(code -> new Advisor(RuleBase.shipped(code)), Optional.empty(), Optional.empty());
    private final AtomicInteger next = new AtomicInteger();

    @Benchmark
    public Outcome line() {
        int number = next.incrementAndGet();
        return worker.answer(number, BatchTasks.task(number));
    }
}
