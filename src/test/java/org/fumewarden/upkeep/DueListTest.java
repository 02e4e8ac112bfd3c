package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.model.Anchor;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Force;
import org.fumewarden.model.Frequency;
import org.fumewarden.model.Subject;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DueListTest {
    private static final Duty MONTHLY = Samples.duty(
            "monthly",
            "P1M",
            Subject.UNIT,
            "examination",
            Force.ACOP,
            Samples.when("disposable", "false"),
            Samples.when("use-mode", "routine", "emergency", "escape"));
    private static final Duty QUARTERLY = Samples.duty("quarterly", "P3M", Subject.UNIT, "examination", Force.GUIDANCE);
    private static final Duty FIT =
            Samples.duty("fit", "P1Y", Subject.WEARER_MASK, "fit-test", Force.LAW, Samples.when("face-seal", "tight"));
    private static final Duty LEAD =
            Samples.duty("lead", "P6M", Subject.WEARER, "medical/lead-blood", Force.LAW, Samples.when("agent", "lead"));

    @TempDir(factory = MemoryFolder.class)
    Path folder;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.open(folder.resolve("log.db"));
        store.append(Samples.registering(Samples.powered("U-014")), Samples.NOW);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private DueReport due(String today, Duty... duties) {
        return new DueList(store, List.of(duties), Samples.day(today), Period.ofDays(7))
                .compute(Map.of(), Optional.empty());
    }

    /** Rolling month and quarter from 10 January 2026, arithmetic by hand: 10 February and 10 April. */
    @Test
    void overlappingDutiesMergeToTheEarliestDayAndKeepEveryClause() {
        store.append(Samples.examined("U-014", "2026-01-10", Result.PASSED), Samples.NOW);
        Owing owing = due("2026-01-20", QUARTERLY, MONTHLY).owings().get(0);
        assertEquals(Optional.of(Samples.day("2026-02-10")), owing.due());
        assertEquals(
                List.of("clause of monthly", "clause of quarterly"),
                owing.duties().stream().map(d -> d.citation().clause()).toList());
        assertEquals(1, due("2026-01-20", QUARTERLY, MONTHLY).owings().size());
    }

    @Test
    void doneEarlyCountsFromTheRealDayAndNotFromTheOldDueDay() {
        store.append(Samples.examined("U-014", "2026-01-31", Result.PASSED), Samples.NOW);
        store.append(Samples.examined("U-014", "2026-02-20", Result.PASSED), Samples.NOW);
        assertEquals(
                Optional.of(Samples.day("2026-03-20")),
                due("2026-02-21", MONTHLY).owings().get(0).due());
    }

    @Test
    void whatWasNeverDoneIsDueBeforeTheFirstUse() {
        Owing owing = due("2026-03-02", MONTHLY).owings().get(0);
        assertEquals(DueStatus.BEFORE_FIRST_USE, owing.status());
        assertEquals(Optional.empty(), owing.due());
    }

    @Test
    void aFailedExaminationDischargesNothingAndTheUnitIsNotInService() {
        store.append(Samples.examined("U-014", "2026-01-10", Result.PASSED), Samples.NOW);
        store.append(Samples.examined("U-014", "2026-02-05", Result.FAILED), Samples.NOW);
        DueReport report = due("2026-02-11", MONTHLY);
        assertEquals(DueStatus.NOT_IN_SERVICE, report.owings().get(0).status());
        assertEquals(
                Optional.of(Samples.day("2026-02-10")), report.owings().get(0).due());
        assertEquals("U-014", report.closed().get(0).item());
        assertFalse(report.settled());
    }

    @Test
    void conditionsOfTheRegisterDecide() {
        store.append(Samples.registering(Samples.unit("U-020", Map.of("disposable", List.of("true")))), Samples.NOW);
        assertTrue(due("2026-03-02", MONTHLY).owings().stream()
                .noneMatch(o -> o.item().equals("U-020")));
    }

    @Test
    void aFactOfTheThingThatNobodyRecordedIsTakenToHold() {
        store.append(Samples.registering(Samples.unit("U-021", Map.of("disposable", List.of("false")))), Samples.NOW);
        Owing owing = due("2026-03-02", MONTHLY).owings().stream()
                .filter(o -> o.item().equals("U-021"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("use-mode"), owing.assumed());
    }

    @Test
    void aCircumstanceThatNobodyRecordedIsShownAsOpen() {
        store.append(Samples.registering(Samples.wearer("W-01", "Odran Pell", List.of())), Samples.NOW);
        DueReport report = due("2026-03-02", LEAD);
        assertEquals(
                List.of(new Unsettled(Subject.WEARER, "agent", List.of("W-01"), List.of("lead"))), report.unsettled());
        assertFalse(report.settled());
        DueReport known = new DueList(store, List.of(LEAD), Samples.day("2026-03-02"), Period.ofDays(7))
                .compute(Map.of("agent", List.of("manganese")), Optional.empty());
        assertTrue(known.unsettled().isEmpty() && known.owings().isEmpty());
    }

    @Test
    void aFitTestHoldsForTheModelThatWasTested() {
        store.append(Samples.registering(Samples.mask("M-1", "model A size M")), Samples.NOW);
        store.append(Samples.registering(Samples.mask("M-2", "model B size M")), Samples.NOW);
        store.append(Samples.registering(Samples.wearer("W-01", "Odran Pell", List.of("M-1", "M-2"))), Samples.NOW);
        store.append(
                new Draft(
                        "W-01",
                        Samples.day("2025-06-15"),
                        "tester",
                        new FitTest(
                                Result.PASSED,
                                "model A size M",
                                "half",
                                "quantitative",
                                "",
                                Optional.empty(),
                                Optional.empty(),
                                "",
                                "",
                                "")),
                Samples.NOW);
        DueReport report = due("2026-03-02", FIT);
        assertEquals(2, report.owings().size());
        assertEquals(DueStatus.BEFORE_FIRST_USE, report.owings().get(0).status());
        assertEquals("fit-test/model B size M", report.owings().get(0).doneBy());
        assertEquals(
                Optional.of(Samples.day("2026-06-15")), report.owings().get(1).due());
    }

    @Test
    void overdueComesFirstAndTheHorizonCutsOnlyWhatIsLater() {
        store.append(Samples.registering(Samples.powered("U-002")), Samples.NOW);
        store.append(Samples.registering(Samples.powered("U-003")), Samples.NOW);
        store.append(Samples.examined("U-014", "2026-02-25", Result.PASSED), Samples.NOW);
        store.append(Samples.examined("U-002", "2026-01-10", Result.PASSED), Samples.NOW);
        DueReport report = new DueList(store, List.of(MONTHLY), Samples.day("2026-03-02"), Period.ofDays(7))
                .compute(Map.of(), Optional.of(Samples.day("2026-03-09")));
        assertEquals(
                List.of("U-002", "U-003"),
                report.owings().stream().map(Owing::item).toList());
        assertEquals(20, report.owings().get(0).daysOver());
    }

    /** 29 CFR 1910.134(f)(1): the employee must pass; a later failure takes the earlier pass away, a later pass gives it back. */
    @Test
    void aFailedFitTestTakesTheEarlierPassAway() {
        store.append(
                Samples.registering(new Item.Mask(
                        "M-1",
                        "",
                        "model C",
                        "half",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Map.of("face-seal", List.of("tight")))),
                Samples.NOW);
        store.append(
                Samples.registering(new Item.Wearer(
                        "W-9", "Sanna Teller", "", Optional.empty(), Optional.empty(), List.of("M-1"), Map.of())),
                Samples.NOW);
        fitTest("2026-01-05", Result.PASSED);
        assertEquals(
                Optional.of(Samples.day("2027-01-05")),
                due("2026-03-01", FIT).owings().get(0).due());
        fitTest("2026-02-05", Result.FAILED);
        Owing open = due("2026-03-01", FIT).owings().get(0);
        assertEquals(DueStatus.BEFORE_FIRST_USE, open.status());
        assertEquals("failed on 2026-02-05", open.note());
        fitTest("2026-02-05", Result.PASSED);
        assertEquals(
                Optional.of(Samples.day("2027-02-05")),
                due("2026-03-01", FIT).owings().get(0).due());
    }

    private void fitTest(String on, Result result) {
        store.append(
                new Draft(
                        "W-9",
                        Samples.day(on),
                        "Odran Pell",
                        new FitTest(
                                result,
                                "model C",
                                "half",
                                "qualitative",
                                "",
                                Optional.empty(),
                                Optional.empty(),
                                "",
                                "",
                                "")),
                Samples.NOW);
    }

    /** Fitted on 10 January and never examined: overdue after 10 February, a month later (arithmetic by hand). */
    @Test
    void whatWasFittedAndNeverExaminedIsOverdueAfterOnePeriod() {
        store.append(
                Samples.registering(new Item.Unit(
                        "U-050",
                        "powered unit",
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Samples.day("2026-01-10")),
                        Map.of("disposable", List.of("false"), "use-mode", List.of("routine")))),
                Samples.NOW);
        assertEquals(
                DueStatus.BEFORE_FIRST_USE, only("2026-02-10", "U-050", MONTHLY).status());
        Owing over = only("2026-02-11", "U-050", MONTHLY);
        assertEquals(DueStatus.OVERDUE, over.status());
        assertEquals(1, over.daysOver());
    }

    /** 29 CFR 1910.1024(k)(2)(i): within 30 days; from 1 March 2026 that is 31 March (arithmetic by hand). */
    @Test
    void aFirstExamCountsFromTheAssignment() {
        Duty first = Samples.exam(
                "first",
                Frequency.ONCE,
                "P30D",
                Anchor.EXPOSURE_START,
                Subject.WEARER,
                "medical/beryllium",
                "not stated");
        Duty rolling = Samples.duty("rolling", "P2Y", Subject.WEARER, "medical/beryllium", Force.LAW);
        store.append(
                Samples.registering(new Item.Wearer(
                        "W-7",
                        "Odran Pell",
                        "",
                        Optional.of(Samples.day("2026-03-01")),
                        Optional.empty(),
                        List.of(),
                        Map.of())),
                Samples.NOW);
        Owing due = only("2026-03-20", "W-7", first, rolling);
        assertEquals(Optional.of(Samples.day("2026-03-31")), due.due());
        assertEquals(DueStatus.IN_TIME, due.status());
        assertEquals(
                DueStatus.OVERDUE, only("2026-04-01", "W-7", first, rolling).status());
    }

    @Test
    void aMaskThatIsNotRegisteredLeavesItsFitTestOpen() {
        store.append(Samples.registering(Samples.wearer("W-01", "Odran Pell", List.of("M-9"))), Samples.NOW);
        DueReport report = due("2026-03-02", FIT);
        assertEquals(
                List.of(new Unsettled(Subject.WEARER_MASK, "mask M-9", List.of("W-01"), List.of("fit"))),
                report.unsettled());
        assertFalse(report.settled());
    }

    private Owing only(String today, String item, Duty... duties) {
        List<Owing> found = due(today, duties).owings().stream()
                .filter(o -> o.item().equals(item))
                .toList();
        assertEquals(1, found.size());
        return found.get(0);
    }
}
