package org.fumewarden.advice;

import java.util.List;
import org.fumewarden.model.Act;
import org.fumewarden.model.Row;
import org.fumewarden.trail.Step;
import org.fumewarden.trail.Trail;

/** The short sentences of the page that is read, for what the rules concluded about this task. */
public final class Acts {
    private Acts() {}

    /**
     * The sentences of a part, in the order of their table, each once.
     *
     * @param rows those in force on the day
     */
    public static List<Act> of(String part, Trail trail, List<Row> rows) {
        return rows.stream()
                .filter(r -> r instanceof Act act && act.part().equals(part))
                .map(Act.class::cast)
                .filter(act -> trail.steps().stream().filter(Step::stands).anyMatch(s -> act.answers(s.conclusion())))
                .toList();
    }
}
