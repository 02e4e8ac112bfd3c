package org.fumewarden.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Advice;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.Judged;
import org.fumewarden.model.Measure;
import org.fumewarden.model.SampleNote;
import org.fumewarden.report.upkeep.CsvSheet;
import org.fumewarden.whatif.Drill;

/** A training round in words, and its score sheet. */
public final class DrillText {
    private DrillText() {}

    /** A mark with the task it belongs to. */
    public record Scored(String task, Drill.Mark mark) {}

    /** The task as a trainee sees it: everything that was answered, nothing that was concluded. */
    public static String task(Advice advice, String story, Vocabulary vocabulary) {
        StringBuilder out = new StringBuilder();
        out.append('\n').append(advice.title()).append('\n');
        out.append(StringUtils.repeat('=', advice.title().length())).append('\n');
        out.append(story).append('\n');
        for (Input input : advice.inputs()) {
            String line = line(input, vocabulary);
            if (!line.isEmpty()) {
                out.append("  - ").append(line).append('\n');
            }
        }
        out.append("Code: ").append(advice.codeUsed().name()).append('\n');
        out.append("Classes: ")
                .append(advice.respirators().stream().map(r -> r.deviceClass()).collect(Collectors.joining(", ")))
                .append("\n\n");
        return out.toString();
    }

    private static String line(Input input, Vocabulary vocabulary) {
        if (input instanceof Answer answer) {
            return ask(answer.question(), vocabulary) + " "
                    + vocabulary
                            .question(answer.question())
                            .map(q -> vocabulary.choices(q).getOrDefault(answer.value(), answer.value()))
                            .orElse(answer.value());
        }
        if (input instanceof Measure measure) {
            return ask(measure.question(), vocabulary) + " "
                    + measure.value().stripTrailingZeros().toPlainString() + " " + measure.unit();
        }
        if (input instanceof Exposure exposure) {
            return vocabulary.name(exposure.agent()) + ": " + exposure.level().toPlainString() + " "
                    + exposure.unit().symbol() + ", " + exposure.averaging().words();
        }
        if (input instanceof Judged judged) {
            return vocabulary.name(judged.agent()) + ": judged at or below its limit (" + judged.because() + ")";
        }
        if (input instanceof SampleNote note) {
            return vocabulary.name(note.agent()) + ": " + note.sentence();
        }
        return "";
    }

    private static String ask(String question, Vocabulary vocabulary) {
        return vocabulary.question(question).map(q -> q.ask()).orElse(question);
    }

    /** The marks of one round. */
    public static String marks(List<Drill.Mark> marks) {
        return marks.stream()
                .map(m -> (m.right() ? "  right: " : "  not right: ") + m.part().ask() + " - you said \"" + m.given()
                        + "\"; " + m.because() + "\n")
                .collect(Collectors.joining());
    }

    /** The total of all rounds. */
    public static String total(List<Scored> sheet) {
        long right = sheet.stream().filter(s -> s.mark().right()).count();
        return "\nScore: " + right + " of " + sheet.size() + ".\n";
    }

    /** The score sheet as CSV; cells that a spreadsheet would run as a formula are defused. */
    public static String csv(String trainee, List<Scored> sheet) {
        return CsvSheet.write(
                List.of("trainee", "task", "question", "answer", "right"),
                sheet.stream()
                        .map(s -> List.of(
                                trainee,
                                s.task(),
                                s.mark().part().name().toLowerCase(Locale.ROOT),
                                s.mark().given(),
                                s.mark().right() ? "yes" : "no"))
                        .toList());
    }
}
