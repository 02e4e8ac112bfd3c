package org.fumewarden.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.fumewarden.check.ScenarioRun;
import org.fumewarden.check.ScenarioRunner;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Checks rules, tables and scenarios. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks rules, tables and scenarios, and names file and line of everything that is wrong.",
        footer = {"", "Example:", "  fumewarden check --rules rules --scenarios scenarios"})
final class CheckCommand implements Callable<Integer> {
    @Option(names = "--rules", paramLabel = "DIR", description = "Folder of edited rules; compiled now.")
    private Path rules;

    @Option(
            names = "--scenarios",
            paramLabel = "DIR",
            defaultValue = "scenarios",
            description = "Folder of scenarios, or one scenario; ${DEFAULT-VALUE} when not given.")
    private Path scenarios;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        List<ScenarioRun> runs = new ScenarioRunner(
                        code -> rules == null ? RuleBase.shipped(code) : RuleBase.compiled(RuleFolder.at(rules), code))
                .runAll(scenarios);
        List<Problem> problems = new ArrayList<>();
        runs.forEach(run -> problems.addAll(run.problems()));
        problems.forEach(p -> spec.commandLine().getOut().println(p.text()));
        spec.commandLine().getOut().println(problems.size() + " findings; " + runs.size() + " scenarios run.");
        spec.commandLine().getOut().flush();
        return problems.isEmpty() ? ExitCodes.COMPLETE : ExitCodes.BAD_INPUT;
    }
}
