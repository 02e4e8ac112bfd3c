package org.fumewarden.task;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.codes.Located;

/** When a container was tested for gas: a time of the day of the work, or that day and a time; words may follow a comma. */
final class GasTestTime {
    static final String QUESTION = "gas-test-time";
    private static final Pattern FORM = Pattern.compile(
            "(?:(\\d{4}-\\d{2}-\\d{2})[ T])?(?:[01]?\\d|2[0-3])[:.][0-5]\\d(?: ?(?:h|am|pm|Uhr))?(?:[,;].*)?",
            Pattern.CASE_INSENSITIVE);

    private GasTestTime() {}

    /** Complains about words without a time, and about another day than that of the work: gas comes back overnight. */
    static void check(Located place, LocalDate work) {
        Matcher form = FORM.matcher(place.text().strip());
        if (!form.matches()) {
            place.complain(
                    "gives no time of day: \"" + Located.shown(place.text()) + "\".",
                    "write the time, such as \"07:40\", or the day and the time, such as \"" + work + " 07:40\".");
        } else if (Optional.ofNullable(form.group(1))
                .filter(day -> !day.equals(work.toString()))
                .isPresent()) {
            place.complain(
                    "is not of the day of the work, " + work + ": \"" + Located.shown(place.text())
                            + "\". A gas test of another day proves nothing.",
                    "test again just before the work, and give that time.");
        }
    }
}
