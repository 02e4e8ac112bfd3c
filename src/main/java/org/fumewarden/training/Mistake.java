package org.fumewarden.training;

import java.util.List;
import java.util.Optional;
import org.fumewarden.advice.Reason;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.report.html.Words;

/**
 * What is behind a wrong answer.
 *
 * @param says the sentence of the trainer
 */
public record Mistake(String id, String says) {
    private static final String TABLE = "mistakes";

    static Mistake of(String id, Words words) {
        return WordTable.rows(TABLE).stream()
                .filter(r -> r.text("id").equals(id))
                .findFirst()
                .map(r -> new Mistake(id, r.says(words.language())))
                .orElseThrow(() -> new IllegalStateException("no mistake is called " + id));
    }

    /** The mistake of somebody who names a class that these reasons close; the first in the order of the table. */
    static Optional<Mistake> behind(List<Reason> reasons, DeviceClass device, Words words) {
        return WordTable.rows(TABLE).stream()
                .filter(r -> reasons.stream().anyMatch(reason -> closes(r, reason, device)))
                .findFirst()
                .map(r -> new Mistake(r.text("id"), r.says(words.language())));
    }

    /** The reason among several that the mistake is about. */
    static Optional<Reason> decisive(List<Reason> reasons, Mistake mistake, DeviceClass device) {
        return WordTable.rows(TABLE).stream()
                .filter(r -> r.text("id").equals(mistake.id()))
                .flatMap(r -> reasons.stream().filter(reason -> closes(r, reason, device)))
                .findFirst();
    }

    private static boolean closes(WordTable.Row row, Reason reason, DeviceClass device) {
        String particle = row.row("where").optional("particle").orElse(device.particle());
        return row.words("rules").contains(reason.rule()) && particle.equals(device.particle());
    }
}
