package org.fumewarden.check;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.task.Task;
import org.fumewarden.task.TaskReader;
import org.fumewarden.task.TaskTree;

/** Runs scenarios and compares their advice with what they expect. */
public final class ScenarioRunner {
    private final Function<String, Advisor> advisors;
    private final Map<String, Advisor> byCode = new ConcurrentHashMap<>();

    /**
     * A runner.
     *
     * @param bases gives the rule base of a code
     */
    public ScenarioRunner(Function<String, RuleBase> bases) {
        this(bases, Set.of());
    }

    /** A runner in which some rules are silent, for proving that each of them matters. */
    public ScenarioRunner(Function<String, RuleBase> bases, Set<String> switchedOff) {
        this.advisors = code -> new Advisor(bases.apply(code), switchedOff);
    }

    /** Runs every scenario below a folder, in the order of their paths. */
    public List<ScenarioRun> runAll(Path folder) {
        return Scenario.files(folder).stream().map(this::run).toList();
    }

    /** Runs one scenario. Whatever is wrong with it stands in the result. */
    public ScenarioRun run(Path file) {
        try {
            return run(Scenario.read(file));
        } catch (InputException e) {
            return new ScenarioRun(file, Optional.empty(), Set.of(), e.problems());
        }
    }

    /** Runs a scenario that has been read before. */
    public ScenarioRun run(Scenario scenario) {
        Path file = scenario.file();
        Located own = scenario.own();
        Advisor advisor = advisor(scenario);
        Advice advice = advice(scenario, advisor);
        int before = own.problems().size();
        if (!own.entries().containsKey("because")) {
            own.complain("does not say why it exists.", "add because: with one line.");
        }
        Set<String> silent = new HashSet<>();
        Optional.ofNullable(own.entries().get("expect"))
                .ifPresentOrElse(
                        expect -> silent.addAll(new Expectations(advice, advisor.base()).compare(expect)),
                        () -> own.complain("expects nothing.", "add expect: with fires, silent, status ..."));
        List<Problem> problems =
                List.copyOf(own.problems().subList(before, own.problems().size()));
        return new ScenarioRun(file, Optional.of(Shown.of(advice)), silent, problems);
    }

    /** The advice on a scenario, whatever it expects; empty when the file could not be read as a task. */
    public Optional<Advice> advice(Path file) {
        try {
            Scenario scenario = Scenario.read(file);
            return Optional.of(advice(scenario, advisor(scenario)));
        } catch (InputException e) {
            return Optional.empty();
        }
    }

    private static Advice advice(Scenario scenario, Advisor advisor) {
        Task task = new TaskReader(advisor.base().book().vocabulary())
                .read(scenario.tree(), advisor.base().book().card().id(), Optional.empty());
        return advisor.advise(task);
    }

    private Advisor advisor(Scenario scenario) {
        String code = TaskTree.top(scenario.tree(), "code")
                .orElseThrow(() -> new InputException(new Problem(
                        scenario.file().toString(), 0, "code", "is not given.", "add a line \"code: ...\".")));
        Advisor named = byCode.computeIfAbsent(code, advisors);
        return byCode.computeIfAbsent(named.base().book().card().decides(scenario.tree()), advisors);
    }
}
