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
import org.fumewarden.model.Bound;
import org.fumewarden.model.Caution;
import org.fumewarden.model.Condition;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Hazard;
import org.fumewarden.model.Input;
import org.fumewarden.model.NoneListed;
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
            Unit unit = Stream.of(Unit.values())
                    .filter(u -> u.symbol().equals(bound.get().unit()))
                    .findFirst()
                    .orElseThrow();
            Exposure most = new Exposure(
                    lost.agent(), lost.averaging(), bound.get().level(), unit, "random", false, lost.path());
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
