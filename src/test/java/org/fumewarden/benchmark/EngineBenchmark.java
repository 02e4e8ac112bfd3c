package org.fumewarden.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.check.EditedRules;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.task.Task;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Time of one advice, and how it grows with rules that have nothing to do with the task. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 5, time = 3)
@Measurement(iterations = 5, time = 3)
public class EngineBenchmark {
    private static final Path TOUR = Path.of("scenarios/tours/stainless-brackets.yaml");

    /** Rules added for processes that the task does not use. */
    @Param({"0", "100", "400"})
    public int unrelated;

    private Path rules;
    private Advisor advisor;
    private Task task;

    @Setup(Level.Trial)
    public void prepare() throws IOException {
        rules = Files.createTempDirectory("fumewarden-rules-");
        EditedRules.folder(Path.of("rules"), rules);
        Path cautions = rules.resolve("gb/caution.drl");
        for (int i = 0; i < unrelated; i++) {
            Files.writeString(cautions, unrelatedRule(i), StandardOpenOption.APPEND);
        }
        advisor = new Advisor(RuleBase.compiled(RuleFolder.at(rules), "gb"));
        task = new TaskReader(advisor.base().book().vocabulary()).read(TaskTree.read(TOUR), "gb", Optional.empty());
    }

    @Benchmark
    public Advice advise() {
        return advisor.advise(task);
    }

    int rules() {
        return advisor.base().cards().size();
    }

    @TearDown(Level.Trial)
    public void clear() throws IOException {
        try (Stream<Path> files = Files.walk(rules)) {
            for (Path path : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    /** Two joined patterns, as the shipped rules have them. */
    private static String unrelatedRule(int number) {
        return """

                rule "GB-CAUTION-%d0 a process of another yard"
                @source("coshh") @clause("none, for a benchmark") @confidence("memory")
                @says("This rule never speaks.")
                when
                  $p : Answer( question == "process", value == "elsewhere-%d" )
                  Member( set == "any-process", item == $p.value )
                then
                  insert( new Control( "eliminate" ) );
                end
                """.formatted(1000 + number, number);
    }
}
