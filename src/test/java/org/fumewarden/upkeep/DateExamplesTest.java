package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.Period;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Anchor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked days. "Computed" days follow from the convention that Dodds v Walker [1981] 1 WLR 1027 (HL) states: the period ends on
 * the day of the same number, or on the last day of a shorter month. The 1999 letters of the US regulator on annual fit tests
 * and training say: before or on the anniversary.
 */
class DateExamplesTest {
    private static LocalDate day(String text) {
        return LocalDate.parse(text);
    }

    @ParameterizedTest(name = "{0}: {1} + {2}")
    @CsvSource({
        // id, last done, period, due, today, status, days over
        "COSHH monthly examination, 2025-01-31, P1M, 2025-02-28, 2025-03-01, OVERDUE, 1",
        "COSHH occasional-use set, 2025-11-30, P3M, 2026-02-28, 2026-02-27, IN_TIME, 0",
        "COSHH schedule 4 abrading, 2025-08-31, P6M, 2026-02-28, 2026-02-28, DUE_TODAY, 0",
        "L143 yearly fit test, 2025-06-15, P1Y, 2026-06-15, 2026-06-15, DUE_TODAY, 0",
        "HSG53 three-monthly air test, 2025-11-29, P3M, 2026-02-28, 2026-03-05, OVERDUE, 5",
        "1910.1025(j)(2)(i)(B) blood lead, 2025-12-31, P2M, 2026-02-28, 2026-03-02, OVERDUE, 2",
        "leap day plus a year, 2024-02-29, P1Y, 2025-02-28, 2025-03-01, OVERDUE, 1",
        "leap day reached, 2023-11-30, P3M, 2024-02-29, 2024-02-29, DUE_TODAY, 0"
    })
    void dueDaysEndOnTheSameNumberOrOnTheLastDay(
            String duty, LocalDate done, Period period, LocalDate due, LocalDate today, DueStatus status, long over) {
        assertEquals(due, Days.due(done, period));
        assertEquals(status, Days.status(due, today, Period.ZERO));
        assertEquals(over, Days.daysOver(due, today));
    }

    @Test
    void thereIsNoGraceOfASingleDay() {
        LocalDate due = day("2026-06-15");
        assertEquals(DueStatus.DUE_TODAY, Days.status(due, due, Period.ofDays(7)));
        assertEquals(DueStatus.OVERDUE, Days.status(due, due.plusDays(1), Period.ofDays(7)));
        assertEquals(DueStatus.DUE_SOON, Days.status(due, due.minusDays(7), Period.ofDays(7)));
        assertEquals(DueStatus.IN_TIME, Days.status(due, due.minusDays(8), Period.ofDays(7)));
    }

    /** House of Lords in Dodds v Walker: a notice of 30 September 1978, four months, ends on 30 January 1979. */
    @Test
    void theHouseOfLordsCountsFourMonths() {
        LocalDate end = Days.due(day("1978-09-30"), Period.ofMonths(4));
        assertEquals(day("1979-01-30"), end);
        assertEquals(1, Days.daysOver(end, day("1979-01-31")));
    }

    /** Letter of 23 December 1998 on the meaning of annual: tested on 1 February 1999, again by 1 February 2000. */
    @Test
    void annualMeansTheAnniversary() {
        assertEquals(day("2000-02-01"), Days.due(day("1999-02-01"), Period.ofYears(1)));
    }

    /** java.time worked values: 31 January 2020 plus a month, then minus a month. */
    @Test
    void goingBackDoesNotUndoAClampedMonth() {
        LocalDate forth = Days.due(day("2020-01-31"), Period.ofMonths(1));
        assertEquals(day("2020-02-29"), forth);
        assertEquals(day("2020-01-29"), forth.minusMonths(1));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // COSHH regulation 9(4): five years from a leap day has no twin, so one day more
        "COSHH reg 9(4), 2024-02-29, P5Y, 2029-03-01",
        "1910.1020(d)(1)(i), 2031-08-31, P30Y, 2061-08-31",
        "month without a twin, 2025-01-31, P1M, 2025-03-01",
        "leap day with a twin, 2024-02-29, P4Y, 2028-02-29"
    })
    void retentionRoundsUpWhereDueDaysRoundDown(String clause, LocalDate made, Period period, LocalDate through) {
        assertEquals(through, Days.keepThrough(made, period));
    }

    /** Two readings of "once a month": the rolling one finds a breach that the calendar one permits. */
    @Test
    void aCalendarMonthEachIsTheMilderReading() {
        List<LocalDate> done = List.of(day("2025-07-01"), day("2025-08-31"));
        assertEquals(61, ChronoUnit.DAYS.between(done.get(0), done.get(1)));
        LocalDate rolling = Days.due(done.get(0), Period.ofMonths(1));
        assertEquals(day("2025-08-01"), rolling);
        assertEquals(30, Days.daysOver(rolling, done.get(1)));
    }

    /** BGR/GUV-R 190 (2011) section 3.3.2: from manufacture, unless the first fitting is documented. */
    @Test
    void partsAgeFromManufactureUnlessFittingIsDocumented() {
        Optional<LocalDate> made = Optional.of(day("2021-02-28"));
        Optional<LocalDate> fitted = Optional.of(day("2022-01-10"));
        Period four = Period.ofYears(4);
        assertEquals(
                day("2026-01-10"),
                Days.due(Given.dayOfPart(Anchor.MANUFACTURE_DATE, made, fitted).orElseThrow(), four));
        assertEquals(
                day("2025-02-28"),
                Days.due(
                        Given.dayOfPart(Anchor.MANUFACTURE_DATE, made, Optional.empty())
                                .orElseThrow(),
                        four));
    }

    /** Convention of the trade, from memory: a mark of month and year counts to its last day. */
    @Test
    void aMarkOfMonthAndYearCountsToItsLastDay() {
        assertEquals(day("2028-02-29"), Days.endOf(YearMonth.of(2028, 2)));
    }
}
