package org.fumewarden.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.fumewarden.report.html.Words;
import org.fumewarden.training.Mark;
import org.fumewarden.training.Round;
import org.fumewarden.training.RoundItem;
import org.fumewarden.training.Scores;
import org.fumewarden.training.Verdict;

/** Rounds on the console: numbered choices, a hint with "?", skip and stop; the end of the input stops as well. */
final class DrillConsole {
    private static final Set<String> SKIP = Set.of("-", "skip", "weiter");
    private static final Set<String> STOP = Set.of(".", "stop", "quit", "stopp");
    private static final String HINT = "?";

    private final BufferedReader in;
    private final PrintWriter out;
    private final Words words;
    private final DrillProgress progress;

    DrillConsole(BufferedReader in, PrintWriter out, Words words, DrillProgress progress) {
        this.in = in;
        this.out = out;
        this.words = words;
        this.progress = progress;
    }

    /** Asks everything that was not answered before; stops early when the trainee or the input does. */
    void run(List<Round> rounds, Scores scores) {
        List<String> earlier = progress.answers();
        int at = 0;
        if (!earlier.isEmpty()) {
            out.println(say("console.resumed", earlier.size()));
        }
        out.println(say("console.keys"));
        for (Round round : rounds) {
            if (at + round.items().size() > earlier.size()) {
                tell(round);
            }
            for (int i = 0; i < round.items().size(); i++, at++) {
                RoundItem item = round.items().get(i);
                Optional<Mark> mark = at < earlier.size()
                        ? Optional.of(marked(item, earlier.get(at)))
                        : asked(item, i + 1, round.items().size());
                if (mark.isEmpty()) {
                    out.println();
                    return;
                }
                scores.add(round.title(), item, mark.get());
            }
        }
    }

    private void tell(Round round) {
        out.println();
        out.println(round.title());
        out.println("=".repeat(round.title().length()));
        if (!round.story().isEmpty()) {
            out.println(round.story());
        }
        round.facts().forEach(f -> out.println("  - " + f));
        out.println(round.code());
    }

    private Optional<Mark> asked(RoundItem item, int number, int of) {
        out.println();
        out.println(say("console.question", number, of) + " " + item.ask());
        if (item.reads() != RoundItem.Reads.NUMBER) {
            IntStream.range(0, item.choices().size())
                    .forEach(i -> out.println(
                            "  " + (i + 1) + "  " + item.choices().get(i).says()));
        }
        while (true) {
            out.print("> ");
            out.flush();
            Optional<String> line = line();
            String answer = line.orElse(".").strip();
            if (STOP.contains(answer.toLowerCase(java.util.Locale.ROOT))) {
                return Optional.empty();
            }
            if (answer.equals(HINT)) {
                out.println("  " + item.hint());
                continue;
            }
            Mark mark = marked(item, answer);
            if (mark.verdict() == Verdict.UNREAD) {
                out.println("  " + say("console.unread", mark.says()));
                continue;
            }
            progress.add(answer);
            Scores.spoken(mark, words).forEach(l -> out.println("  " + l));
            return Optional.of(mark);
        }
    }

    private static Mark marked(RoundItem item, String answer) {
        return SKIP.contains(answer.toLowerCase(java.util.Locale.ROOT)) ? Mark.skipped() : item.mark(answer);
    }

    private Optional<String> line() {
        try {
            return Optional.ofNullable(in.readLine());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String say(String key, Object... parts) {
        return words.say("ui.training." + key, parts);
    }
}
