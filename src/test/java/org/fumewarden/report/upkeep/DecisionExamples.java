package org.fumewarden.report.upkeep;

import static org.fumewarden.report.upkeep.WorkedExample.TODAY;
import static org.fumewarden.report.upkeep.WorkedExample.book;
import static org.fumewarden.report.upkeep.WorkedExample.duty;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import org.fumewarden.duties.Judging;
import org.fumewarden.model.Duty;
import org.fumewarden.upkeep.Days;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.DueStatus;
import org.fumewarden.upkeep.Examination;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Result;
import org.fumewarden.upkeep.Store;
import org.junit.jupiter.api.function.Executable;

/** Decisions that follow from the shipped duties and levels. */
final class DecisionExamples {
    private DecisionExamples() {}

    static List<WorkedExample> all() {
        return List.of(
                example(
                        "d01",
                        "29 CFR 1910.134(f)(7): 100 for half masks",
                        () -> assertEquals(
                                Result.FAILED,
                                fit("us", "half", "quantitative", "99").result())),
                example(
                        "d03",
                        "29 CFR 1910.134(f)(7): 500 for full face masks",
                        () -> assertEquals(
                                Result.PASSED,
                                fit("us", "full", "quantitative", "1500").result())),
                example(
                        "d05",
                        "INDG479: no qualitative test of a full face mask",
                        () -> assertEquals(
                                Result.FAILED,
                                fit("gb", "full", "qualitative, taste", "").result())),
                example(
                        "d07",
                        "29 CFR 1910.134(f)(6): a qualitative test serves ten times the limit, not thirty",
                        () -> {
                            Judging.Judged judged = judged("us", "fit-test", fitForm("full", "qualitative, taste", ""));
                            assertTrue(judged.says().contains("up to 10 times"), judged.says());
                            assertTrue(judged.says().contains("fit factor of 500"), judged.says());
                        }),
                example(
                        "d09",
                        "29 CFR 1910.134(i)(1)(ii), grade D",
                        () -> assertEquals(Result.PASSED, air("us", "20.9", "8", "450", "0.3"))),
                example(
                        "d11",
                        "EN 12021:2014: oxygen from 20 %",
                        () -> assertEquals(Result.FAILED, air("gb", "19.8", "2", "400", "0.1"))),
                example(
                        "d13",
                        "29 CFR 1910.134(i)(1)(ii): carbon dioxide to 1000 ppm",
                        () -> assertEquals(Result.PASSED, air("us", "20.9", "2", "800", "0.1"))),
                example(
                        "d15",
                        "29 CFR 1910.134(i)(1)(ii): oil to 5 mg/m3",
                        () -> assertEquals(Result.PASSED, air("us", "20.9", "2", "400", "1.0"))),
                example(
                        "d17",
                        "29 CFR 1910.134(i)(6)-(7): a high-temperature alarm alone owes a watch on carbon monoxide",
                        DecisionExamples::oiledCompressor),
                example(
                        "d19",
                        "COSHH reg 9(4), L5 para 184: flow is asked of powered sets and breathing apparatus only",
                        DecisionExamples::halfMaskWithoutFlow),
                example(
                        "d21",
                        "29 CFR 1910.134(h)(3)(i)(A) and (iv): routine sets are inspected without a record",
                        DecisionExamples::routineSet),
                example(
                        "d23",
                        "COSHH reg 9(3): disposables owe no examination, and still a fit test",
                        DecisionExamples::disposable),
                example(
                        "d25",
                        "29 CFR 1910.134(h)(3)(iii): a cylinder is refilled at 90 % of the maker's pressure",
                        () -> {
                            Judging.Judged judged = judged("us", "examination", cylinder("264"));
                            assertEquals(Result.FAILED, judged.details().result());
                            assertTrue(judged.says().contains("88 %: refill it"), judged.says());
                            assertTrue(((Examination) judged.details()).action().contains("1910.134(h)(3)(iii)"));
                        }),
                example(
                        "d27",
                        "COSHH Sch 4: dry abrading over 12 hours a week, six months instead of fourteen",
                        DecisionExamples::dryGrinding),
                example(
                        "d29",
                        "CLAW 2002 reg 9: steady and low results allow twelve months, alkyls never",
                        DecisionExamples::steadyLead));
    }

    private static WorkedExample example(String id, String source, Executable check) {
        return new WorkedExample(id, source, check);
    }

    /** A full cylinder of 300 bar. */
    static Map<String, String> cylinder(String bar) {
        return Map.of(
                "result", "passed", "condition", "sound", "cylinder-pressure", bar, "cylinder-full-pressure", "300");
    }

    private static Map<String, String> fitForm(String face, String method, String factor) {
        return Map.of("result", "passed", "model", "mask M", "method", method, "face", face, "fit-factor", factor);
    }

    private static Details fit(String code, String face, String method, String factor) throws Exception {
        return judged(code, "fit-test", fitForm(face, method, factor)).details();
    }

    private static Result air(String code, String oxygen, String monoxide, String dioxide, String oil)
            throws Exception {
        return judged(
                        code,
                        "air-test",
                        Map.of(
                                "result",
                                "passed",
                                "topic",
                                "breathing",
                                "oxygen",
                                oxygen,
                                "carbon-monoxide",
                                monoxide,
                                "carbon-dioxide",
                                dioxide,
                                "oil",
                                oil))
                .details()
                .result();
    }

    static Judging.Judged judged(String code, String kind, Map<String, String> form) throws Exception {
        try (Store store = Store.open(WorkedExample.store())) {
            return new Judging(store, () -> book(code)).of(kind, "X", form);
        }
    }

    private static DueStatus since(Duty duty, int months) {
        LocalDate due = Days.due(TODAY.minusMonths(months), duty.period().orElseThrow());
        return Days.status(due, TODAY, Period.ZERO);
    }

    private static void oiledCompressor() {
        Map<String, List<String>> oiled = Map.of(
                "air-delivery",
                List.of("airline"),
                "air-source",
                List.of("compressor-fixed"),
                "compressor-oil-lubricated",
                List.of("true"));
        Duty watch = duty("us", "us-air-co-oil");
        assertTrue(watch.surelyUnder(oiled));
        assertTrue(watch.citation().clause().contains("(i)(7)") && watch.what().contains("monitor often enough"));
        assertTrue(duty("us", "us-air-co-dry").ruledOutBy(oiled));
    }

    private static void halfMaskWithoutFlow() throws Exception {
        try (Store store = Store.open(WorkedExample.store())) {
            Instant now = Instant.parse("2026-03-02T09:00:00Z");
            Map<String, List<String>> unpowered = Map.of(
                    "air-delivery",
                    List.of("unpowered"),
                    "face-seal",
                    List.of("tight"),
                    "filter-kind",
                    List.of("particle"));
            Item mask = Forms.item("mask", Map.of("id", "M-1", "model", "half mask, size M"), unpowered);
            store.append(
                    Draft.registering(
                            Forms.item(
                                    "site",
                                    Map.of(
                                            "id",
                                            "site",
                                            "employer",
                                            "Tarn Haven Fabrication",
                                            "address",
                                            "Quay Road 1"),
                                    Map.of()),
                            TODAY,
                            "stores"),
                    now);
            store.append(Draft.registering(mask, TODAY, "stores"), now);
            Details found = Forms.details(
                    "examination",
                    Map.of("result", "passed", "condition", "sound", "filter-condition", "new", "signature", "O. P."));
            store.append(new Draft("M-1", TODAY, "Odran Pell", found), now);
            ExaminationRecord record =
                    ExaminationRecord.of(store, mask, book("gb").duties(), LocalDate.parse("2026-03-02"));
            assertEquals(List.of(), record.gaps(record.examinations().get(0)));
        }
    }

    private static void routineSet() {
        Map<String, List<String>> routine = Map.of("use-mode", List.of("routine"), "air-delivery", List.of("powered"));
        assertFalse(duty("us", "us-inspect-routine").recorded());
        assertFalse(duty("us", "us-inspect-routine").ruledOutBy(routine));
        assertTrue(duty("us", "us-inspect-emergency").ruledOutBy(routine));
        assertTrue(duty("us", "us-inspect-emergency").recorded());
        assertTrue(duty("us", "us-inspect-scba").ruledOutBy(routine));
    }

    private static void disposable() {
        Map<String, List<String>> worn = Map.of("disposable", List.of("true"), "face-seal", List.of("tight"));
        assertTrue(duty("gb", "gb-rpe-exam-monthly").ruledOutBy(worn));
        assertFalse(duty("gb", "gb-rpe-exam-disposable").recorded());
        assertFalse(duty("gb", "gb-fit-test-periodic").ruledOutBy(worn));
    }

    private static void dryGrinding() {
        Duty abrading = duty("gb", "gb-lev-sch4-abrading");
        Map<String, List<String>> room =
                Map.of("lev-present", List.of("true"), "lev-process", List.of("metal-abrading-dry-over-12h-week"));
        assertFalse(abrading.ruledOutBy(room));
        assertEquals(DueStatus.OVERDUE, since(abrading, 8));
        assertTrue(duty("gb", "gb-lev-14m").ruledOutBy(room));
        assertTrue(since(duty("gb", "gb-lev-14m"), 8) != DueStatus.OVERDUE);
    }

    private static void steadyLead() {
        Map<String, List<String>> steady = Map.of(
                "agent", List.of("lead"), "lead-alkyl", List.of("false"), "lead-air-steady-and-low", List.of("true"));
        assertTrue(duty("gb", "gb-lead-air-3m").ruledOutBy(steady));
        Duty yearly = duty("gb", "gb-lead-air-12m");
        assertFalse(yearly.ruledOutBy(steady));
        assertEquals(DueStatus.DUE_TODAY, since(yearly, 12));
        assertTrue(yearly.ruledOutBy(Map.of("lead-alkyl", List.of("true"))));
    }
}
