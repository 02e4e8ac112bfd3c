package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The air flow of a unit as the log last has it.
 *
 * @param flow in litres per minute
 * @param minimum of the maker, as the entry gives it
 */
public record LastFlow(LocalDate on, long entry, BigDecimal flow, Optional<BigDecimal> minimum) {

    /** The last flow that was measured up to a day, by an entry that holds. */
    public static Optional<LastFlow> of(Store store, String unit, LocalDate day) {
        List<Long> superseded = store.superseded(unit);
        return store.entriesOf(unit).stream()
                .filter(e -> !superseded.contains(e.sequence()) && !e.on().isAfter(day) && !Plausible.ahead(e))
                .flatMap(e -> measured(e).stream())
                .max(Comparator.comparing(LastFlow::on).thenComparing(LastFlow::entry));
    }

    private static Optional<LastFlow> measured(LogEntry entry) {
        Details details = entry.effective().orElse(entry.details());
        if (details instanceof Examination found) {
            return found.flow().map(f -> new LastFlow(entry.on(), entry.sequence(), f, found.minimumFlow()));
        }
        return details instanceof Details.BeforeUseCheck check
                ? check.flow().map(f -> new LastFlow(entry.on(), entry.sequence(), f, check.minimumFlow()))
                : Optional.empty();
    }
}
