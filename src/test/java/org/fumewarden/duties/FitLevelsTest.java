package org.fumewarden.duties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.upkeep.FitLevels;
import org.fumewarden.upkeep.FitTest;
import org.fumewarden.upkeep.Result;
import org.fumewarden.upkeep.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Fit factors: 29 CFR 1910.134(f)(7), 100 for half and 500 for full face masks; INDG479, 100 and 2000. Qualitative tests: 29 CFR
 * 1910.134(f)(6), and INDG479, never for full face masks.
 */
class FitLevelsTest {
    private static FitLevels levels(String code) {
        return DutyBook.of(CodeBook.read(RuleFolder.shipped(), code), LocalDate.parse("2026-03-02"))
                .fitLevels()
                .orElseThrow();
    }

    private static final String SEVEN = ": %1$s; deep breathing: %1$s; head side to side: %1$s; head up and down: %1$s;"
            + " talking: %1$s; bending: %1$s; normal breathing again: %1$s";

    /** In Great Britain a measured test names each exercise; here each came out alike. */
    private static FitLevels.Judgement judged(
            String code, Result result, String method, String factor, String level, String face) {
        String exercises = factor == null || !code.equals("gb") ? "" : ("normal breathing" + SEVEN).formatted(factor);
        return levels(code)
                .judged(
                        new FitTest(
                                result, "mask M", face, method, exercises, number(factor), number(level), "", "", ""),
                        false);
    }

    private static Optional<BigDecimal> number(String text) {
        return Optional.ofNullable(text).map(BigDecimal::new);
    }

    @ParameterizedTest(name = "{0} {1} face, factor {2} -> {3}")
    @CsvSource({
        "us, half, 99, FAILED",
        "us, half, 100, PASSED",
        "us, full, 1500, PASSED",
        "us, full, 499, FAILED",
        "us, full, 500, PASSED",
        "gb, half, 99.9, FAILED",
        "gb, half, 100, PASSED",
        "gb, full, 1999, FAILED",
        "gb, full, 2000, PASSED"
    })
    void theFitFactorDecides(String code, String face, String factor, Result result) {
        FitLevels.Judgement judged = judged(code, Result.PASSED, "quantitative", factor, null, face);
        assertEquals(result, judged.test().result());
        String clause = code.equals("us") ? "1910.134(f)(7)" : "indg479";
        assertTrue(judged.says().contains(clause), judged.says());
    }

    @Test
    void aTasteTestOfAFullFaceMaskIsRejectedInGreatBritain() {
        FitLevels.Judgement judged = judged("gb", Result.PASSED, "qualitative, bitter", null, null, "full");
        assertEquals(Result.FAILED, judged.test().result());
        assertTrue(judged.says().contains("2000"), judged.says());
    }

    @Test
    void aTasteTestOfAHalfMaskStandsAsEntered() {
        FitLevels.Judgement judged = judged("gb", Result.PASSED, "qualitative, bitter", null, null, "half");
        assertEquals(Result.PASSED, judged.test().result());
    }

    @Test
    void aTasteTestOfAFullFaceMaskServesTenTimesTheLimitOnlyInTheUnitedStates() {
        FitLevels.Judgement judged = judged("us", Result.PASSED, "qualitative, bitter", null, null, "full");
        assertEquals(Result.PASSED, judged.test().result());
        assertTrue(judged.says().contains("up to 10 times"), judged.says());
        assertTrue(judged.says().contains("500"), judged.says());
        assertTrue(judged.says().contains("1910.134(f)(6)"), judged.says());
    }

    @Test
    void anUnknownFaceIsAskedForWhereItDecides() {
        assertThrows(StoreException.class, () -> judged("gb", Result.PASSED, "quantitative", "150", null, ""));
        assertThrows(StoreException.class, () -> judged("gb", Result.PASSED, "qualitative", null, null, ""));
        assertEquals(
                Result.FAILED,
                judged("gb", Result.PASSED, "quantitative", "99", null, "")
                        .test()
                        .result());
        assertEquals(
                Result.PASSED,
                judged("gb", Result.PASSED, "quantitative", "2000", null, "")
                        .test()
                        .result());
    }

    @Test
    void aTesterMayBeStricterThanTheCodeAndNeverMilder() {
        assertEquals(
                Result.FAILED,
                judged("us", Result.PASSED, "quantitative", "499", "100", "full")
                        .test()
                        .result());
        assertEquals(
                Result.FAILED,
                judged("us", Result.PASSED, "quantitative", "600", "1000", "full")
                        .test()
                        .result());
        assertEquals(
                Result.FAILED,
                judged("us", Result.FAILED, "quantitative", "600", null, "full")
                        .test()
                        .result());
    }

    @Test
    void aPassWithoutFigureOrMethodIsRefused() {
        assertThrows(StoreException.class, () -> judged("us", Result.PASSED, "particle counter", null, null, "full"));
    }
}
