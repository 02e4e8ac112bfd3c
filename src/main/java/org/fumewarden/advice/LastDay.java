package org.fumewarden.advice;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.InputException;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Hazard;
import org.fumewarden.model.Limit;
import org.fumewarden.model.NoLimit;
import org.fumewarden.model.NoneListed;
import org.fumewarden.model.Row;
import org.fumewarden.task.Task;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Trail;

/**
 * Finds the last day on which an advice stays as it is. A row that it read and that ends or is replaced ends it, and so does the
 * first day of a limit, or of its absence, for an agent that it is about. For any other row or rule the day is tried.
 */
final class LastDay {
    private final RuleBase base;
    private final Task task;
    private final Trail trail;
    private final Function<Task, Trail> decide;
    private final Set<String> agents = new HashSet<>();

    /**
     * @param whole the task with what its readings came to
     * @param decide on the task of another day, as it was given
     */
    LastDay(RuleBase base, Task task, Task whole, Trail trail, Function<Task, Trail> decide) {
        this.base = base;
        this.task = task;
        this.trail = trail;
        this.decide = decide;
        trail.all(Hazard.class).forEach(hazard -> agents.add(hazard.agent()));
        trail.all(NoLimit.class).forEach(none -> agents.add(none.agent()));
        whole.inputs().stream()
                .filter(Exposure.class::isInstance)
                .forEach(level -> agents.add(((Exposure) level).agent()));
    }

    /** The last day before the advice changes, when any day is known to change it. */
    Optional<LocalDate> find() {
        Set<String> read = read(trail);
        return Stream.concat(base.book().days().stream(), base.days().stream())
                .distinct()
                .sorted()
                .filter(day -> day.isAfter(task.on()))
                .filter(day -> changes(day, read))
                .findFirst()
                .map(day -> day.minusDays(1));
    }

    private boolean changes(LocalDate day, Set<String> read) {
        Set<Row> rows = base.book().changed(day);
        boolean others = rows.stream().anyMatch(row -> agent(row).isEmpty());
        return rows.stream()
                        .anyMatch(row -> read.contains(row.ref().address())
                                || agent(row).filter(this::about).isPresent())
                || (others || base.days().contains(day)) && answersOtherwise(day);
    }

    /** The agent for which a row says what it is held against. */
    private static Optional<String> agent(Row row) {
        return row instanceof Limit limit
                ? Optional.of(limit.agent())
                : row instanceof Benchmark benchmark
                        ? Optional.of(benchmark.agent())
                        : row instanceof DangerLevel danger
                                ? Optional.of(danger.agent())
                                : row instanceof NoneListed none ? Optional.of(none.agent()) : Optional.empty();
    }

    private boolean about(String agent) {
        return agents.contains(agent) || agent.equals(NoneListed.EVERY_OTHER);
    }

    private boolean answersOtherwise(LocalDate day) {
        try {
            return !said(decide.apply(task.onDay(day))).equals(said(trail));
        } catch (InputException e) {
            return true;
        }
    }

    private static Set<List<Object>> said(Trail trail) {
        return trail.steps().stream()
                .map(step -> List.<Object>of(step.rule(), step.conclusion(), step.says()))
                .collect(Collectors.toSet());
    }

    /** The addresses of the rows that a trail rests on. */
    static Set<String> read(Trail trail) {
        return trail.steps().stream()
                .flatMap(step -> step.premises().stream())
                .filter(premise -> premise.kind().equals("row"))
                .map(Premise::address)
                .collect(Collectors.toSet());
    }
}
