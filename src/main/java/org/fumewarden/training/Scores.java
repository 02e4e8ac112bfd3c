package org.fumewarden.training;

import java.util.ArrayList;
import java.util.List;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.upkeep.CsvSheet;

/** The marks of a training hour, and what they come to. */
public final class Scores {
    private final List<Scored> sheet = new ArrayList<>();

    /** A mark with the task and question that it belongs to. */
    public record Scored(String task, RoundItem item, Mark mark) {}

    public void add(String task, RoundItem item, Mark mark) {
        sheet.add(new Scored(task, item, mark));
    }

    public List<Scored> all() {
        return List.copyOf(sheet);
    }

    public long right() {
        return sheet.stream().filter(s -> s.mark().right()).count();
    }

    /** The sheet as CSV; cells that a spreadsheet would run as a formula are defused. */
    public String csv(String trainee) {
        return CsvSheet.write(
                List.of("trainee", "task", "question", "answer", "right", "mistake"),
                sheet.stream()
                        .map(s -> List.of(
                                trainee,
                                s.task(),
                                s.item().kind(),
                                s.mark().given(),
                                s.mark().verdict() == Verdict.SKIPPED
                                        ? "skipped"
                                        : s.mark().right() ? "yes" : "no",
                                s.mark().mistake().map(Mistake::id).orElse("")))
                        .toList());
    }

    /** A mark as it is read out, one sentence a line. */
    public static List<String> spoken(Mark mark, Words words) {
        List<String> lines = new ArrayList<>();
        if (mark.verdict() == Verdict.SKIPPED) {
            lines.add(words.say("ui.training.skipped"));
            return lines;
        }
        String verdict = words.say(mark.right() ? "ui.training.right" : "ui.training.not");
        lines.add(mark.mistake().map(m -> verdict + " " + m.says()).orElse(verdict));
        if (!mark.says().isEmpty()) {
            lines.add(mark.says());
        }
        String clause = mark.clause().isEmpty() ? "" : " [" + mark.clause() + "]";
        boolean said = mark.because().equals(mark.instead());
        if (!mark.because().isEmpty() && !said) {
            lines.add(words.say("ui.training.because", mark.because()) + clause);
        }
        if (!mark.instead().isEmpty()) {
            lines.add(words.say("ui.training.instead", mark.instead()) + (said ? clause : ""));
        }
        return lines;
    }
}
