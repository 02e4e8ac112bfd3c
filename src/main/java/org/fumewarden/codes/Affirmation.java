package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;

/**
 * A reviewer's check of a row against its document.
 *
 * @param keys keys of the rows of this line that were checked; empty when all of them were
 * @param by who checked, in the reviewer's own words
 * @param on day of the check
 * @param source what it was checked against
 */
public record Affirmation(List<String> keys, String by, LocalDate on, String source) {
    public Affirmation {
        keys = List.copyOf(keys);
    }

    /** True when the check was of the row with this key, or of the row to which this one belongs. */
    boolean covers(String key) {
        return keys.isEmpty() || keys.stream().anyMatch(k -> key.equals(k) || key.startsWith(k + "/"));
    }

    /** How well a row is known after its checks: one document read, or two that agree. */
    static Confidence confidence(Citation own, List<Affirmation> checks) {
        Set<String> documents = new HashSet<>();
        if (own.confidence() == Confidence.READ) {
            documents.add(own.source().toLowerCase(Locale.ROOT));
        }
        checks.forEach(c -> documents.add(c.source().strip().toLowerCase(Locale.ROOT)));
        if (checks.isEmpty() || own.confidence() == Confidence.CROSS_CHECKED) {
            return own.confidence();
        }
        return documents.size() > 1 ? Confidence.CROSS_CHECKED : Confidence.READ;
    }

    /** The check in words. */
    public String words() {
        return by + " on " + on + " against " + source;
    }
}
