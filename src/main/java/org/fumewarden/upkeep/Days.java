package org.fumewarden.upkeep;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

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

    /** The k-th day of a series, counted from the anchor each time so that month ends do not drift. */
    public static LocalDate due(LocalDate anchor, Period period, int k) {
        return anchor.plus(period.multipliedBy(k));
    }

    /** The first {@code count} days of a series. */
    public static List<LocalDate> series(LocalDate anchor, Period period, int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(k -> due(anchor, period, k))
                .toList();
    }

    /** The last day on which a record must still be there; a day without a twin moves to the first of the next month. */
    public static LocalDate keepThrough(LocalDate anchor, Period period) {
        LocalDate months = anchor.plusMonths(period.toTotalMonths());
        boolean clamped = months.getDayOfMonth() < anchor.getDayOfMonth();
        return months.plusDays(clamped ? 1 : 0).plusDays(period.getDays());
    }

    /** The first day on which a record may go. */
    public static LocalDate mayGoFrom(LocalDate keepThrough) {
        return keepThrough.plusDays(1);
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

    /** The n-th working day after a day; Saturdays, Sundays and the given holidays do not count. */
    public static LocalDate workingDaysAfter(LocalDate day, int count, Set<LocalDate> holidays) {
        LocalDate current = day;
        for (int left = count; left > 0; ) {
            current = current.plusDays(1);
            boolean rest = current.getDayOfWeek() == DayOfWeek.SATURDAY
                    || current.getDayOfWeek() == DayOfWeek.SUNDAY
                    || holidays.contains(current);
            left -= rest ? 0 : 1;
        }
        return current;
    }

    /**
     * Whether each calendar month from the first to the last deed holds one.
     *
     * <p>A milder reading of "once a month" that leaves gaps of up to 61 days. Only a marked site policy may use it; due days
     * never do.
     */
    public static boolean oneInEachMonth(List<LocalDate> done) {
        Set<YearMonth> months = done.stream().map(YearMonth::from).collect(java.util.stream.Collectors.toSet());
        return !months.isEmpty()
                && months.stream()
                        .allMatch(m -> months.contains(m.plusMonths(1))
                                || months.stream().noneMatch(n -> n.isAfter(m)));
    }

    /**
     * The recurrence rule of RFC 5545 that gives the same days as {@link #series}, for periods in months or years.
     *
     * <p>BYMONTHDAY=31 alone would skip short months (RFC 5545 section 3.3.10: invalid dates are ignored); the list with
     * BYSETPOS=-1 takes the last day there is.
     */
    public static String recurrence(LocalDate anchor, Period period) {
        long months = period.toTotalMonths();
        if (months <= 0 || period.getDays() != 0) {
            throw StoreException.refused(
                    "no monthly rule gives the period " + period + ".", "a period in months or years.");
        }
        String every = months == 1 ? "" : ";INTERVAL=" + months;
        int day = anchor.getDayOfMonth();
        if (day <= 28) {
            return "FREQ=MONTHLY" + every + ";BYMONTHDAY=" + day;
        }
        String days = String.join(
                ",", IntStream.rangeClosed(28, day).mapToObj(String::valueOf).toList());
        return "FREQ=MONTHLY" + every + ";BYMONTHDAY=" + days + ";BYSETPOS=-1";
    }
}
