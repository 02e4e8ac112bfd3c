package org.fumewarden.training;

import java.util.Collection;
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

    /** The one to tell when an answer holds several: the first in the order of the table. */
    static Optional<Mistake> first(Collection<String> ids, Words words) {
        return WordTable.rows(TABLE).stream()
                .map(r -> r.text("id"))
                .filter(ids::contains)
                .findFirst()
                .map(id -> of(id, words));
    }

    /** True when a reason closes a class because of what is in the air, whatever its factor and whoever wears it. */
    static boolean ofTheAir(Reason reason, DeviceClass device) {
        return WordTable.rows(TABLE).stream().anyMatch(r -> r.optional("air").isPresent() && closes(r, reason, device));
    }

    /** The reason among several that the mistake is about. */
    static Optional<Reason> decisive(List<Reason> reasons, Mistake mistake, DeviceClass device) {
        return WordTable.rows(TABLE).stream()
                .filter(r -> r.text("id").equals(mistake.id()))
                .flatMap(r -> reasons.stream().filter(reason -> closes(r, reason, device)))
                .findFirst();
    }

    private static boolean closes(WordTable.Row row, Reason reason, DeviceClass device) {
        return row.words("rules").contains(reason.rule()) && ClassWords.fits(device, row.row("where"));
    }
}
