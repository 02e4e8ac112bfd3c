package org.fumewarden.report.answer;

import java.util.List;
import java.util.Optional;
import org.fumewarden.advice.Acts;
import org.fumewarden.advice.Advice;
import org.fumewarden.model.Act;
import org.fumewarden.model.Row;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;

/** What to do before the arc is struck, and when to leave. */
record ActsPart(Advice advice, List<Row> rows, Spoken spoken) {

    /** A language may name the lists of one code. */
    private String key(Act act) {
        String own = "act." + act.id() + "." + advice.codeUsed().id();
        return spoken.words().all().containsKey(own) ? own : "act." + act.id();
    }

    Optional<Part> write(String part, String key, Sign sign) {
        List<Line> lines = Acts.of(part, advice, rows).stream()
                .map(act -> (Line)
                        (act.ref().changed().isEmpty()
                                ? spoken.translated(sign, key(act), act.says())
                                : new Line.Says(sign, spoken.say("act.changed", act.says()))))
                .toList();
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Part(key, spoken.say("page." + key), lines));
    }
}
