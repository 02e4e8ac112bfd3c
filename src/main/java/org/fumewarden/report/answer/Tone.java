package org.fumewarden.report.answer;

import java.util.List;
import java.util.function.UnaryOperator;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;

/** Parts of a sheet with each text said another way: American words under American codes, figures as a language writes them. */
record Tone(UnaryOperator<String> say) {
    Part of(Part part) {
        return new Part(
                part.key(),
                say.apply(part.title()),
                part.lines().stream().map(this::of).toList());
    }

    private Line of(Line line) {
        if (line instanceof Line.Says says && says.language().isEmpty()) {
            return new Line.Says(
                    says.sign(), say.apply(says.lead()), say.apply(says.says()), says.notes(), says.language());
        }
        if (line instanceof Line.State state) {
            return new Line.State(state.word(), say.apply(state.says()));
        }
        if (line instanceof Line.Table table) {
            List<List<String>> rows =
                    table.rows().stream().map(r -> r.stream().map(say).toList()).toList();
            return new Line.Table(table.heads().stream().map(say).toList(), rows, table.numbers());
        }
        return line instanceof Line.Head head ? new Line.Head(say.apply(head.text())) : line;
    }
}
