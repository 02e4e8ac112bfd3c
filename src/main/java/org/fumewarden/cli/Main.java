package org.fumewarden.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.InputException;
import org.fumewarden.upkeep.StoreException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command {@code fumewarden}. */
@Command(
        name = "fumewarden",
        mixinStandardHelpOptions = true,
        version = Main.VERSION,
        description = {
            "Advises on respiratory protection for hot work, with the clause behind each sentence.",
            "Local codes and a licensed or competent person decide."
        },
        footer = {"", "Example:", "  fumewarden advise scenarios/tours/stainless-brackets.yaml"})
public final class Main implements Callable<Integer> {
    static final String VERSION = "fumewarden 0.1.0";

    /** In the order of the help. */
    private static final List<String> COMMANDS = List.of(
            "advise",
            "batch",
            "compare",
            "exposure",
            "sweep",
            "explain",
            "drill",
            "endurance",
            "audit",
            "review",
            "diff",
            "schema",
            "check",
            "rules",
            "register",
            "log",
            "due",
            "record",
            "calendar",
            "store",
            "codes",
            "new",
            "serve");

    @Spec
    private CommandSpec spec;

    public static void main(String[] args) {
        Ahead.start(List.of(args));
        System.exit(commandLine(args).execute(args));
    }

    /** The command line with its messages for wrong input: no stack trace reaches a user. */
    static CommandLine commandLine() {
        CommandLine line = new CommandLine(new Main());
        COMMANDS.forEach(name -> line.addSubcommand(command(name)));
        return speaking(line);
    }

    /** The command line for these arguments: making all commands ready takes longer than most of them run. */
    private static CommandLine commandLine(String... arguments) {
        boolean named = arguments.length > 0 && COMMANDS.contains(arguments[0]);
        return named
                ? speaking(
                        new CommandLine(CommandSpec.create().name("fumewarden")).addSubcommand(command(arguments[0])))
                : commandLine();
    }

    /** The class of a command, which bears its name. */
    private static Class<?> command(String name) {
        try {
            return Class.forName(Main.class.getPackageName() + "." + StringUtils.capitalize(name) + "Command");
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static CommandLine speaking(CommandLine line) {
        line.setOut(new PrintWriter(System.out, true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(System.err, true, StandardCharsets.UTF_8));
        line.setExecutionExceptionHandler((fault, command, parsed) -> explain(fault, command));
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

    /** Says what went wrong, in words alone, and gives the exit code for it. */
    static int explain(Exception fault, CommandLine line) {
        if (fault instanceof InputException input) {
            line.getErr().println(input.getMessage());
            return ExitCodes.BAD_INPUT;
        }
        if (fault instanceof StoreException store) {
            return StoreOption.explain(store, line.getErr());
        }
        if (fault instanceof IOException || fault instanceof UncheckedIOException) {
            Throwable disk = fault.getCause() instanceof IOException inner ? inner : fault;
            line.getErr()
                    .println("The disk or the network failed: " + disk.getMessage()
                            + "\nMaybe free some space, check that the disk is there, then run it again.");
            return ExitCodes.FAULT;
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
