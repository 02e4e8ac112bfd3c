package org.fumewarden.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.Extent;
import org.fumewarden.assessment.Assessment;
import org.fumewarden.codes.InputException;
import org.fumewarden.model.Band;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Member;
import org.fumewarden.model.QuantityRange;
import org.fumewarden.model.Row;
import org.fumewarden.model.Threshold;
import org.fumewarden.task.Task;
import org.fumewarden.trail.Premise;
import org.junit.jupiter.api.Test;

/**
 * Of every value that nobody compared and that any step of an advice read: it is listed before signing exactly when its next step
 * up or down changes what the advice tells people. Tried on scenarios drawn at random, answered in full and not.
 */
final class NothingUnlistedTest {
    private static final int TASKS = Extent.of(4, 40, 400);
    /** What has a value or belongs to a set; a duty or a clause has no next step. Factors: BeforeSigningTest. */
    private static final Set<Class<?>> VALUES = Set.of(
            Limit.class,
            Benchmark.class,
            Threshold.class,
            Band.class,
            DangerLevel.class,
            QuantityRange.class,
            FilterMatch.class,
            Member.class);
    /** A sheet that is open is not signed, and what is due then may still change. */
    private static final Set<String> LATER = Set.of("other measures", "other duties");

    @Test
    void aValueIsListedExactlyWhenItTurnsTheAnswer() throws IOException {
        Set<String> wrong = new TreeSet<>();
        int tasks = 0;
        int open = 0;
        int values = 0;
        int listed = 0;
        for (Path file : Extent.sample(scenarios(), Path::toString, TASKS * 2)) {
            Optional<Bench> bench = bench(file);
            if (bench.isEmpty() || tasks == TASKS) {
                continue;
            }
            Advisor advisor = Advisor.shipped(bench.get().code());
            Task task = bench.get().task(bench.get().code(), Map.of());
            Advice advice = advisor.advise(task);
            tasks++;
            boolean settled = advice.status() == Status.COMPLETE || advice.status() == Status.DO_NOT_ENTER;
            open += settled ? 0 : 1;
            Set<String> named = advice.turning().stream().map(ToCompare::row).collect(Collectors.toSet());
            List<Assessment> assessed = advisor.assess(task);
            Upshot now = Upshot.of(advice);
            for (Row row : read(advisor, advice)) {
                List<String> unlike = Neighbours.of(row).stream()
                        .flatMap(next -> now.unlike(advisor.upshot(task, assessed, row, next.row())).stream())
                        .distinct()
                        .toList();
                values++;
                listed += named.contains(row.ref().address()) ? 1 : 0;
                if (unlike.isEmpty() == named.contains(row.ref().address()) && settled) {
                    wrong.add(file.getFileName() + " " + row.ref().address() + (unlike.isEmpty() ? " is" : " is not")
                            + " listed, and changes " + unlike);
                }
                if (!settled
                        && !LATER.containsAll(unlike)
                        && !named.contains(row.ref().address())) {
                    wrong.add(file.getFileName() + " (open) " + row.ref().address() + " is not listed, and changes "
                            + unlike);
                }
            }
        }
        System.out.println("tasks " + tasks + ", of them open " + open + ", values not compared behind them " + values
                + ", listed " + listed);
        assertTrue(tasks >= Math.min(TASKS, 4), "tasks " + tasks);
        assertEquals(Set.of(), wrong);
    }

    /** The rows in any step of the trail that nobody compared with their text, or on which documents differ. */
    private static List<Row> read(Advisor advisor, Advice advice) {
        Set<String> read = advice.trail().steps().stream()
                .flatMap(step -> step.premises().stream())
                .filter(premise -> premise.kind().equals("row"))
                .map(Premise::address)
                .collect(Collectors.toSet());
        return advisor.base().rowsOn(advice.on()).stream()
                .filter(row -> read.contains(row.ref().address()))
                .filter(row -> VALUES.contains(row.getClass()))
                .filter(row -> row.ref().citation().confidence() == Confidence.MEMORY
                        || !row.ref().beside().isEmpty())
                .toList();
    }

    private static Optional<Bench> bench(Path file) {
        try {
            Bench bench = new Bench(file, Map.of(), Optional.empty(), Optional.empty(), Advisor::shipped);
            bench.advise();
            return Optional.of(bench);
        } catch (InputException e) {
            return Optional.empty();
        }
    }

    private static List<Path> scenarios() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("scenarios"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }
}
