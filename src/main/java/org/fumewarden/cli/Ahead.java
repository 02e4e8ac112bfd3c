package org.fumewarden.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fumewarden.engine.RuleBase;

/**
 * Loads the rules of a short command on a second core while the command line is still being read, for both take about as long. Which
 * code a task names is guessed from its text; a wrong guess costs time and nothing else, for what was loaded is used
 * for its own code only.
 */
final class Ahead {
    private static final Set<String> COMMANDS = Set.of("advise", "explain", "sweep");
    private static final Pattern CODE = Pattern.compile("\\s*\"?code\"?\\s*:\\s*\"?([a-z-]+)\"?.*");
    private static final long LARGEST = 100_000;

    private static volatile Optional<Ahead> started = Optional.empty();

    private final String code;
    private final FutureTask<RuleBase> base;

    private Ahead(String code) {
        this.code = code;
        this.base = new FutureTask<>(() -> RuleBase.shipped(code));
        Thread loader = new Thread(base, "tables of " + code);
        loader.setDaemon(true);
        loader.start();
    }

    /** Starts loading for the arguments of a command, if they let guess a code. */
    static void start(List<String> arguments) {
        started = guess(arguments).map(Ahead::new);
    }

    /** The shipped rules of a code, those loaded ahead if they are the ones. */
    static RuleBase shipped(String code) {
        Optional<Ahead> ahead = started.filter(a -> a.code.equals(code));
        return ahead.isPresent() ? ahead.get().loaded() : RuleBase.shipped(code);
    }

    private RuleBase loaded() {
        try {
            return base.get();
        } catch (ExecutionException e) {
            // Whatever is wrong, loading again says so in the right place.
            return RuleBase.shipped(code);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return RuleBase.shipped(code);
        }
    }

    /** The code that the arguments give, or the task file among them names. */
    static Optional<String> guess(List<String> arguments) {
        if (arguments.isEmpty() || !COMMANDS.contains(arguments.get(0)) || has(arguments, "--rules")) {
            return Optional.empty();
        }
        if (has(arguments, "--code")) {
            return arguments.stream()
                    .filter(a -> a.startsWith("--code="))
                    .map(a -> a.substring("--code=".length()))
                    .findFirst();
        }
        return arguments.stream()
                .skip(1)
                .filter(a -> !a.startsWith("-"))
                .flatMap(a -> named(a).stream())
                .findFirst();
    }

    private static boolean has(List<String> arguments, String option) {
        return arguments.stream().anyMatch(a -> a.equals(option) || a.startsWith(option + "="));
    }

    private static Optional<String> named(String argument) {
        try {
            Path file = Path.of(argument);
            if (!Files.isRegularFile(file) || Files.size(file) > LARGEST) {
                return Optional.empty();
            }
            try (Stream<String> lines = Files.lines(file)) {
                return lines.map(CODE::matcher)
                        .filter(Matcher::matches)
                        .map(m -> m.group(1))
                        .findFirst();
            }
        } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
            // Not a text that can be read here: the command will say so itself.
            return Optional.empty();
        }
    }
}
