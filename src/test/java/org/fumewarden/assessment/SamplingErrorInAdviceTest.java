package org.fumewarden.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.InputException;
import org.fumewarden.model.Exposure;
import org.junit.jupiter.api.Test;

/** The sampling and analytical error of a result (OSHA Technical Manual, section II chapter 1): it only ever asks for more. */
final class SamplingErrorInAdviceTest {

    /** Manganese has the limit 0.05 mg/m3 (EH40/2005 Table 1, respirable, 8 h). */
    private static Advice advise(String cells) {
        String task = """
                title: A bench in the bracket shop of Tarn Haven
                code: gb
                on: 2026-03-02
                task: {process: manual-metal-arc, base-metal: mild-steel, place: indoors}
                exposures:
                  - {agent: manganese-respirable, %s}
                """.formatted(cells);
        return Bench.ofText("task", task, Advisor::shipped).advise();
    }

    private static BigDecimal level(Advice advice) {
        return advice.inputs().stream()
                .filter(Exposure.class::isInstance)
                .map(i -> ((Exposure) i).level())
                .findFirst()
                .orElseThrow();
    }

    private static boolean cautions(Advice advice, String words) {
        return advice.cautions().stream().anyMatch(r -> r.says().contains(words));
    }

    /**
     * Twenty results of which the highest is 0.045: 0.045 / 0.05 = 0.9; 0.9 + 0.23 = 1.13; 1.13 x 0.05 = 0.0565. 0.9 - 0.23 =
     * 0.67. The bound of the twenty is lower.
     */
    @Test
    void aResultJustBelowItsLimitCountsByItsUpperLimit() {
        String twenty = "samples: [0.045 mg/m3" + ", 0.02 mg/m3, 0.018 mg/m3, 0.022 mg/m3".repeat(6) + ", 0.02 mg/m3]";
        Advice advice = advise(twenty + ", error: 23 %");
        assertEquals(
                0,
                level(advice).compareTo(new BigDecimal("0.0565")),
                level(advice).toPlainString());
        assertTrue(
                cautions(advice, "between 0.67 and 1.13 times the limit"),
                advice.cautions().toString());
        assertTrue(cautions(advice, "neither above nor below it is proven"));
        assertTrue(level(advise(twenty)).compareTo(new BigDecimal("0.0565")) < 0);
    }

    /** 0.06 / 0.05 = 1.2; 1.2 - 0.1 is above 1. */
    @Test
    void aResultAboveItsLimitBeyondTheErrorIsSaid() {
        assertTrue(cautions(advise("samples: [0.06 mg/m3], error: 10 %"), "above it beyond the error"));
        assertTrue(cautions(advise("samples: [0.02 mg/m3], error: 10 %"), "not above it, error included"));
    }

    /**
     * Two stretches of 240 min at 0.04 and 0.05: average 0.045, ratio 0.9. Half width 0.2 x sqrt((240 x 0.04)^2 + (240 x
     * 0.05)^2) / (0.05 x 480) = 0.2 x 15.3675 / 24 = 0.1280625; 1.0280625 x 0.05 = 0.051403124.
     */
    @Test
    void errorsOfStretchesPartlyCancel() {
        Advice advice = advise(
                "periods: [{level: 0.04 mg/m3, duration: 4 h}, {level: 0.05 mg/m3, duration: 4 h}], error: 20 %");
        assertEquals(0.051403124, level(advice).doubleValue(), 1e-9);
    }

    @Test
    void theErrorNeverLowersALevel() {
        String samples = "samples: [0.02 mg/m3, 0.03 mg/m3, 0.09 mg/m3, 0.04 mg/m3, 0.05 mg/m3, 0.03 mg/m3]";
        BigDecimal plain = level(advise(samples));
        BigDecimal before = plain;
        for (String error : new String[] {"0 %", "5 %", "40 %", "90 %", "99 %"}) {
            BigDecimal with = level(advise(samples + ", error: " + error));
            assertTrue(with.compareTo(before) >= 0, error + " " + with);
            before = with;
        }
        assertEquals(0, plain.compareTo(level(advise(samples + ", error: 0 %"))));
    }

    @Test
    void anErrorWithoutResultsOrAsLargeAsTheResultIsNoError() {
        assertThrows(InputException.class, () -> advise("twa: 0.045 mg/m3, error: 23 %"));
        assertThrows(InputException.class, () -> advise("samples: [0.045 mg/m3], error: 100 %"));
        assertThrows(InputException.class, () -> advise("samples: [0.045 mg/m3], error: 0.23"));
        assertThrows(InputException.class, () -> advise("samples: [0.045 mg/m3], error: -5 %"));
    }
}
