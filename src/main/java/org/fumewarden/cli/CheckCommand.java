package org.fumewarden.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.fumewarden.check.RuleBaseCheck;
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

    @Option(
            names = "--sources",
            paramLabel = "FILE",
            defaultValue = "docs/sources.yaml",
            description = "List of documents that may be cited; ${DEFAULT-VALUE} when not given.")
    private Path sources;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        RuleFolder folder = rules == null ? RuleFolder.shipped() : RuleFolder.at(rules);
        RuleBaseCheck.Report report = RuleBaseCheck.run(
                folder,
                code -> rules == null ? RuleBase.shipped(code) : RuleBase.compiled(folder, code),
                scenarios,
                sources);
        report.problems().forEach(p -> spec.commandLine().getOut().println(p.text()));
        report.counts().forEach(spec.commandLine().getOut()::println);
        spec.commandLine().getOut().flush();
        return report.problems().isEmpty() ? ExitCodes.COMPLETE : ExitCodes.BAD_INPUT;
    }
}
