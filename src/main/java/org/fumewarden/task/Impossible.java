package org.fumewarden.task;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Question;

/** Answers that cannot be, whatever the work is. */
final class Impossible {
    private static final BigDecimal WHOLE = BigDecimal.valueOf(100);
    private static final BigDecimal ABSOLUTE_ZERO = new BigDecimal("-273.15");

    /** In metres; the highest mountain has less. */
    private static final BigDecimal HIGHEST_PLACE = new BigDecimal("9000");

    /** Blowers give some 100 to 300 L/min, and a hood on a line at most 425 (42 CFR 84, from memory); common practice, no source. */
    private static final BigDecimal MOST_FLOW = new BigDecimal("600");

    private Impossible() {}

    /** A fault and what is wrong. */
    record Found(Fault fault, String message) {}

    /** What an amount cannot be. */
    static Optional<Found> amount(Question question, BigDecimal amount) {
        if (question.kind().equals("percent") && amount.compareTo(WHOLE) > 0) {
            return Optional.of(new Found(Fault.PERCENT, "is above 100 %"));
        }
        if (question.kind().equals("temperature") && amount.compareTo(ABSOLUTE_ZERO) < 0) {
            return Optional.of(new Found(Fault.IMPOSSIBLE, "is colder than anything can be"));
        }
        if (question.id().equals("altitude") && amount.compareTo(HIGHEST_PLACE) > 0) {
            return Optional.of(new Found(Fault.IMPOSSIBLE, "is higher than any place on earth"));
        }
        if (question.kind().equals("flow") && amount.compareTo(MOST_FLOW) > 0) {
            return Optional.of(new Found(
                    Fault.IMPOSSIBLE, "is more air than any respirator gives (at most " + MOST_FLOW + " L/min)"));
        }
        return Optional.empty();
    }

    /** Complains about a seal that was broken after the day of the work. */
    static void opened(Located place, LocalDate work) {
        if (place != null) {
            place.day()
                    .filter(work::isBefore)
                    .ifPresent(day -> place.complain(
                            Fault.IMPOSSIBLE,
                            "is after the day of the work, " + work + ": \"" + Located.shown(place.text()) + "\".",
                            "check the year, or leave it out while the seal is whole."));
        }
    }

    /** No level, since no air can hold as much. */
    static Optional<Quantities.Level> level(Located place, String says, String text) {
        place.complain(
                Fault.IMPOSSIBLE,
                says + " \"" + Located.shown(text) + "\".",
                "check the number and its unit, or write \"unknown\".");
        return Optional.empty();
    }
}
