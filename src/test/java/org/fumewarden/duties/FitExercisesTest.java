package org.fumewarden.duties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.FitLevels;
import org.fumewarden.upkeep.Result;
import org.fumewarden.upkeep.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * INDG479, as a public restatement of its protocol was read: seven exercises, each passed within one test; fit factor 100 for half
 * and 2000 for full face masks. 29 CFR 1910.134(f)(7) judges the factor over all exercises.
 */
class FitExercisesTest {
    private static final String SIX = "normal breathing: %s, deep breathing: 2600, head side to side: 2500, "
            + "head up and down: 2400, talking: 2300, bending: 2200";

    private static FitLevels.Judgement judged(String code, String exercises, String factor) {
        return DutyBook.of(CodeBook.read(RuleFolder.shipped(), code), LocalDate.parse("2026-03-02"))
                .fitLevels()
                .orElseThrow()
                .judged(
                        new Details.FitTest(
                                Result.PASSED,
                                "full face mask M",
                                "quantitative, particle counting",
                                exercises,
                                Optional.ofNullable(factor).map(BigDecimal::new),
                                Optional.empty(),
                                "",
                                ""),
                        "full");
    }

    @ParameterizedTest(name = "lowest exercise {0} -> {1}")
    @CsvSource({"1999, FAILED", "2000, PASSED", "2001, PASSED"})
    void theLowestOfSevenDecides(String lowest, Result result) {
        FitLevels.Judgement judged = judged("gb", SIX.formatted(lowest) + ", normal breathing again: 3000", "5000");
        assertEquals(result, judged.test().result());
        assertEquals(lowest, judged.test().fitFactor().orElseThrow().toPlainString());
        assertTrue(judged.says().contains("normal breathing, " + lowest), judged.says());
    }

    @Test
    void sixExercisesAreAFailure() {
        FitLevels.Judgement judged = judged("gb", SIX.formatted("2700"), "5000");
        assertEquals(Result.FAILED, judged.test().result());
        assertTrue(judged.says().contains("Only 6 exercises are given; 7 must be passed"), judged.says());
        assertTrue(
                judged.test().whyFailed().contains("exercises: normal breathing"),
                judged.test().whyFailed());
    }

    @Test
    void oneFailedExerciseFailsTheTest() {
        FitLevels.Judgement judged = judged("gb", SIX.formatted("2700") + ", normal breathing again: failed", "5000");
        assertEquals(Result.FAILED, judged.test().result());
        assertTrue(judged.says().contains("\"normal breathing again\" failed"), judged.says());
    }

    @Test
    void inTheUnitedStatesTheFactorOverAllDecides() {
        assertEquals(
                Result.PASSED, judged("us", SIX.formatted("450"), "501").test().result());
        assertEquals(
                Result.FAILED, judged("us", SIX.formatted("2700"), "499").test().result());
    }

    @Test
    void withoutExercisesTheFactorIsTakenAsTheLowest() {
        FitLevels.Judgement judged = judged("gb", "", "2000");
        assertEquals(Result.PASSED, judged.test().result());
        assertTrue(judged.says().contains("taken as the lowest of 7"), judged.says());
    }

    @Test
    void anOutcomeThatIsNoneIsRefused() {
        assertThrows(StoreException.class, () -> judged("gb", "normal breathing: fine", "5000"));
    }
}
