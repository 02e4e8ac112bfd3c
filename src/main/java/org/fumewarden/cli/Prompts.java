package org.fumewarden.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;

/** Asks on a terminal, one line for each field. */
final class Prompts {
    private final BufferedReader in;
    private final PrintWriter out;

    Prompts(BufferedReader in, PrintWriter out) {
        this.in = in;
        this.out = out;
    }

    /** The terminal, when there is a person at both ends of it. */
    static Optional<Prompts> ofTerminal() {
        Console console = System.console();
        return console == null
                ? Optional.empty()
                : Optional.of(new Prompts(new BufferedReader(console.reader()), console.writer()));
    }

    /** The answer; empty when the field may be left out and was. */
    String ask(String name, String hint, boolean needed) {
        for (; ; ) {
            out.print(name + (hint.isEmpty() ? "" : " (" + hint + ")") + (needed ? "" : ", Enter to leave out") + ": ");
            out.flush();
            String answer = line().strip();
            if (!answer.isEmpty() || !needed) {
                return answer;
            }
            out.println("This one is needed.");
        }
    }

    /** One of a few words. */
    String choose(String name, List<String> words) {
        for (; ; ) {
            String answer = ask(name, String.join(", ", words), true).toLowerCase(Locale.ROOT);
            if (words.contains(answer)) {
                return answer;
            }
            out.println("It cannot be \"" + answer + "\".");
        }
    }

    private String line() {
        try {
            String line = in.readLine();
            if (line == null) {
                throw new InputException(new Problem(
                        "terminal", 0, "", "ended before the last answer.", "nothing was written; start again."));
            }
            return line;
        } catch (IOException e) {
            throw new InputException(new Problem(
                    "terminal", 0, "", "cannot be read (" + e.getMessage() + ").", "use a file with --file."));
        }
    }
}
