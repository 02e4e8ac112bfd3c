package org.fumewarden.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.FutureTask;
import org.fumewarden.engine.RuleBase;

/**
 * Loads the rules of a short command on a second core while the command line is still being read, for both take about as long.
 * Written without streams and patterns, for nothing else runs yet and each of them costs some milliseconds at its first use. Which
 * code a task names is guessed from its text; a wrong guess costs time and nothing else.
 */
final class Ahead {
    private static final Set<String> COMMANDS = Set.of("advise", "explain", "sweep");
    private static final String KEY = "code:";

    /** In JSON it may stand anywhere in a line. */
    private static final String QUOTED = "\"code\":";

    private static final long LARGEST = 100_000;

    private Ahead() {}

    /** Starts loading for the arguments of a command, if they let guess a code; what is wrong the command will say. */
    static void start(List<String> arguments) {
        guess(arguments).ifPresent(code -> {
            Thread loader = new Thread(new FutureTask<>(() -> RuleBase.shipped(code)), "tables of " + code);
            loader.setDaemon(true);
            loader.start();
        });
    }

    /** The code that the arguments give, or the task file among them names. */
    static Optional<String> guess(List<String> arguments) {
        if (arguments.isEmpty() || !COMMANDS.contains(arguments.get(0)) || has(arguments, "--rules")) {
            return Optional.empty();
        }
        if (has(arguments, "--code")) {
            for (String argument : arguments) {
                if (argument.startsWith("--code=")) {
                    return Optional.of(argument.substring("--code=".length()));
                }
            }
            return Optional.empty();
        }
        for (String argument : arguments.subList(1, arguments.size())) {
            Optional<String> named = argument.startsWith("-") ? Optional.empty() : named(argument);
            if (named.isPresent()) {
                return named;
            }
        }
        return Optional.empty();
    }

    private static boolean has(List<String> arguments, String option) {
        for (String argument : arguments) {
            if (argument.equals(option) || argument.startsWith(option + "=")) {
                return true;
            }
        }
        return false;
    }

    private static Optional<String> named(String argument) {
        try {
            Path file = Path.of(argument);
            if (!Files.isRegularFile(file) || Files.size(file) > LARGEST) {
                return Optional.empty();
            }
            String text = Files.readString(file);
            int quoted = text.indexOf(QUOTED);
            if (quoted >= 0) {
                return Optional.of(word(text.substring(quoted + QUOTED.length())));
            }
            for (String line : text.split("\n")) {
                if (line.strip().startsWith(KEY)) {
                    return Optional.of(word(line.strip().substring(KEY.length())));
                }
            }
        } catch (IOException | IllegalArgumentException e) {
            // Not a text that can be read here: the command will say so itself.
        }
        return Optional.empty();
    }

    /** What stands first in a value, without quotes. */
    private static String word(String value) {
        String bare = value.strip();
        int from = bare.startsWith("\"") ? 1 : 0;
        int to = from;
        while (to < bare.length() && (Character.isLetter(bare.charAt(to)) || bare.charAt(to) == '-')) {
            to++;
        }
        return bare.substring(from, to);
    }
}
