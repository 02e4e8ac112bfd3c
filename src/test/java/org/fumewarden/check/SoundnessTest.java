package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.fumewarden.Extent;
import org.fumewarden.advice.Advisor;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.NoneListed;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The promises of the design over random tasks, for every code. Each starting task is decided, every fourth one with two
 * worse neighbours, every twentieth shuffled. The gate takes a hundred.
 */
final class SoundnessTest {
    private static final int TASKS = Extent.of(120, 2000, 400_000);
    private static final long SEED = Extent.SEED;

    @TestFactory
    List<DynamicTest> thePromisesHoldUnderEveryCode() {
        List<String> codes = RuleFolder.shipped().codes();
        int tasks = Math.max(1, TASKS / codes.size());
        List<DynamicTest> tests = new ArrayList<>();
        for (String code : codes) {
            Advisor advisor = Advisor.shipped(code);
            RandomTasks random = new RandomTasks(advisor.base().book());
            Promises promises = new Promises(advisor, random);
            LevelPromises levels = new LevelPromises(advisor, random);
            tests.add(DynamicTest.dynamicTest(code + ": advice is never under-protective", () -> {
                AtomicInteger suitable = new AtomicInteger();
                each(code, tasks, seed -> promises.neverUnderProtective(seed, suitable));
                System.out.println(code + ": " + suitable + " tasks had a suitable class");
                // Where the list of the country is not held most levels stay open by design, and few tasks can have
                // one.
                assertTrue(
                        suitable.get() > tasks / 50 || listsNotHeld(code) > 20,
                        "too few tasks with a suitable class: " + suitable);
            }));
            tests.add(DynamicTest.dynamicTest(
                    code + ": worse news never adds a suitable class",
                    () -> each(code, tasks / 4, promises::neverMilder)));
            AtomicInteger bounded = new AtomicInteger();
            tests.add(DynamicTest.dynamicTest(
                    code + ": a level that something bounds is never milder than the bound", () -> {
                        each(code, tasks / 2, seed -> levels.unknownIsNeverMilder(seed, bounded));
                        System.out.println(code + ": " + bounded + " levels told at their bound");
                    }));
            tests.add(DynamicTest.dynamicTest(
                    code + ": a line that is left out is never milder than one told as unknown",
                    () -> each(code, tasks / 2, levels::deletedIsNeverMilder)));
            tests.add(DynamicTest.dynamicTest(
                    code + ": a higher level never lowers the factor",
                    () -> each(code, tasks / 2, levels::higherNeverLowersTheFactor)));
            tests.add(DynamicTest.dynamicTest(
                    code + ": what was judged counts for no less than what was told at its limit",
                    () -> each(code, tasks / 2, levels::judgedIsNeverMilderThanItsLimit)));
            tests.add(DynamicTest.dynamicTest(
                    code + ": what is usually low, told at its share of a sum, never asks for more than left out",
                    () -> each(code, tasks / 2, levels::leftOutIsNeverMilderThanItsShare)));
            tests.add(DynamicTest.dynamicTest(
                    code + ": better extraction never leaves more open or asks for more",
                    () -> each(code, tasks / 2, promises::extractionNeverWorsens)));
            tests.add(DynamicTest.dynamicTest(
                    code + ": the order of facts changes nothing",
                    () -> each(code, tasks / 20, promises::orderChangesNothing)));
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
}
