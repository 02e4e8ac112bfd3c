package org.fumewarden.report.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.upkeep.Days;
import org.fumewarden.upkeep.DueStatus;
import org.fumewarden.upkeep.Duty;
import org.junit.jupiter.api.Test;

/** Decisions that follow from the shipped duties, with the clause beside each. */
class DecisionExamplesTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-03-02");

    private static Duty duty(String code, String id) {
        return DutyBook.of(CodeBook.read(RuleFolder.shipped(), code), TODAY).duties().stream()
                .filter(d -> d.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static DueStatus since(Duty duty, int months) {
        LocalDate due = Days.due(TODAY.minusMonths(months), duty.period().orElseThrow());
        return Days.status(due, TODAY, Period.ZERO);
    }

    /** CAR 2012 regulation 22(1)-(2): not more than two years before the exposure. */
    @Test
    void aMedicalOfTwentyFiveMonthsAgoIsTooOldForLicensedAsbestosWork() {
        Duty medical = duty("gb", "gb-asbestos-medical-licensed");
        assertEquals(DueStatus.OVERDUE, since(medical, 25));
        assertEquals(DueStatus.DUE_TODAY, since(medical, 24));
        assertTrue(medical.clause().contains("reg 22"));
    }

    /** COSHH schedule 4: dry abrading of metal for more than 12 hours a week, six months instead of fourteen. */
    @Test
    void extractionOfDryGrindingIsOverdueAfterEightMonths() {
        Duty abrading = duty("gb", "gb-lev-sch4-abrading");
        Map<String, List<String>> room =
                Map.of("lev-present", List.of("true"), "lev-process", List.of("metal-abrading-dry-over-12h-week"));
        assertFalse(abrading.ruledOutBy(room));
        assertEquals(DueStatus.OVERDUE, since(abrading, 8));
        assertTrue(duty("gb", "gb-lev-14m").ruledOutBy(room));
        assertTrue(since(duty("gb", "gb-lev-14m"), 8) != DueStatus.OVERDUE);
    }

    /** COSHH regulation 9(3): disposables need no examination record; the fit test of a tight one stays owed. */
    @Test
    void aDisposableOwesNoExaminationAndStillAFitTest() {
        Map<String, List<String>> worn = Map.of("disposable", List.of("true"), "face-seal", List.of("tight"));
        assertTrue(duty("gb", "gb-rpe-exam-monthly").ruledOutBy(worn));
        assertFalse(duty("gb", "gb-rpe-exam-disposable").recorded());
        assertFalse(duty("gb", "gb-fit-test-periodic").ruledOutBy(worn));
    }

    /** CLAW regulation 9 (read in its Northern Ireland twin): steady and low results allow twelve months, alkyls never. */
    @Test
    void steadyLowLeadResultsAllowTwelveMonths() {
        Map<String, List<String>> steady = Map.of(
                "agent", List.of("lead"), "lead-alkyl", List.of("false"), "lead-air-steady-and-low", List.of("true"));
        assertTrue(duty("gb", "gb-lead-air-3m").ruledOutBy(steady));
        Duty yearly = duty("gb", "gb-lead-air-12m");
        assertFalse(yearly.ruledOutBy(steady));
        assertEquals(DueStatus.DUE_TODAY, since(yearly, 12));
        assertTrue(yearly.ruledOutBy(Map.of("lead-alkyl", List.of("true"))));
    }

    /** 29 CFR 1910.134(h)(3)(i)(A) and (iv): routine sets are inspected without a record, emergency sets with one. */
    @Test
    void aRoutineSetOwesNoWrittenInspection() {
        Map<String, List<String>> routine = Map.of("use-mode", List.of("routine"), "air-delivery", List.of("powered"));
        assertFalse(duty("us", "us-inspect-routine").recorded());
        assertFalse(duty("us", "us-inspect-routine").ruledOutBy(routine));
        assertTrue(duty("us", "us-inspect-emergency").ruledOutBy(routine));
        assertTrue(duty("us", "us-inspect-emergency").recorded());
        assertTrue(duty("us", "us-inspect-scba").ruledOutBy(routine));
    }

    /** 29 CFR 1910.134(i)(7): with a high-temperature alarm only, carbon monoxide is monitored; (i)(6) is for the others. */
    @Test
    void anOilLubricatedCompressorOwesAWatchOnCarbonMonoxide() {
        Map<String, List<String>> oiled =
                Map.of("air-source", List.of("compressor-fixed"), "compressor-oil-lubricated", List.of("true"));
        Duty watch = duty("us", "us-air-co-oil");
        assertTrue(watch.surelyUnder(oiled));
        assertTrue(watch.clause().contains("(i)(7)") && watch.what().contains("monitor often enough"));
        assertTrue(duty("us", "us-air-co-dry").ruledOutBy(oiled));
    }
}
