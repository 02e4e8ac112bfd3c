package org.fumewarden.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Caution;
import org.fumewarden.model.Condition;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Hazard;
import org.fumewarden.model.Input;
import org.fumewarden.model.Stop;
import org.fumewarden.model.Unknown;
import org.fumewarden.task.Task;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;

/** What holds of any advice under one code: it is never under-protective, and worse news never makes it milder. */
record Promises(Advisor advisor, RandomTasks tasks) {
    private static final Set<String> ASK_FOR_USUALLY_LOW = Set.of("SHARED-SUM-050", "SHARED-SUM-060", "DE-SUM-036");

    /** Questions that are not asked of everybody, and what stands on the sheet where nobody answered. */
    private static final Map<String, Set<String>> ORDERS = Map.of(
            "raised-pressure", Set.of("ordinary-pressure", "pressure-alone"),
            "vessel", Set.of("not-on-a-container", "container-alone"),
            "degreaser-in-sight", Set.of("degreaser-not-told"),
            "fit-test-method", Set.of("fit-test-method"),
            "spark-arrestor", Set.of("sparks"),
            "unit-withdrawn", Set.of("unit-not-vouched-unit-withdrawn"),
            "examination-overdue", Set.of("unit-not-vouched-examination-overdue"),
            "check-failed", Set.of("unit-not-vouched-check-failed"));

    /** What is known to be broken, until the rules are mended; by the words of the objection, with the reason. */
    private static final Map<String, String> KNOWN = Map.of();

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
            if (isAnOrder(task, worse, after) || asksForUsuallyLow(advice) && !asksForUsuallyLow(after)) {
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

    /** The same task without extraction and behind one that is verified. */
    Optional<String> extractionNeverWorsens(long seed) {
        Task task = tasks.task(seed);
        Advice none = advisor.advise(with(task, "none"));
        Advice verified = advisor.advise(with(task, "verified"));
        List<String> broken = new ArrayList<>();
        if (none.status() == Status.COMPLETE && verified.status() != Status.COMPLETE) {
            broken.add("complete without extraction, with it " + verified.status() + " " + verified.questions());
        }
        if (verified.requiredFactor().value().compareTo(none.requiredFactor().value()) > 0) {
            broken.add("the factor rises from " + none.requiredFactor().value() + " to "
                    + verified.requiredFactor().value());
        }
        return broken.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", broken) + " in " + task.inputs());
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

    /**
     * True when a gas that is usually low is asked, since only its share takes a sum above its common limit. Where others take
     * the sum there without it, the sum counts that share and nothing is asked (docs/decisions/accounts.md).
     */
    private static boolean asksForUsuallyLow(Advice advice) {
        return advice.trail().steps().stream().anyMatch(s -> ASK_FOR_USUALLY_LOW.contains(s.rule()));
    }

    /** True when what was forgotten stands on the sheet as an order to everybody. */
    private static boolean isAnOrder(Task task, Task worse, Advice after) {
        return worse.inputs().stream()
                .filter(i -> !task.inputs().contains(i))
                .filter(Unknown.class::isInstance)
                .anyMatch(i -> isAnOrder(((Unknown) i).question(), after));
    }

    /** True when the sheet orders what must be done while nobody answers a question. */
    static boolean isAnOrder(String question, Advice advice) {
        return Stream.concat(
                        advice.trail().all(Caution.class).stream().map(Caution::topic),
                        advice.trail().all(Condition.class).stream().map(Condition::topic))
                .anyMatch(ORDERS.getOrDefault(question, Set.of())::contains);
    }

    static Set<String> suitable(Advice advice) {
        return advice.respirators().stream()
                .filter(r -> r.verdict().offered())
                .map(Respirator::deviceClass)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
