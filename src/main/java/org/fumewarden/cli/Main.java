package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import org.fumewarden.codes.InputException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command {@code fumewarden}. */
@Command(
        name = "fumewarden",
        mixinStandardHelpOptions = true,
        version = "fumewarden 0.1.0",
        description = {
            "Advises on respiratory protection for hot work, with the clause behind each sentence.",
            "Local codes and a licensed or competent person decide."
        },
        subcommands = {
            AdviseCommand.class,
            BatchCommand.class,
            CompareCommand.class,
            ExposureCommand.class,
            SweepCommand.class,
            ExplainCommand.class,
            DrillCommand.class,
            EnduranceCommand.class,
            AuditCommand.class,
            DiffCommand.class,
            SchemaCommand.class,
            CheckCommand.class,
            RulesCommand.class,
            RegisterCommand.class,
            LogCommand.class,
            DueCommand.class,
            RecordCommand.class,
            CalendarCommand.class,
            StoreCommand.class,
            CodesCommand.class,
            NewCommand.class,
            ServeCommand.class
        })
public final class Main implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    public static void main(String[] args) {
        System.exit(commandLine().execute(args));
    }

    /** The command line with its messages for wrong input: no stack trace reaches a user. */
    static CommandLine commandLine() {
        CommandLine line = new CommandLine(new Main());
        line.setOut(new PrintWriter(System.out, true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(System.err, true, StandardCharsets.UTF_8));
        line.setExecutionExceptionHandler(Main::explain);
        line.setParameterExceptionHandler(Main::explainArguments);
        return line;
    }

    /** What is wrong with the arguments, without the names of classes that the parser adds. */
    private static int explainArguments(CommandLine.ParameterException fault, String[] arguments) {
        CommandLine line = fault.getCommandLine();
        line.getErr().println(fault.getMessage().replaceAll(" to class \\S+.*| \\(\\S*Exception.*", ""));
        List<String> near = fault instanceof CommandLine.UnmatchedArgumentException unmatched
                ? unmatched.getSuggestions()
                : List.of();
        String help = "see " + line.getCommandSpec().qualifiedName() + " --help.";
        line.getErr().println("Maybe " + (near.isEmpty() ? help : String.join(" or ", near) + "; " + help));
        return ExitCodes.BAD_INPUT;
    }

    private static int explain(Exception fault, CommandLine line, CommandLine.ParseResult parsed) {
        if (fault instanceof InputException input) {
            line.getErr().println(input.getMessage());
            return ExitCodes.BAD_INPUT;
        }
        line.getErr().println("Fumewarden failed: " + fault + "\nMaybe run it again with --help, or report this line.");
        return ExitCodes.FAULT;
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getErr());
        return ExitCodes.BAD_INPUT;
    }
}
