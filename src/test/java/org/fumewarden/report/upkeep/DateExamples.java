package org.fumewarden.report.upkeep;

import static org.fumewarden.report.upkeep.WorkedExample.duty;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.fortuna.ical4j.model.Recur;
import org.fumewarden.upkeep.Days;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.DueStatus;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Retention;
import org.fumewarden.upkeep.Store;

/** Days that were worked by hand, or that a court, a regulator or a standard gives. */
final class DateExamples {
    private DateExamples() {}

    static List<WorkedExample> all() {
        return List.of(
                due(
                        "c01",
                        "COSHH reg 9, L5 monthly examination",
                        "gb-rpe-exam-monthly",
                        "2025-01-31",
                        "2025-03-01",
                        "2025-02-28",
                        1),
                due(
                        "c03",
                        "L5 paras 181-183, occasional use",
                        "gb-rpe-exam-occasional",
                        "2025-11-30",
                        "2026-02-27",
                        "2026-02-28",
                        0),
                due(
                        "c05",
                        "COSHH Sch 4, dry abrading",
                        "gb-lev-sch4-abrading",
                        "2025-08-31",
                        "2026-02-28",
                        "2026-02-28",
                        0),
                due("c07", "L143 yearly fit test", "gb-fit-test-asbestos", "2025-06-15", "2026-06-15", "2026-06-15", 0),
                due(
                        "c09",
                        "HSG53 three-monthly air test",
                        "gb-air-quality-3m",
                        "2025-11-29",
                        "2026-03-05",
                        "2026-02-28",
                        5),
                due(
                        "c11",
                        "29 CFR 1910.1025(j)(2)(i)(B)",
                        "us-lead-blood-high",
                        "2025-12-31",
                        "2026-03-02",
                        "2026-02-28",
                        2),
                new WorkedExample("c13", "COSHH reg 9(4): a leap day without a twin rounds up", () -> {
                    Map<String, String> found = Map.of("result", "passed", "condition", "sound");
                    Item unit = Forms.item("unit", Map.of("id", "U-1", "description", "set"), Map.of());
                    kept("2029-03-01", "gb", "gb-records-form", unit, "examination", "2024-02-29", found);
                }),
                new WorkedExample(
                        "c15",
                        "29 CFR 1910.1020(d)(1)(i): employment plus 30 years",
                        () -> kept(
                                "2061-08-31",
                                "us",
                                "us-keep-medical",
                                wearer("2031-08-31"),
                                "medical",
                                "2025-06-15",
                                Map.of("result", "passed", "topic", "clearance"))),
                new WorkedExample(
                        "c17",
                        "29 CFR 1910.1025(n)(2): the later of 2065-06-15 and 2050-01-01",
                        () -> kept(
                                "2065-06-15",
                                "us",
                                "us-lead-blood-routine",
                                wearer("2030-01-01"),
                                "medical",
                                "2025-06-15",
                                Map.of("result", "passed", "topic", "lead-blood"))),
                series(
                        "c19",
                        "RFC 5545 section 3.3.10",
                        "gb-rpe-exam-monthly",
                        "2025-01-31",
                        "2025-02-28",
                        "2025-03-31",
                        "2025-04-30",
                        "2025-05-31",
                        "2025-06-30",
                        "2025-07-31"),
                series(
                        "c21",
                        "COSHH reg 9(2)(a), 14 months",
                        "gb-lev-14m",
                        "2024-12-31",
                        "2026-02-28",
                        "2027-04-30",
                        "2028-06-30",
                        "2029-08-31"),
                new WorkedExample("c23", "L5 'at least once a month': rolling, not one in each calendar month", () -> {
                    List<LocalDate> done = List.of(day("2025-07-01"), day("2025-08-31"));
                    LocalDate rolling = next("gb-rpe-exam-monthly", "2025-07-01");
                    assertEquals(61, ChronoUnit.DAYS.between(done.get(0), done.get(1)));
                    assertEquals(day("2025-08-01"), rolling);
                    assertEquals(30, Days.daysOver(rolling, done.get(1)));
                }),
                new WorkedExample(
                        "c25", "BGR/GUV-R 190 (2011) 3.3.2: from manufacture unless the fitting is documented", () -> {
                            Map<String, String> part =
                                    Map.of("id", "M-1", "model", "half mask", "manufactured", "2021-02-28");
                            Map<String, String> fitted = new java.util.HashMap<>(part);
                            fitted.put("first-fitted", "2022-01-10");
                            assertEquals(Optional.of(day("2026-01-10")), replaced(fitted));
                            assertEquals(Optional.of(day("2025-02-28")), replaced(part));
                        }),
                new WorkedExample("c27", "L5, HSG53: the earliest of two examinations is the next visit", () -> {
                    LocalDate monthly = next("gb-rpe-exam-monthly", "2026-01-10");
                    LocalDate air = next("gb-air-quality-3m", "2026-01-10");
                    assertEquals(List.of(day("2026-02-10"), day("2026-04-10")), List.of(monthly, air));
                    assertEquals(
                            day("2026-02-10"),
                            Stream.of(air, monthly).min(LocalDate::compareTo).orElseThrow());
                }),
                new WorkedExample(
                        "p01", "Dodds v Walker [1981] 1 WLR 1027 (HL): four months from 30 September 1978", () -> {
                            LocalDate end = Days.due(day("1978-09-30"), Period.ofMonths(4));
                            assertEquals(day("1979-01-30"), end);
                            assertEquals(1, Days.daysOver(end, day("1979-01-31")));
                        }),
                new WorkedExample(
                        "p03",
                        "OSHA letter of 23 December 1998: annual means before or on the anniversary",
                        () -> assertEquals(day("2000-02-01"), next("us-fit-test", "1999-02-01"))),
                new WorkedExample("p05", "java.time: a clamped month is not undone", () -> {
                    LocalDate forth = Days.due(day("2020-01-31"), Period.ofMonths(1));
                    assertEquals(day("2020-02-29"), forth);
                    assertEquals(day("2020-01-29"), forth.minusMonths(1));
                }),
                new WorkedExample(
                        "p07",
                        "RFC 5545 section 3.3.10: a plain monthly rule skips short months, ours does not",
                        () -> {
                            LocalDate start = day("2018-08-31");
                            assertEquals(
                                    days("2018-08-31", "2018-10-31", "2018-12-31"),
                                    new Recur<LocalDate>("FREQ=MONTHLY").getDates(start, start, day("2019-01-01")));
                            assertEquals(
                                    days("2018-09-30", "2018-10-31", "2018-11-30", "2018-12-31"),
                                    series(start, Period.ofMonths(1), 4));
                        }),
                new WorkedExample("p09", "CAR 2012 reg 22(1)-(2): not more than two years before the exposure", () -> {
                    LocalDate start = WorkedExample.TODAY;
                    assertTrue(next(
                                    "gb-asbestos-medical-licensed",
                                    start.minusMonths(25).toString())
                            .isBefore(start));
                    assertFalse(next(
                                    "gb-asbestos-medical-licensed",
                                    start.minusMonths(24).toString())
                            .isBefore(start));
                }));
    }

    private static LocalDate day(String text) {
        return LocalDate.parse(text);
    }

    private static List<LocalDate> days(String... texts) {
        return Stream.of(texts).map(LocalDate::parse).toList();
    }

    private static LocalDate next(String id, String last) {
        return Days.due(day(last), duty(id.substring(0, 2), id).period().orElseThrow());
    }

    /** Status without any grace: overdue from the first day after. */
    private static WorkedExample due(
            String id, String source, String duty, String last, String today, String due, long over) {
        return new WorkedExample(id, source, () -> {
            LocalDate reckoned = next(duty, last);
            assertEquals(day(due), reckoned);
            DueStatus status = Days.status(reckoned, day(today), Period.ZERO);
            DueStatus expected =
                    over > 0 ? DueStatus.OVERDUE : today.equals(due) ? DueStatus.DUE_TODAY : DueStatus.IN_TIME;
            assertEquals(expected, status);
            assertEquals(over, Days.daysOver(reckoned, day(today)));
        });
    }

    /** Due days counted from the anchor each time, so that month ends do not drift. */
    private static WorkedExample series(String id, String source, String duty, String anchor, String... expected) {
        return new WorkedExample(id, source, () -> {
            Period period = duty(duty.substring(0, 2), duty).period().orElseThrow();
            assertEquals(days(expected), series(day(anchor), period, expected.length));
        });
    }

    private static List<LocalDate> series(LocalDate anchor, Period period, int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(k -> Days.due(anchor, period.multipliedBy(k)))
                .toList();
    }

    private static Item wearer(String end) {
        return Forms.item("wearer", Map.of("id", "W-1", "name", "Odran Pell", "employment-end", end), Map.of());
    }

    private static void kept(
            String through, String code, String duty, Item item, String kind, String on, Map<String, String> values)
            throws Exception {
        try (Store store = Store.open(WorkedExample.store())) {
            store.append(
                    Draft.registering(item, day("2020-01-01"), "stores"),
                    day("2020-01-01").atStartOfDay().toInstant(ZoneOffset.UTC));
            store.append(
                    new Draft(item.id(), day(on), "nurse", Forms.details(kind, values)),
                    day(on).atTime(12, 0).toInstant(ZoneOffset.UTC));
            Retention.Kept record =
                    new Retention(store, List.of(duty(code, duty))).of(item).get(1);
            assertEquals(Optional.of(day(through)), record.keepThrough());
            assertFalse(record.mayGo(day(through)));
            assertTrue(record.mayGo(day(through).plusDays(1)));
        }
    }

    /** Four years, as the tables of the rule give for the part, from the day that the register gives. */
    private static Optional<LocalDate> replaced(Map<String, String> part) {
        return Forms.item("mask", part, Map.of())
                .anchored(duty("de", "de-interval-anchor").anchor())
                .map(from -> Days.due(from, Period.ofYears(4)));
    }
}
