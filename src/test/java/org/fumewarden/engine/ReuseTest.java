package org.fumewarden.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fumewarden.Extent;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Fact;
import org.fumewarden.task.Task;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;
import org.fumewarden.trail.Step;
import org.fumewarden.trail.Trail;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kie.api.runtime.KieSession;

/** What an engine keeps between tasks to be fast never shows in what it decides. */
final class ReuseTest {
    private static final int TASKS = Extent.of(20, 120, Extent.ALL);

    @ParameterizedTest
    @ValueSource(strings = {"gb", "us", "de", "au"})
    void anEngineThatHasDecidedManyTasksDecidesLikeANewOne(String code) {
        RuleBase base = RuleBase.shipped(code);
        Engine used = new Engine(base);
        List<Task> tasks = tasks(base, code);
        for (Task task : Extent.sample(tasks, Task::file, TASKS)) {
            assertEquals(
                    new Engine(base).decide(task.inputs(), task.on()),
                    used.decide(task.inputs(), task.on()),
                    task.file());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"gb", "us", "de", "au"})
    @Tag("ci")
    void theSessionsOfAPhaseAreAsNewAfterEachTask(String code) {
        RuleBase base = RuleBase.shipped(code);
        for (Phase phase : base.phases()) {
            List<Task> tasks = tasks(base, code);
            PhaseSession session = session(base, phase, tasks.get(0), false);
            for (Task task : tasks.stream().limit(20).toList()) {
                List<Fact> facts = List.copyOf(task.inputs());
                List<Firing> first = session.run(facts);
                assertTrue(session.renew(), phase + " " + task.file());
                assertEquals(new HashSet<>(first), new HashSet<>(session.run(facts)), phase + " " + task.file());
                session.renew();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"gb", "us", "de", "au"})
    @Tag("ci")
    void factsThatNoPatternMatchesChangeNothing(String code) {
        RuleBase base = RuleBase.shipped(code);
        int left = 0;
        for (Task task : tasks(base, code).stream().limit(40).toList()) {
            Trail trail = new Engine(base).decide(task.inputs(), task.on());
            List<Conclusion> earlier = new ArrayList<>();
            for (Phase phase : base.phases()) {
                List<Fact> all = new ArrayList<>(task.inputs());
                all.addAll(earlier);
                List<Fact> read =
                        all.stream().filter(base.rules(phase).read()::some).toList();
                left += all.size() - read.size();
                assertEquals(
                        conclusions(session(base, phase, task, true).run(all)),
                        conclusions(session(base, phase, task, false).run(read)),
                        phase + " " + task.file());
                trail.steps().stream()
                        .filter(s -> s.phase().equals(phase.key()) && s.stands())
                        .forEach(s -> earlier.add(s.conclusion()));
            }
        }
        assertFalse(left == 0, "some facts are left out, or this test shows nothing");
    }

    /** By which a trail tells conclusions apart; some must come twice, or this shows nothing. */
    @ParameterizedTest
    @ValueSource(strings = {"gb", "us", "de", "au"})
    @Tag("ci")
    void equalConclusionsThatStandAreOneObject(String code) {
        RuleBase base = RuleBase.shipped(code);
        Engine kept = new Engine(base);
        int twice = 0;
        for (Task task : tasks(base, code).stream().limit(40).toList()) {
            for (Engine engine : List.of(kept, new Engine(base))) {
                Map<Conclusion, Conclusion> first = new HashMap<>();
                for (Step step : engine.decide(task.inputs(), task.on()).steps()) {
                    if (step.stands()) {
                        Conclusion before = first.putIfAbsent(step.conclusion(), step.conclusion());
                        twice += before == null ? 0 : 1;
                        assertSame(before == null ? step.conclusion() : before, step.conclusion(), step.toString());
                    }
                }
            }
        }
        assertFalse(twice == 0, "some conclusions come twice");
    }

    /** A program that runs for weeks meets many days and codes, and must not hold the sessions of each. */
    @Test
    void compiledRulesDoNotHoldOnToASession() {
        RuleBase base = RuleBase.shipped("gb");
        WeakReference<KieSession> session = new WeakReference<>(PhaseSessions.session(
                base.rules(base.phases().iterator().next()).base()));
        System.gc();
        assertNull(session.get());
    }

    private static Set<Conclusion> conclusions(List<Firing> firings) {
        Set<Conclusion> conclusions = new HashSet<>();
        firings.forEach(f -> conclusions.add(f.conclusion()));
        return conclusions;
    }

    private static PhaseSession session(RuleBase base, Phase phase, Task task, boolean allRows) {
        return new PhaseSession(
                PhaseSessions.session(base.rules(phase).base()),
                allRows ? base.rowsOn(task.on()) : base.rows(task.on()).readBy(base.rules(phase)),
                new MatchListener(base.rules(phase).spoken()),
                match -> base.rules(phase)
                        .spoken()
                        .get(match.getRule().getName())
                        .card()
                        .inForce(task.on()));
    }

    private static List<Task> tasks(RuleBase base, String code) {
        TaskReader reader = new TaskReader(base.book().vocabulary());
        List<Task> tasks = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("scenarios", code))) {
            files.filter(f -> f.toString().endsWith(".yaml"))
                    .sorted()
                    .map(f -> reader.read(TaskTree.read(f), code, Optional.empty()))
                    .forEach(tasks::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return tasks;
    }
}
