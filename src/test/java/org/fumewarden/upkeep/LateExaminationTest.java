package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Duty;
import org.fumewarden.model.DutyCondition;
import org.fumewarden.model.Force;
import org.fumewarden.model.Subject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A circumstance that nobody recorded leaves the examination open only where it could make it late. */
class LateExaminationTest {
    private static final DutyCondition CONFINED = Samples.when("confined-space", "true");
    private static final Duty MONTHLY = Samples.duty("monthly", "P1M", Subject.UNIT, "examination", Force.ACOP);

    @TempDir(factory = MemoryFolder.class)
    Path folder;

    private Path file;

    @BeforeEach
    void examined() {
        file = folder.resolve("yard.db");
        try (Store store = Store.open(file)) {
            store.append(Samples.registering(Samples.powered("U-1")), Samples.NOW);
            store.append(Samples.examined("U-1", "2026-02-10", Result.PASSED), Samples.NOW);
        }
    }

    private LateExamination on(String day, Duty... duties) {
        try (Store store = Store.read(file)) {
            return LateExamination.of(store, List.of(duties), "U-1", LocalDate.parse(day));
        }
    }

    @Test
    void aDutyOfTheSamePeriodMovesNoDay() {
        LateExamination in = on(
                "2026-03-10",
                MONTHLY,
                Samples.duty("rescue", "P1M", Subject.UNIT, "examination", Force.ACOP, CONFINED));
        assertEquals(Optional.empty(), in.against());
        assertEquals(Optional.of(LocalDate.parse("2026-03-10")), in.due());
    }

    @Test
    void aShorterPeriodThatMayApplyIsNamedOnceItMatters() {
        Duty weekly = Samples.duty("rescue", "P7D", Subject.UNIT, "examination", Force.ACOP, CONFINED);
        assertEquals(Optional.empty(), on("2026-02-17", MONTHLY, weekly).against());
        LateExamination open = on("2026-02-18", MONTHLY, weekly);
        assertEquals(List.of("confined-space"), open.lacking());
        assertTrue(open.against().orElseThrow().endsWith("does not state: confined space."), open.toString());
    }

    @Test
    void whatIsLateAnywayIsLate() {
        LateExamination late = on(
                "2026-03-11",
                MONTHLY,
                Samples.duty("rescue", "P7D", Subject.UNIT, "examination", Force.ACOP, CONFINED));
        assertTrue(late.late().isPresent());
        assertEquals(List.of(), late.lacking());
    }

    @Test
    void theLastFlowIsThatOfTheLastEntryThatHolds() {
        try (Store store = Store.open(file)) {
            assertEquals(
                    Optional.of(new BigDecimal("171")),
                    LastFlow.of(store, "U-1", LocalDate.parse("2026-03-01")).map(LastFlow::flow));
            assertEquals(Optional.empty(), LastFlow.of(store, "U-1", LocalDate.parse("2026-02-09")));
            LogEntry check = store.append(
                    new Draft(
                            "U-1",
                            LocalDate.parse("2026-02-20"),
                            "Odran Pell",
                            new Details.BeforeUseCheck(
                                    Result.PASSED,
                                    List.of(),
                                    Optional.of(new BigDecimal("165")),
                                    Optional.empty(),
                                    "")),
                    Samples.NOW);
            assertEquals(
                    Optional.of(new BigDecimal("165")),
                    LastFlow.of(store, "U-1", LocalDate.parse("2026-02-20")).map(LastFlow::flow));
            store.append(
                    new Draft(
                            "U-1",
                            LocalDate.parse("2026-02-20"),
                            "Odran Pell",
                            new Details.Correction(check.sequence(), "another unit", Optional.empty())),
                    Samples.NOW);
            assertEquals(
                    Optional.of(new BigDecimal("171")),
                    LastFlow.of(store, "U-1", LocalDate.parse("2026-03-01")).map(LastFlow::flow));
        }
    }
}
