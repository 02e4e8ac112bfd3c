package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;

/**
 * Arithmetic of due days.
 *
 * <p>A month is a calendar month with the day of the event left out: it ends on the day of the same number, or on the last day
 * of a shorter month (Dodds v Walker [1981] 1 WLR 1027). No day is moved for a weekend. There is no grace.
 */
public final class Days {
    private Days() {}

    /** The last day in time. */
    public static LocalDate due(LocalDate anchor, Period period) {
        return anchor.plus(period);
    }

    /** The last day on which a record must still be there; a day without a twin moves to the first of the next month. */
    public static LocalDate keepThrough(LocalDate anchor, Period period) {
        LocalDate months = anchor.plusMonths(period.toTotalMonths());
        boolean clamped = months.getDayOfMonth() < anchor.getDayOfMonth();
        return months.plusDays(clamped ? 1 : 0).plusDays(period.getDays());
    }

    /** Days after the due day; zero on it and before it. */
    public static long daysOver(LocalDate due, LocalDate today) {
        return Math.max(0, ChronoUnit.DAYS.between(due, today));
    }

    /** Where today stands to a due day. */
    public static DueStatus status(LocalDate due, LocalDate today, Period warning) {
        if (today.isAfter(due)) {
            return DueStatus.OVERDUE;
        }
        if (today.equals(due)) {
            return DueStatus.DUE_TODAY;
        }
        return today.isBefore(due.minus(warning)) ? DueStatus.IN_TIME : DueStatus.DUE_SOON;
    }

    /** The day to which a mark of month and year counts: its last. */
    public static LocalDate endOf(YearMonth mark) {
        return mark.atEndOfMonth();
    }
}
