package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.fumewarden.Extent;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Account;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.Bound;
import org.fumewarden.model.Caution;
import org.fumewarden.model.Condition;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Hazard;
import org.fumewarden.model.Input;
import org.fumewarden.model.Judged;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Need;
import org.fumewarden.model.NoneListed;
import org.fumewarden.model.Ratio;
import org.fumewarden.model.Stop;
import org.fumewarden.model.Unit;
import org.fumewarden.model.Unknown;
import org.fumewarden.task.Task;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The promises of the design over random tasks, for every code. Each starting task is decided, every fourth one with two
 * worse neighbours, every twentieth shuffled. The gate takes some hundred.
 */
final class SoundnessTest {
    private static final int TASKS = Extent.of(200, 2000, 400_000);
    private static final long SEED = Extent.SEED;

    /** Questions that are not asked of everybody, and the caution that stands on the sheet where nobody answered. */
    private static final Map<String, Set<String>> ORDERS = Map.of(
            "raised-pressure", Set.of("ordinary-pressure", "pressure-alone"),
            "vessel", Set.of("not-on-a-container", "container-alone"),
            "degreaser-in-sight", Set.of("degreaser-not-told"));

    /** What is known to be broken, until the rules are mended; by the words of the objection, with the reason. */
    private static final Map<String, String> KNOWN = Map.of();

    @TestFactory
    List<DynamicTest> thePromisesHoldUnderEveryCode() {
        List<String> codes = RuleFolder.shipped().codes();
        int tasks = Math.max(1, TASKS / codes.size());
        List<DynamicTest> tests = new ArrayList<>();
        for (String code : codes) {
            Harness harness = new Harness(new Advisor(RuleBase.shipped(code)));
            tests.add(DynamicTest.dynamicTest(code + ": advice is never under-protective", () -> {
                AtomicInteger suitable = new AtomicInteger();
                each(code, tasks, seed -> harness.neverUnderProtective(seed, suitable));
                System.out.println(code + ": " + suitable + " tasks had a suitable class");
                // Where the list of the country is not held most levels stay open by design, and few tasks can have
                // one.
                assertTrue(
                        suitable.get() > tasks / 50 || listsNotHeld(code) > 20,
                        "too few tasks with a suitable class: " + suitable);
            }));
            tests.add(DynamicTest.dynamicTest(
                    code + ": worse news never adds a suitable class",
                    () -> each(code, tasks / 4, harness::neverMilder)));
            AtomicInteger bounded = new AtomicInteger();
            tests.add(DynamicTest.dynamicTest(
                    code + ": a level that something bounds is never milder than the bound", () -> {
                        each(code, tasks / 2, seed -> harness.unknownIsNeverMilder(seed, bounded));
                        System.out.println(code + ": " + bounded + " levels told at their bound");
                    }));
            tests.add(DynamicTest.dynamicTest(
                    code + ": a line that is left out is never milder than one told as unknown",
                    () -> each(code, tasks / 2, harness::deletedIsNeverMilder)));
            tests.add(DynamicTest.dynamicTest(
                    code + ": what was judged counts for no less than what was told at its limit",
                    () -> each(code, tasks / 2, harness::judgedIsNeverMilderThanItsLimit)));
            tests.add(DynamicTest.dynamicTest(
                    code + ": what is usually low, told at its share of a sum, never asks for more than left out",
                    () -> each(code, tasks / 2, harness::leftOutIsNeverMilderThanItsShare)));
            tests.add(DynamicTest.dynamicTest(
                    code + ": better extraction never leaves more open or asks for more",
                    () -> each(code, tasks / 2, harness::extractionNeverWorsens)));
            tests.add(DynamicTest.dynamicTest(
                    code + ": the order of facts changes nothing",
                    () -> each(code, tasks / 20, harness::orderChangesNothing)));
        }
        return tests;
    }

    /** Agents for which nobody has looked the limit of the code up. */
    private static long listsNotHeld(String code) {
        return RuleBase.shipped(code).rowsOn(RandomTasks.DAY).stream()
                .filter(r -> r instanceof NoneListed n && n.list().equals("limits-not-held"))
                .count();
    }

    private static void each(String code, int tasks, LongFunction<Optional<String>> property) {
        Map<Long, String> broken = new TreeMap<>(LongStream.range(SEED, SEED + tasks)
                .parallel()
                .boxed()
                .flatMap(seed -> property.apply(seed).map(b -> Map.entry(seed, b)).stream())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
        System.out.println(code + ": " + tasks + " random tasks from seed " + SEED + ", " + broken.size() + " broken");
        List<String> first = broken.entrySet().stream()
                .limit(5)
                .map(e -> "seed " + e.getKey() + ": " + e.getValue())
                .toList();
        assertEquals(0, broken.size(), String.join("\n", first));
    }

    /** The properties under one code. */
    private record Harness(Advisor advisor, RandomTasks tasks) {
        Harness(Advisor advisor) {
            this(advisor, new RandomTasks(advisor.base().book()));
        }

        Optional<String> neverUnderProtective(long seed, AtomicInteger count) {
            Task task = tasks.task(seed);
            Advice advice = advisor.advise(task);
            List<String> broken = new ArrayList<>(brokenSteps(advice));
            tasks.oracle(task).objections(advice).stream()
                    .filter(o -> KNOWN.keySet().stream().noneMatch(o::matches))
                    .forEach(broken::add);
            Set<String> suitable = suitable(advice);
            if (!suitable.isEmpty()) {
                count.incrementAndGet();
            }
            if (advice.status() == Status.INCOMPLETE && advice.questions().isEmpty()) {
                broken.add("not settled, and nothing is asked");
            }
            if (!suitable.isEmpty() && !advice.trail().all(Stop.class).isEmpty()) {
                broken.add("suitable classes in spite of a stop");
            }
            return broken.isEmpty()
                    ? Optional.empty()
                    : Optional.of(String.join("; ", broken.subList(0, Math.min(3, broken.size()))));
        }

        /** Every step has a clause, and premises that can be found. */
        private static List<String> brokenSteps(Advice advice) {
            Set<String> ids = advice.trail().steps().stream().map(Step::id).collect(Collectors.toSet());
            List<String> broken = new ArrayList<>();
            for (Step step : advice.trail().steps()) {
                if (step.says().contains("{") || step.citation().clause().isBlank()) {
                    broken.add(step.rule() + " says " + step.says());
                }
                for (Premise premise : step.premises()) {
                    if (premise.kind().equals("step") && !ids.contains(premise.address())) {
                        broken.add(step.rule() + " rests on an unknown step: " + premise.words());
                    }
                }
            }
            return broken;
        }

        Optional<String> neverMilder(long seed) {
            Task task = tasks.task(seed);
            Advice advice = advisor.advise(task);
            Set<String> before = suitable(advice);
            Set<String> hazards =
                    advice.trail().all(Hazard.class).stream().map(Hazard::agent).collect(Collectors.toSet());
            List<String> broken = new ArrayList<>();
            for (int i = 0; i < 2; i++) {
                Task worse = tasks.worse(task, hazards, seed * 31 + i);
                // Where nothing at all was stated, even small agents are open; the first level, whatever it is, ends
                // that.
                if (task.inputs().stream().noneMatch(Exposure.class::isInstance)
                        || !advice.conflicts().isEmpty()) {
                    continue;
                }
                Advice after = advisor.advise(worse);
                Set<String> grown = suitable(after);
                grown.removeAll(before);
                grown.removeAll(onlyBehindAnEntryStop(after));
                if (isAnOrder(task, worse, after)) {
                    continue;
                }
                if (!grown.isEmpty()) {
                    List<Input> lost = new ArrayList<>(task.inputs());
                    lost.removeAll(worse.inputs());
                    List<Input> gained = new ArrayList<>(worse.inputs());
                    gained.removeAll(task.inputs());
                    broken.add(grown + " became suitable when " + lost + " became " + gained);
                }
            }
            return broken.isEmpty()
                    ? Optional.empty()
                    : Optional.of(String.join("; ", broken.subList(0, Math.min(3, broken.size()))));
        }

        /** One stated level is forgotten; where something bounds it, it is told at that bound. */
        Optional<String> unknownIsNeverMilder(long seed, AtomicInteger count) {
            Task task = tasks.task(seed);
            List<Exposure> levels = task.inputs().stream()
                    .filter(Exposure.class::isInstance)
                    .map(Exposure.class::cast)
                    .toList();
            if (levels.isEmpty()) {
                return Optional.empty();
            }
            Exposure lost = levels.get(new Random(seed).nextInt(levels.size()));
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
            Set<String> grown = suitable(unknown);
            grown.removeAll(suitable(told));
            if (!grown.isEmpty() && told.conflicts().isEmpty()) {
                broken.add(grown + " suitable without it");
            }
            return broken.isEmpty()
                    ? Optional.empty()
                    : Optional.of(String.join("; ", broken) + ": " + most + " in " + task.inputs());
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
                    .map(Harness::atItsBound)
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
            assumed.forEach(r -> inputs.add(
                    new Exposure(r.agent(), r.averaging(), r.level(), r.unit(), "random", false, r.question())));
            Map<String, BigDecimal> sums = shiftSums(judged);
            return shiftSums(advisor.advise(tasks.task(inputs))).entrySet().stream()
                    .filter(e -> sums.getOrDefault(e.getKey(), BigDecimal.ZERO).compareTo(e.getValue()) < 0)
                    .findFirst()
                    .map(e -> e + " told at the limit, judged " + sums + ": " + task.inputs());
        }

        private static Map<String, BigDecimal> shiftSums(Advice advice) {
            return advice.trail().all(Need.class).stream()
                    .filter(n -> n.statistic().equals(Need.SHIFT_SUM))
                    .filter(n -> !n.subject().equals("dust-beside-gases"))
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

        private Task instead(Task task, Input old, Input other) {
            return tasks.task(
                    task.inputs().stream().map(i -> i.equals(old) ? other : i).toList());
        }

        /** One stated level is left out, or told as unknown. */
        Optional<String> deletedIsNeverMilder(long seed) {
            Task task = tasks.task(seed);
            List<Exposure> levels = task.inputs().stream()
                    .filter(Exposure.class::isInstance)
                    .map(Exposure.class::cast)
                    .toList();
            if (levels.isEmpty()) {
                return Optional.empty();
            }
            Exposure lost = levels.get(new Random(seed).nextInt(levels.size()));
            Advice unknown = advisor.advise(instead(task, lost, new Unknown(lost.path(), lost.path())));
            Advice deleted = advisor.advise(tasks.task(
                    task.inputs().stream().filter(i -> !i.equals(lost)).toList()));
            // What the task itself does not give off much of is no hazard of it once its line is gone.
            if (deleted.trail().all(Hazard.class).stream()
                    .noneMatch(h -> h.agent().equals(lost.agent()) && h.rank().equals("principal"))) {
                return Optional.empty();
            }
            List<String> broken = new ArrayList<>();
            if (deleted.status() == Status.COMPLETE && unknown.status() == Status.INCOMPLETE) {
                broken.add("complete without the line, unknown asks " + unknown.questions());
            }
            if (deleted.requiredFactor()
                            .value()
                            .compareTo(unknown.requiredFactor().value())
                    < 0) {
                broken.add("factor " + deleted.requiredFactor().value() + " without the line, unknown "
                        + unknown.requiredFactor().value());
            }
            Set<String> grown = suitable(deleted);
            grown.removeAll(suitable(unknown));
            if (!grown.isEmpty()) {
                broken.add(grown + " suitable without the line");
            }
            return broken.isEmpty()
                    ? Optional.empty()
                    : Optional.of(String.join("; ", broken) + ": " + lost + " in " + task.inputs());
        }

        /** The same task without extraction and behind one that is verified. */
        Optional<String> extractionNeverWorsens(long seed) {
            Task task = tasks.task(seed);
            Advice none = advisor.advise(with(task, "none"));
            Advice verified = advisor.advise(with(task, "verified"));
            List<String> broken = new ArrayList<>();
            if (none.status() == Status.COMPLETE && verified.status() != Status.COMPLETE) {
                broken.add("complete without extraction, with it " + verified.status() + " " + verified.questions());
            }
            if (verified.requiredFactor()
                            .value()
                            .compareTo(none.requiredFactor().value())
                    > 0) {
                broken.add("the factor rises from " + none.requiredFactor().value() + " to "
                        + verified.requiredFactor().value());
            }
            return broken.isEmpty()
                    ? Optional.empty()
                    : Optional.of(String.join("; ", broken) + " in " + task.inputs());
        }

        private Task with(Task task, String extraction) {
            return tasks.task(task.inputs().stream()
                    .map(i -> i.path().equals("task.extraction") ? new Answer("extraction", extraction, i.path()) : i)
                    .toList());
        }

        Optional<String> orderChangesNothing(long seed) {
            Task task = tasks.task(seed);
            List<Input> shuffled = new ArrayList<>(task.inputs());
            Collections.shuffle(shuffled, new Random(seed));
            Advice straight = advisor.advise(task);
            Advice mixed = advisor.advise(tasks.task(shuffled));
            boolean same = straight.trail().equals(mixed.trail())
                    && straight.respirators().equals(mixed.respirators())
                    && straight.requiredFactor().equals(mixed.requiredFactor())
                    && straight.questions().equals(mixed.questions())
                    && straight.checks().equals(mixed.checks());
            return same ? Optional.empty() : Optional.of("the advice differs");
        }

        /** Apparatus behind an entry stop is offered under those words alone, and no wear time bars it. */
        private static Set<String> onlyBehindAnEntryStop(Advice advice) {
            return advice.trail().all(Condition.class).stream()
                    .filter(c -> c.topic().equals("entry-only"))
                    .map(Condition::deviceClass)
                    .collect(Collectors.toSet());
        }

        /** True when what was forgotten stands on the sheet as an order to everybody. */
        private static boolean isAnOrder(Task task, Task worse, Advice after) {
            Set<String> cautions = after.trail().all(Caution.class).stream()
                    .map(Caution::topic)
                    .collect(Collectors.toSet());
            return worse.inputs().stream()
                    .filter(i -> !task.inputs().contains(i))
                    .filter(Unknown.class::isInstance)
                    .flatMap(i -> ORDERS.getOrDefault(((Unknown) i).question(), Set.of()).stream())
                    .anyMatch(cautions::contains);
        }

        private static Set<String> suitable(Advice advice) {
            return advice.respirators().stream()
                    .filter(r -> r.verdict().offered())
                    .map(Respirator::deviceClass)
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
