package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fumewarden.Extent;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Status;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Hazard;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.task.Task;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * A line left out is {@code unknown}, byte for byte: for every question and group, for whatever may be said of an agent that is
 * stated, and for every agent that the task gives off in any amount, over random tasks of every code. To name an agent that the
 * task gives off little or nothing of is news: it counts.
 */
final class MissingLineTest {
    private static final int TASKS = Extent.of(1, 3, 3000);

    /** What may be said of an agent; each may be unknown. */
    private static final List<String> CELLS = List.of(
            ("twa stel ceiling samples averaging non-detects statistic periods unsampled error estimate estimated judged because"
                            + " by basis on limit-twa limit-stel limit-ceiling limit-from")
                    .split(" "));

    @TestFactory
    List<DynamicTest> aLineLeftOutIsUnknown() {
        return RuleFolder.shipped().codes().stream()
                .map(code -> DynamicTest.dynamicTest(code, () -> {
                    Lines lines = new Lines(Advisor.shipped(code));
                    // Few random tasks are complete, and those tell most; of the others one in ten.
                    for (int i = 0; i < 12 * TASKS && lines.tasksRead < TASKS; i++) {
                        lines.without(Extent.SEED + i, i % 10 == 0);
                    }
                    System.out.println(code + ": " + lines.pairs + " lines left out of " + lines.tasksRead + " tasks, "
                            + lines.complete + " of them complete");
                    assertTrue(lines.pairs > 100, "too few lines");
                    assertEquals(
                            "",
                            String.join(
                                    "\n",
                                    lines.broken.values().stream().limit(20).toList()));
                }))
                .toList();
    }

    /** The lines of random tasks of one code. */
    private static final class Lines {
        final Advisor advisor;
        final TaskReader reader;
        final RandomTasks tasks;
        final Map<String, String> broken = new TreeMap<>();
        int tasksRead;
        int pairs;
        int complete;

        Lines(Advisor advisor) {
            this.advisor = advisor;
            this.reader = new TaskReader(advisor.base().book().vocabulary());
            this.tasks = new RandomTasks(advisor.base().book());
        }

        void without(long seed, boolean whatever) {
            ObjectNode told =
                    WrittenTask.of(tasks.task(seed), advisor.base().book().vocabulary());
            if (!(read(told) instanceof Task task)) {
                return;
            }
            Advice advice = advisor.advise(task);
            if (advice.status() == Status.COMPLETE) {
                complete++;
            } else if (!whatever) {
                return;
            }
            tasksRead++;
            Set<String> groups = new TreeSet<>(Set.of("exposures"));
            for (Question question : advisor.base().book().vocabulary().questions()) {
                String[] path = question.path().split("\\.", 2);
                groups.add(path[0]);
                same(told, seed, question.path(), t -> t.withObjectProperty(path[0]), path[1]);
            }
            groups.forEach(group -> same(told, seed, group, t -> t, group));
            for (int i = 0; i < told.path("exposures").size(); i++) {
                int at = i;
                for (String cell : CELLS) {
                    String name = told.at("/exposures/" + i + "/agent").asText() + "." + cell;
                    same(told, seed, name, t -> (ObjectNode) t.at("/exposures/" + at), cell);
                }
            }
            Set<String> there = new TreeSet<>(
                    advice.trail().all(Hazard.class).stream().map(Hazard::agent).toList());
            advice.trail().all(Hazard.class).stream()
                    .filter(h -> h.rank().equals("principal"))
                    .map(Hazard::agent)
                    .distinct()
                    .filter(a ->
                            !told.path("exposures").findValuesAsText("agent").contains(a))
                    .forEach(agent -> {
                        for (Averaging averaging : Averaging.values()) {
                            sameDecision(seed, agent, advice, (Task) read(named(told, agent, averaging)));
                        }
                    });
            advisor.base().book().vocabulary().agents().stream()
                    .filter(a -> !there.contains(a))
                    .skip(seed % 40)
                    .findFirst()
                    .ifPresent(agent -> counts(seed, agent, named(told, agent, Averaging.TWA)));
        }

        private static ObjectNode named(ObjectNode told, String agent, Averaging averaging) {
            ObjectNode named = told.deepCopy();
            named.withArrayProperty("exposures").addObject().put("agent", agent).put(averaging.key(), "unknown");
            return named;
        }

        /** That an agent is there which the task gives off anyway is no news. */
        private void sameDecision(long seed, String agent, Advice left, Task unknown) {
            pairs++;
            if (!decided(left).equals(decided(advisor.advise(unknown)))) {
                broken.putIfAbsent(agent + " at all", "seed " + seed + ": " + agent + " at all");
            }
        }

        private static List<Object> decided(Advice advice) {
            return List.of(
                    advice.status(),
                    advice.requiredFactor().value(),
                    advice.accounts().stream().map(a -> a.account()).toList(),
                    advice.respirators().stream()
                            .map(r -> r.deviceClass() + " " + r.verdict())
                            .toList(),
                    advice.questions().stream().map(q -> q.question()).toList());
        }

        /** An agent that only its name brings in has an account. */
        private void counts(long seed, String agent, ObjectNode named) {
            boolean counted = advisor.advise((Task) read(named)).accounts().stream()
                    .anyMatch(a -> a.account().agent().equals(agent));
            if (!counted) {
                broken.putIfAbsent(agent, "seed " + seed + ": " + agent + " is named and counts nowhere");
            }
        }

        private interface Place {
            ObjectNode in(ObjectNode told);
        }

        private void same(ObjectNode told, long seed, String name, Place place, String key) {
            ObjectNode missing = told.deepCopy();
            place.in(missing).remove(key);
            ObjectNode unknown = told.deepCopy();
            place.in(unknown).put(key, "unknown");
            compare(seed, name, missing, unknown);
        }

        private void compare(long seed, String name, ObjectNode missing, ObjectNode unknown) {
            pairs++;
            Object one = read(missing);
            Object two = read(unknown);
            if (one.equals(two)) {
                return;
            }
            String first = one instanceof Task task ? AdviceJson.write(advisor.advise(task)) : one.toString();
            String second = two instanceof Task task ? AdviceJson.write(advisor.advise(task)) : two.toString();
            if (!first.equals(second)) {
                broken.putIfAbsent(
                        name,
                        "seed " + seed + ": " + name + "\n    left out: " + differing(first, second)
                                + "\n    unknown:  " + differing(second, first));
            }
        }

        private static String differing(String one, String other) {
            return one.lines()
                    .filter(l -> !other.contains(l))
                    .limit(4)
                    .map(l -> l.substring(0, Math.min(200, l.length())))
                    .toList()
                    .toString();
        }

        /** The task, or what is wrong with it. */
        private Object read(ObjectNode told) {
            try {
                return withoutLines(told);
            } catch (InputException e) {
                return e.getMessage();
            }
        }

        private Task withoutLines(ObjectNode told) {
            Task task = reader.read(
                    TaskTree.parse("task", told.toString()),
                    advisor.base().book().card().id(),
                    Optional.empty());
            return new Task(
                    task.title(),
                    task.code(),
                    task.on(),
                    task.inputs(),
                    task.readings(),
                    task.file(),
                    Map.of(),
                    task.curves(),
                    task.breakthroughs(),
                    task.register());
        }
    }
}
