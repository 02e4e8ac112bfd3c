package org.fumewarden.report.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import org.fumewarden.duties.Judging;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.Examination;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Result;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 29 CFR 1910.134(h)(3)(iii): cylinders are refilled when the pressure falls to 90 % of what the maker recommends. */
class CylinderLevelTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}: {1} of 300 bar -> {2}")
    @CsvSource({
        "us, 264, FAILED",
        "us, 270, FAILED",
        "us, 270.1, PASSED",
        "us, 300, PASSED",
        "us, 0, FAILED",
        // no level in these tables: the examiner's word stands
        "gb, 264, PASSED"
    })
    void ninetyPercentDecides(String code, String bar, Result result) throws Exception {
        assertEquals(
                result,
                DecisionExamples.judged(code, "examination", DecisionExamples.cylinder(bar))
                        .details()
                        .result());
    }

    @Test
    void aPressureWithoutTheFullOneIsRefused() {
        Map<String, String> form = Map.of("result", "passed", "condition", "sound", "cylinder-pressure", "264");
        StoreException refused =
                assertThrows(StoreException.class, () -> DecisionExamples.judged("us", "examination", form));
        assertTrue(refused.getMessage().startsWith("cylinder-full-pressure is not given"), refused.getMessage());
        Map<String, String> zero = new java.util.HashMap<>(form);
        zero.put("cylinder-full-pressure", "0");
        assertThrows(StoreException.class, () -> DecisionExamples.judged("us", "examination", zero));
    }

    @Test
    void theRegisterKnowsTheFullPressureOfItsSet() {
        Item set = Forms.item(
                "unit", Map.of("id", "S-1", "description", "set", "cylinder-full-pressure", "300"), Map.of());
        try (Store store = Store.open(folder.resolve("log.db"))) {
            store.append(Draft.registering(set, WorkedExample.TODAY, "stores"), Instant.parse("2026-03-02T09:00:00Z"));
            Map<String, String> form = Map.of("result", "passed", "condition", "sound", "cylinder-pressure", "264");
            Examination judged = (Examination) new Judging(store, () -> WorkedExample.book("us"))
                    .of("examination", "S-1", form)
                    .details();
            assertEquals(Result.FAILED, judged.result());
            assertEquals("300", judged.cylinderFullPressure().orElseThrow().toPlainString());
        }
    }
}
