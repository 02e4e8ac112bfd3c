package org.fumewarden.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
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
        footer = {
            "",
            "Example:",
            "  fumewarden advise scenarios/tours/stainless-brackets.yaml",
            "Where only the program was unpacked, the files of scenarios/tours are in examples."
        })
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
            "differences",
            "schema",
            "check",
            "rules",
            "register",
            "entry",
            "due",
            "record",
            "calendar",
            "store",
            "codes",
            "new",
            "serve");

    /** Names that commands had, by what they are called now. */
    private static final Map<String, String> OLD = Map.of("log", "entry", "diff", "differences");

    @Spec
    private CommandSpec spec;

    public static void main(String[] given) {
        String[] args = renamed(given);
        Ahead.start(List.of(args));
        System.exit(commandLine(args).execute(args));
    }

    /** The arguments with the name of the command as it is now; an old name is said to be one. */
    private static String[] renamed(String[] given) {
        String[] args = given.clone();
        if (args.length > 0 && OLD.containsKey(args[0])) {
            args[0] = OLD.get(args[0]);
            System.err.println("\"" + given[0] + "\" is an old name of this command. Write \"" + args[0]
                    + "\": the next release does without the old name.");
        }
        return args;
    }

    /** The command line with all commands. */
    static CommandLine commandLine() {
        CommandLine line = new CommandLine(new Main());
        COMMANDS.forEach(name -> line.addSubcommand(command(name)));
        return speaking(line);
    }

    /**
     * The command line for these arguments, with its messages for wrong input: no stack trace reaches a user. Making all commands
     * ready takes longer than most of them run.
     */
    static CommandLine commandLine(String... arguments) {
        boolean named = arguments.length > 0 && COMMANDS.contains(arguments[0]);
        CommandLine line = named
                ? speaking(
                        new CommandLine(CommandSpec.create().name("fumewarden")).addSubcommand(command(arguments[0])))
                : commandLine();
        String language = asked(arguments);
        return language.equals("en") ? line : HelpWords.of(line, Speech.of(Words.in(language), Map.of()));
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
        Optional<CommandLine.UnmatchedArgumentException> unmatched = Optional.of(fault)
                .filter(CommandLine.UnmatchedArgumentException.class::isInstance)
                .map(CommandLine.UnmatchedArgumentException.class::cast);
        Speech speech = Speech.of(Words.in(asked(arguments)), Map.of());
        line.getErr()
                .println(speech.quoting(unmatched
                        .map(u -> unknown(u.getUnmatched().get(0), line))
                        .orElseGet(() -> Arguments.told(fault))));
        List<String> near = unmatched
                .map(u -> Nearest.to(u.getUnmatched().get(0), known(u)))
                .orElse(List.of());
        String help = "See " + line.getCommandSpec().qualifiedName() + " --help.";
        line.getErr()
                .println(speech.quoting(
                        (near.isEmpty() ? "" : "Did you mean \"" + String.join("\" or \"", near) + "\"? ") + help));
        return ExitCodes.BAD_INPUT;
    }

    /** The language that was asked for, although the arguments could not be read. */
    private static String asked(String[] arguments) {
        String all = String.join(" ", arguments);
        return Words.LANGUAGES.stream()
                .filter(l -> all.matches("(?s).*--language[ =]" + l + "\\b.*"))
                .findFirst()
                .orElse("en");
    }

    /** The words that an unknown one may have meant; another option is meant by one that is written nearly so. */
    private static Collection<String> known(CommandLine.UnmatchedArgumentException unmatched) {
        String word = unmatched.getUnmatched().get(0);
        LevenshteinDistance slip = new LevenshteinDistance(2);
        return word.startsWith("-")
                ? unmatched.getCommandLine().getCommandSpec().optionsMap().keySet().stream()
                        .filter(o -> slip.apply(word, o) >= 0)
                        .toList()
                : unmatched.getSuggestions();
    }

    private static String unknown(String word, CommandLine line) {
        String name = line.getCommandSpec().qualifiedName();
        String shown = "\"" + Located.shown(word) + "\"";
        if (word.startsWith("-")) {
            return name + " has no option " + shown + ".";
        }
        return line.getParent() == null ? "There is no command " + shown + "." : name + " does not take " + shown + ".";
    }

    /** Says what went wrong, in words alone, and gives the exit code for it. */
    static int explain(Exception fault, CommandLine line) {
        if (fault instanceof InputException input) {
            line.getErr().println(told(input, line));
            return ExitCodes.BAD_INPUT;
        }
        if (fault instanceof StoreException store) {
            return StoreOption.explain(store, speech(line), line.getErr());
        }
        if (fault instanceof IOException || fault instanceof UncheckedIOException) {
            Throwable disk = fault.getCause() instanceof IOException inner ? inner : fault;
            line.getErr()
                    .println("The disk or the network failed: " + disk.getMessage()
                            + "\nFree some space, check that the disk is there, then run it again.");
            return ExitCodes.FAULT;
        }
        line.getErr().println("Fumewarden failed: " + fault + "\nRun it again with --help, or report this line.");
        return ExitCodes.FAULT;
    }

    /** What is wrong with a file, in the language that was asked for. */
    private static String told(InputException input, CommandLine line) {
        Speech speech = speech(line);
        return speech.words().ofRuleBase()
                ? input.getMessage()
                : input.problems().stream().map(p -> p.text(speech::quoting)).collect(Collectors.joining("\n"));
    }

    /** The language that was asked for. */
    private static Speech speech(CommandLine line) {
        String language =
                line.getParseResult() == null ? "en" : line.getParseResult().matchedOptionValue("--language", "en");
        return Speech.of(Words.in(Words.LANGUAGES.contains(language) ? language : "en"), Map.of());
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getErr());
        return ExitCodes.BAD_INPUT;
    }
}
