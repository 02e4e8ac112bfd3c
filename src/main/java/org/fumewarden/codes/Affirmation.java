package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;

/**
 * Somebody's comparison of a row with its document. It holds for the value that was compared and for no other.
 *
 * @param row address of the row
 * @param value what {@link CellHash} makes of the value that was compared
 * @param by who compared
 * @param on day of the comparison
 * @param document what it was compared with
 * @param place where in the document
 */
public record Affirmation(String row, String value, String by, LocalDate on, String document, String place) {

    /** How well a row is known after its checks: one document read, or two that agree. */
    static Confidence confidence(Citation own, List<Affirmation> checks) {
        if (checks.isEmpty() || own.confidence() == Confidence.CROSS_CHECKED) {
            return own.confidence();
        }
        Set<String> documents = new HashSet<>();
        if (own.confidence() == Confidence.READ) {
            documents.add(own.source().toLowerCase(Locale.ROOT));
        }
        checks.forEach(c -> documents.add(c.document().strip().toLowerCase(Locale.ROOT)));
        return documents.size() > 1 ? Confidence.CROSS_CHECKED : Confidence.READ;
    }

    /** Who saw the value where. */
    String seen() {
        return by + " on " + on + ", " + place;
    }

    /** The check in words. */
    public String words() {
        return by + " on " + on + " against " + document + ", " + place;
    }
}
