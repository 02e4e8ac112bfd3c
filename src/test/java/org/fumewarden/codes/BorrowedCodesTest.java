package org.fumewarden.codes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Limit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes that borrow: whose limit decides, on which day, and whose factors. */
final class BorrowedCodesTest {
    private static final RuleFolder RULES = RuleFolder.shipped();

    private static List<BigDecimal> limits(String code, String day, String agent, Averaging averaging) {
        return CodeBook.read(RULES, code).rows(LocalDate.parse(day)).stream()
                .filter(Limit.class::isInstance)
                .map(Limit.class::cast)
                .filter(l -> l.agent().equals(agent) && l.averaging() == averaging)
                .map(Limit::value)
                .toList();
    }

    @Test
    void aFolderWithoutACardCannotBeChosen() {
        assertTrue(RULES.folders().contains("eu"));
        assertFalse(RULES.codes().contains("eu"));
        assertTrue(RULES.codes().containsAll(List.of("au", "nz", "de", "fi", "it", "se")));
    }

    /** Directive 2004/37/EC Annex III, consolidated to 2024/869 (read; lead and nickel from memory); German values of TRGS 900, 561, 910. */
    @ParameterizedTest
    @CsvSource({
        "fi, 2025-01-16, chromium-vi, 0.010",
        "fi, 2025-01-17, chromium-vi, 0.005",
        "de, 2025-01-16, chromium-vi, 0.001",
        "it, 2026-04-08, lead, 0.15",
        "it, 2026-04-09, lead, 0.03",
        "se, 2026-04-04, benzene, 0.5",
        "se, 2026-04-05, benzene, 0.2",
        "de, 2026-04-04, benzene, 0.5",
        "de, 2026-04-05, benzene, 0.2",
        "fi, 2026-07-10, beryllium, 0.0006",
        "fi, 2026-07-11, beryllium, 0.0002",
        "de, 2026-07-11, beryllium, 0.00006",
        "de, 2027-07-10, cadmium, 0.002",
        "de, 2027-07-11, cadmium, 0.001",
        "it, 2027-07-10, cadmium, 0.004",
        "it, 2027-07-11, cadmium, 0.001",
        "se, 2028-12-31, isocyanates, 0.010",
        "se, 2029-01-01, isocyanates, 0.006"
    })
    void theStricterOfOwnAndBorrowedLimitDecidesOnItsDay(String code, String day, String agent, BigDecimal expected) {
        assertEquals(
                List.of(expected.stripTrailingZeros()),
                limits(code, day, agent, Averaging.TWA).stream()
                        .map(BigDecimal::stripTrailingZeros)
                        .toList());
    }

    /** EN 529:2005 Table C.1, columns FI, IT and SE, recalled; FI also seen with 100, 400 and 500 for TH3, full mask P3 and TM3: the stricter. */
    @ParameterizedTest
    @CsvSource({"fi, 100, 400, 500, 20", "it, 200, 400, 400, 30", "se, 200, 500, 1000, 20", "de, 100, 400, 500, 30"})
    void theSameClassHasAnotherFactorInEachCountry(
            String code, BigDecimal hood, BigDecimal mask, BigDecimal powered, BigDecimal facepiece) {
        Map<String, BigDecimal> factors = CodeBook.read(RULES, code).rows(LocalDate.of(2026, 3, 2)).stream()
                .filter(AssignedFactor.class::isInstance)
                .map(AssignedFactor.class::cast)
                .filter(f -> f.covers("particles"))
                .collect(Collectors.toMap(AssignedFactor::deviceClass, AssignedFactor::factor));
        assertEquals(hood, factors.get("th3"));
        assertEquals(mask, factors.get("full-mask-p3"));
        assertEquals(powered, factors.get("tm3"));
        assertEquals(facepiece, factors.get("ffp3"));
    }

    @Test
    void theSummaryCountsBorrowedRowsAndNamesTheGaps() {
        CodeSummary summary = CodeSummary.of(RULES, CodeBook.read(RULES, "fi"));
        int all = summary.rows().values().stream().mapToInt(Integer::intValue).sum();
        assertTrue(summary.borrowedRows() > 0 && summary.borrowedRows() < all);
        assertTrue(summary.changes().containsKey(LocalDate.of(2026, 4, 9)));
        assertEquals(7, summary.notCovered().size());
    }
}
