package org.fumewarden.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Status;
import org.fumewarden.model.Account;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.Bound;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Hazard;
import org.fumewarden.model.Input;
import org.fumewarden.model.Judged;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Need;
import org.fumewarden.model.Ratio;
import org.fumewarden.model.Unit;
import org.fumewarden.model.Unknown;
import org.fumewarden.task.Task;

/** What holds of one level that is forgotten, judged or told otherwise under one code. */
record LevelPromises(Advisor advisor, RandomTasks tasks) {
    /** The rules that ask for a metal once the fume that may hold it is measured. */
    private static final Set<String> OF_THE_MEASURED = Set.of("SHARED-MEASURE-268", "SHARED-MEASURE-269");

    /** One stated level is forgotten; where something bounds it, it is told at that bound. */
    Optional<String> unknownIsNeverMilder(long seed, AtomicInteger count) {
        Task task = tasks.task(seed);
        Optional<Exposure> level = lost(task, seed);
        if (level.isEmpty()) {
            return Optional.empty();
        }
        Exposure lost = level.get();
        Advice unknown = advisor.advise(instead(task, lost, new Unknown(lost.path(), lost.path())));
        Optional<Bound> bound = unknown.trail().all(Bound.class).stream()
                .filter(b -> b.question().equals(lost.question()) && b.counted())
                .min(Comparator.comparing(b -> b.level().divide(b.limit(), MathContext.DECIMAL128)));
        if (bound.isEmpty() || asked(unknown, lost.question())) {
            return Optional.empty();
        }
        count.incrementAndGet();
        Exposure most = atItsBound(bound.get());
        Advice told = advisor.advise(instead(task, lost, most));
        List<String> broken = new ArrayList<>();
        // A factor of one or less asks for no respirator, and what is not settled offers none.
        boolean asks =
                told.requiredFactor().value().compareTo(BigDecimal.ONE) > 0 && unknown.status() == Status.COMPLETE;
        if (asks
                && unknown.requiredFactor()
                                .value()
                                .compareTo(told.requiredFactor().value())
                        < 0) {
            broken.add("factor " + unknown.requiredFactor().value() + " without it, with it "
                    + told.requiredFactor().value());
        }
        Set<String> grown = Promises.suitable(unknown);
        grown.removeAll(Promises.suitable(told));
        // Open (docs/gaps.md): a fume that is only bounded does not ask for the metals that are usually low in it.
        boolean metalsAsked = told.trail().steps().stream().anyMatch(s -> OF_THE_MEASURED.contains(s.rule()));
        if (!grown.isEmpty() && told.conflicts().isEmpty() && !metalsAsked) {
            broken.add(grown + " suitable without it");
        }
        return broken.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join("; ", broken) + ": " + most + " in " + task.inputs());
    }

    /** One stated level is told higher. What is asked of every respirator never falls. */
    Optional<String> higherNeverLowersTheFactor(long seed) {
        Task task = tasks.task(seed);
        Optional<Exposure> level = lost(task, seed);
        if (level.isEmpty()) {
            return Optional.empty();
        }
        Exposure x = level.get();
        BigDecimal times = List.of(new BigDecimal("1.2"), BigDecimal.valueOf(3), BigDecimal.TEN)
                .get(new Random(seed).nextInt(3));
        Exposure raised = new Exposure(
                x.agent(), x.averaging(), x.level().multiply(times), x.unit(), x.statistic(), x.estimated(), x.path());
        BigDecimal before = advisor.advise(task).requiredFactor().value();
        BigDecimal after =
                advisor.advise(instead(task, x, raised)).requiredFactor().value();
        return after.compareTo(before) < 0
                ? Optional.of("factor " + before + ", " + times + " times higher " + after + ": " + x + " in "
                        + task.inputs())
                : Optional.empty();
    }

    /** An agent that is usually low is told at the share at which it counts in sums. */
    Optional<String> leftOutIsNeverMilderThanItsShare(long seed) {
        Task task = tasks.task(seed);
        Advice left = advisor.advise(task);
        List<Bound> shares =
                left.trail().all(Bound.class).stream().filter(Bound::usual).toList();
        if (shares.isEmpty() || left.status() != Status.COMPLETE) {
            return Optional.empty();
        }
        String agent = shares.get(new Random(seed).nextInt(shares.size())).agent();
        List<Input> inputs = new ArrayList<>(task.inputs());
        shares.stream()
                .filter(b -> b.agent().equals(agent))
                .filter(b -> inputs.stream().noneMatch(i -> i.path().equals(b.question())))
                .map(LevelPromises::atItsBound)
                .forEach(inputs::add);
        Advice told = advisor.advise(tasks.task(inputs));
        boolean milder = left.requiredFactor().value().compareTo(BigDecimal.ONE) <= 0
                && told.requiredFactor().value().compareTo(BigDecimal.ONE) > 0;
        return milder
                ? Optional.of("no respirator without " + agent + ", told at its share a factor of "
                        + told.requiredFactor().value() + ": " + task.inputs())
                : Optional.empty();
    }

    /** An agent that was judged is told at the level at which it counts. */
    Optional<String> judgedIsNeverMilderThanItsLimit(long seed) {
        Task task = tasks.task(seed);
        Advice judged = advisor.advise(task);
        List<Ratio> assumed = judged.trail().all(Ratio.class).stream()
                .filter(Ratio::judged)
                .distinct()
                .toList();
        Set<String> settled = assumed.stream().map(Ratio::agent).collect(Collectors.toSet());
        Optional<String> silent = task.inputs().stream()
                .filter(Judged.class::isInstance)
                .map(i -> ((Judged) i).agent())
                .filter(a -> !settled.contains(a) && !asked(judged, "exposures." + a + ".limit"))
                .filter(a -> advisor.base().rowsOn(RandomTasks.DAY).stream()
                        .anyMatch(r -> r instanceof Limit l && l.agent().equals(a)
                                || r instanceof Benchmark b && b.agent().equals(a)))
                .filter(a -> judged.trail().all(Account.class).stream()
                        .noneMatch(o -> o.open() && o.agent().equals(a)))
                .filter(a -> task.inputs().stream()
                        .noneMatch(i -> i instanceof Exposure e && e.agent().equals(a)))
                .findFirst();
        if (silent.isPresent() || assumed.isEmpty()) {
            return silent.map(a -> a + " was judged and counts nowhere: " + task.inputs());
        }
        List<Input> inputs = new ArrayList<>(task.inputs());
        inputs.removeIf(i -> i instanceof Judged j && settled.contains(j.agent()));
        assumed.forEach(r ->
                inputs.add(new Exposure(r.agent(), r.averaging(), r.level(), r.unit(), "random", false, r.question())));
        Map<String, BigDecimal> sums = shiftSums(judged);
        return shiftSums(advisor.advise(tasks.task(inputs))).entrySet().stream()
                .filter(e -> sums.getOrDefault(e.getKey(), BigDecimal.ZERO).compareTo(e.getValue()) < 0)
                .findFirst()
                .map(e -> e + " told at the limit, judged " + sums + ": " + task.inputs());
    }

    private static Map<String, BigDecimal> shiftSums(Advice advice) {
        return advice.trail().all(Need.class).stream()
                .filter(n -> n.statistic().equals(Need.SHIFT_SUM))
                .filter(Need::ofEveryClass)
                .collect(Collectors.toMap(Need::subject, Need::value, BigDecimal::max));
    }

    private static Exposure atItsBound(Bound bound) {
        Unit unit = Stream.of(Unit.values())
                .filter(u -> u.symbol().equals(bound.unit()))
                .findFirst()
                .orElseThrow();
        Averaging averaging = Stream.of(Averaging.values())
                .filter(a -> bound.question().endsWith("." + a.key()))
                .findFirst()
                .orElseThrow();
        return new Exposure(bound.agent(), averaging, bound.level(), unit, "random", false, bound.question());
    }

    private static boolean asked(Advice advice, String question) {
        return advice.trail().all(Account.class).stream().anyMatch(a -> a.open() && a.by().equals(question));
    }

    /** One stated level of a task, by lot; empty where none is stated. */
    private static Optional<Exposure> lost(Task task, long seed) {
        List<Exposure> levels = task.inputs().stream()
                .filter(Exposure.class::isInstance)
                .map(Exposure.class::cast)
                .toList();
        return levels.isEmpty() ? Optional.empty() : Optional.of(levels.get(new Random(seed).nextInt(levels.size())));
    }

    private Task instead(Task task, Input old, Input other) {
        return tasks.task(
                task.inputs().stream().map(i -> i.equals(old) ? other : i).toList());
    }

    /** One stated level is left out, or told as unknown. */
    Optional<String> deletedIsNeverMilder(long seed) {
        Task task = tasks.task(seed);
        Optional<Exposure> level = lost(task, seed);
        if (level.isEmpty()) {
            return Optional.empty();
        }
        Exposure lost = level.get();
        Advice unknown = advisor.advise(instead(task, lost, new Unknown(lost.path(), lost.path())));
        Advice deleted = advisor.advise(
                tasks.task(task.inputs().stream().filter(i -> !i.equals(lost)).toList()));
        // What the task itself does not give off much of is no hazard of it once its line is gone.
        if (deleted.trail().all(Hazard.class).stream()
                .noneMatch(h -> h.agent().equals(lost.agent()) && h.rank().equals("principal"))) {
            return Optional.empty();
        }
        List<String> broken = new ArrayList<>();
        if (deleted.status() == Status.COMPLETE && unknown.status() == Status.INCOMPLETE) {
            broken.add("complete without the line, unknown asks " + unknown.questions());
        }
        if (deleted.requiredFactor().value().compareTo(unknown.requiredFactor().value()) < 0) {
            broken.add("factor " + deleted.requiredFactor().value() + " without the line, unknown "
                    + unknown.requiredFactor().value());
        }
        Set<String> grown = Promises.suitable(deleted);
        grown.removeAll(Promises.suitable(unknown));
        if (!grown.isEmpty()) {
            broken.add(grown + " suitable without the line");
        }
        return broken.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join("; ", broken) + ": " + lost + " in " + task.inputs());
    }
}
