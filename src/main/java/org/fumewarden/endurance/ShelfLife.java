package org.fumewarden.endurance;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * The dates that end the life of a gas filter whether it is used or not.
 *
 * @param expires last day printed on the filter
 * @param opened day the seal was broken, empty while sealed
 * @param monthsOpened longest time after that
 */
public record ShelfLife(LocalDate expires, Optional<LocalDate> opened, int monthsOpened) {
    private static final double MINUTES_PER_DAY = 1440;

    public ShelfLife {
        if (expires == null || opened == null || monthsOpened < 0) {
            throw new BadFigure(
                    "A shelf life needs a date.",
                    "Enter the expiry date. If it cannot be read, do not use the filter.");
        }
    }

    /** Last day of use. */
    public LocalDate lastDay() {
        return opened.map(day -> day.plusMonths(monthsOpened))
                .filter(day -> day.isBefore(expires))
                .orElse(expires);
    }

    /** Clock minutes to the end of the last day, which no use time can exceed. */
    public Reckoning<TimeBound> bound(LocalDate today) {
        if (opened.filter(day -> day.isAfter(today)).isPresent()) {
            return Reckoning.refuse(
                    Soundness.INVALID_VALUE,
                    "The filter is said to be opened on " + opened.get() + ", after " + today + ".",
                    "Check day and month.");
        }
        if (today.isAfter(lastDay())) {
            return Reckoning.refuse(
                    Soundness.EXPIRED,
                    "The filter could be used until " + lastDay() + ", and it is " + today + ".",
                    "Fit one with a later date.");
        }
        long days = ChronoUnit.DAYS.between(today, lastDay()) + 1;
        return Reckoning.of(new TimeBound(
                BoundKind.SHELF_LIFE, days * MINUTES_PER_DAY, "Shelf life ends with " + lastDay() + ".", false));
    }
}
