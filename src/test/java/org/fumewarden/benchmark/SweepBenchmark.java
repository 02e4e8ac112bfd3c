package org.fumewarden.benchmark;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.whatif.Sweep;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A sweep of 1,000 points over one level of the tour, each point decided by the whole engine. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 2)
@Measurement(iterations = 5)
public class SweepBenchmark {
    private static final int POINTS = 1000;

    private final Advisor advisor = new Advisor(RuleBase.shipped("gb"));

    @Benchmark
    public int sweep() {
        Bench bench = new Bench(
                Path.of("scenarios/tours/stainless-brackets.yaml"),
                Map.of(),
                Optional.of("gb"),
                Optional.empty(),
                code -> advisor);
        return new Sweep(bench, "exposures.manganese-respirable.twa", "mg/m3")
                .points(new BigDecimal("0.01"), new BigDecimal("5"), POINTS)
                .size();
    }
}
