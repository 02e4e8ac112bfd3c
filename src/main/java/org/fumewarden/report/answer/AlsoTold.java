package org.fumewarden.report.answer;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.codes.Question;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Input;
import org.fumewarden.model.Measure;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Sign;

/** Every answer of the task that the page does not repeat, so that none it rests on goes unread. */
record AlsoTold(Advice advice, Spoken spoken) {
    List<Line> lines() {
        StatePart page = new StatePart(advice, spoken);
        return advice.inputs().stream().flatMap(input -> line(input, page)).toList();
    }

    private Stream<Line> line(Input input, StatePart page) {
        if (input instanceof Answer answer) {
            return page.repeats(answer) ? Stream.empty() : line(answer.question(), inWords(answer));
        }
        return input instanceof Measure measure && !page.repeats(measure)
                ? line(measure.question(), Spoken.amount(measure))
                : Stream.empty();
    }

    private Stream<Line> line(String id, String answer) {
        return spoken
                .vocabulary()
                .question(id)
                .map(q -> (Line)
                        new Line.Says(Sign.ITEM, spoken.words().sayOr("ask." + id, spoken.told(q.ask())), answer + "."))
                .stream();
    }

    private String inWords(Answer answer) {
        String kind = spoken.vocabulary()
                .question(answer.question())
                .map(Question::kind)
                .orElse("");
        return switch (kind) {
            case "flag" -> spoken.say(Boolean.parseBoolean(answer.value()) ? "ui.yes" : "ui.no");
            case "day" -> spoken.day(LocalDate.parse(answer.value()));
            default -> spoken.answer(answer.question(), answer.value());
        };
    }
}
