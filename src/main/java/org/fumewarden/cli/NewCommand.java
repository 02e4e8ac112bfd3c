package org.fumewarden.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.engine.Phase;
import org.fumewarden.model.Keyed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins a new code or a new rule: files to fill in, with scenarios that hold them to account. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = "Begins a new code or a new rule, each with a scenario and a counter-example.",
        footer = {"", "Examples:", "  fumewarden new code tarn", "  fumewarden new rule tarn need"},
        subcommands = {NewCommand.OfCode.class, NewCommand.OfRule.class})
final class NewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getErr());
        return ExitCodes.BAD_INPUT;
    }

    private static Integer report(CommandSpec spec, List<Path> written, String next) {
        written.forEach(path -> spec.commandLine().getOut().println("wrote " + path));
        spec.commandLine().getOut().println(next);
        spec.commandLine().getOut().flush();
        return ExitCodes.COMPLETE;
    }

    /** Where the new files go. */
    static final class Places {
        @Option(names = "--rules", paramLabel = "DIR", defaultValue = "rules", description = "Default: rules.")
        private Path rules;

        @Option(
                names = "--scenarios",
                paramLabel = "DIR",
                defaultValue = "scenarios",
                description = "Default: scenarios.")
        private Path scenarios;

        Scaffold scaffold() {
            return new Scaffold(rules, scenarios, LocalDate.now());
        }
    }

    /** Begins a code. */
    @Command(
            name = "code",
            mixinStandardHelpOptions = true,
            description = "Writes the folder of a new code. It advises at once and says what it does not contain yet.",
            footer = {"", "Example:", "  fumewarden new code quay"})
    static final class OfCode implements Callable<Integer> {
        @Parameters(paramLabel = "ID", description = "Id of the code: small letters, digits and hyphens.")
        private String id;

        @Mixin
        private Places places;

        @Spec
        private CommandSpec spec;

        @Override
        public Integer call() {
            List<Path> written = places.scaffold().code(id);
            return report(spec, written, "Fill in code.yaml and the tables; docs/how-to-add-a-code.md says how.");
        }
    }

    /** Begins a rule. */
    @Command(
            name = "rule",
            mixinStandardHelpOptions = true,
            description =
                    "Adds a rule to a phase of a code. It stays silent, and its scenario fails, until it is filled in.",
            footer = {"", "Example:", "  fumewarden new rule quay duty"})
    static final class OfRule implements Callable<Integer> {
        @Parameters(index = "0", paramLabel = "CODE", description = "Folder of the code.")
        private String code;

        @Parameters(index = "1", paramLabel = "PHASE", description = "Phase in which the rule concludes, such as need.")
        private String phase;

        @Mixin
        private Places places;

        @Spec
        private CommandSpec spec;

        @Override
        public Integer call() {
            Phase known = Keyed.find(Phase.class, phase)
                    .orElseThrow(() -> new InputException(new Problem(
                            "new rule",
                            0,
                            "PHASE",
                            "is \"" + phase + "\", which is no phase.",
                            Nearest.remedy(phase, Keyed.keys(Phase.class)))));
            List<Path> written = places.scaffold().rule(code, known);
            return report(
                    spec, written, "Fill in what begins with give-a, give-an or name-the; until then it is silent.");
        }
    }
}
