package org.fumewarden.upkeep;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.fumewarden.codes.Fault;
import org.fumewarden.model.Anchor;

/** Whether a day can be the day of a deed. */
final class Plausible {
    /** Where a day begins first: whoever enters a deed there is a day ahead of the clock of another machine. */
    private static final ZoneOffset FIRST = ZoneOffset.ofHours(14);

    /** Respirators and their log are younger; an earlier year is a slip of the pen. */
    private static final int EARLIEST_YEAR = 1950;

    private Plausible() {}

    /** The last day that had begun anywhere at a moment. */
    static LocalDate lastDay(Instant moment) {
        return moment.atOffset(FIRST).toLocalDate();
    }

    /** Refuses days to come, and days before the item was made. */
    static void day(Draft draft, Instant recorded, Optional<Item> known) {
        past("on", draft.on(), recorded);
        if (draft.details() instanceof Details.Registration registration) {
            made(registration.item()).ifPresent(d -> past("manufactured", d, recorded));
            registration.item().anchored(Anchor.FIRST_FITTED_DATE).ifPresent(d -> past("first-fitted", d, recorded));
            return;
        }
        known.flatMap(Plausible::made).filter(made -> made.isAfter(draft.on())).ifPresent(made -> {
            throw StoreException.about(
                            "on",
                            "is " + draft.on() + ", but \"" + draft.item() + "\" was made on " + made + ".",
                            "check the year, and the day of manufacture in the register.")
                    .as(Fault.EARLY);
        });
    }

    private static Optional<LocalDate> made(Item item) {
        if (item instanceof Item.Unit unit) {
            return unit.manufactured();
        }
        if (item instanceof Item.Mask mask) {
            return mask.manufactured();
        }
        if (item instanceof Item.Filter filter) {
            return filter.manufactured();
        }
        return item instanceof Item.Battery battery ? battery.manufactured() : Optional.empty();
    }

    private static void past(String field, LocalDate day, Instant recorded) {
        if (day.isAfter(lastDay(recorded))) {
            throw StoreException.about(
                            field,
                            "is " + day + ", a day in the future, anywhere on earth.",
                            "check the year and the clock of this computer; record it once it is done.")
                    .as(Fault.FUTURE);
        }
        if (day.getYear() < EARLIEST_YEAR) {
            throw StoreException.about(field, "is " + day + ", before " + EARLIEST_YEAR + ".", "check the year.");
        }
    }

    /** Whether a deed was dated after the moment at which it was written down. */
    static boolean ahead(LogEntry entry) {
        return entry.on().isAfter(lastDay(entry.recorded()));
    }
}
