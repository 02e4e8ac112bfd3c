package org.fumewarden.report.answer;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.model.Row;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Sign;
import org.fumewarden.trail.Premise;

/** Who affirmed which value behind the answer. */
record Affirmed(Advice advice, List<Row> rows, Spoken spoken) {
    List<Line> lines() {
        Set<String> read = advice.trail().steps().stream()
                .flatMap(step -> step.premises().stream())
                .map(Premise::address)
                .collect(Collectors.toSet());
        return rows.stream()
                .map(Row::ref)
                .filter(ref -> !ref.affirmed().isEmpty() && read.contains(ref.address()))
                .map(ref ->
                        (Line) new Line.Says(Sign.NONE, spoken.say("sheet.affirmed", ref.address(), ref.affirmed())))
                .toList();
    }
}
