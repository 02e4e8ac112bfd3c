package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Marks after EN 14387 and EN 143; the order of letters and the hyphen follow the issue's own example A2B2-P3. */
class FilterMarksTest {
    @ParameterizedTest(name = "{0} is written {1}")
    @CsvSource({
        "A2B2-P3, A2B2-P3",
        "a2 b2 p3, A2B2-P3",
        "B2A2P3, A2B2-P3",
        "ABEK2-P3 R, A2B2E2K2-P3 R",
        "A1B1E1K1Hg-P3, A1B1E1K1Hg-P3",
        "A1B1E1K1HgP3 NR, A1B1E1K1Hg-P3 NR",
        "AX, AX",
        "AXP3, AX-P3",
        "AXB2-P3, B2AX-P3",
        "NO-P3, NO-P3",
        "Hg-P3, Hg-P3",
        "CO 20, CO20",
        "P2, P2",
        "A2B2-P3 R D, A2B2-P3 R",
        "FFP1, P1",
        "ffp3 R D, P3 R",
        "FFP3 NR D, P3 NR",
        "EN 149:2001+A1:2009 FFP2 NR, P2 NR",
        "K1, K1"
    })
    void marksAreReadAndWrittenTheStandardsWay(String text, String written) {
        FilterMark mark = FilterMarks.read(text).value().orElseThrow(() -> new AssertionError(FilterMarks.read(text)));
        assertEquals(written, mark.written());
        assertEquals(mark, FilterMarks.read(written).value().orElseThrow());
    }

    @ParameterizedTest(name = "\"{0}\" is refused")
    @CsvSource({
        "''",
        "A",
        "A4",
        "A0",
        "A2A1",
        "NO",
        "Hg",
        "NO-P2",
        "AX2",
        "P4",
        "FFP4",
        "FFP",
        "P",
        "A2R",
        "Q2",
        "A2-P3-P3",
        "CO",
        "A99999999999",
        "CO0",
        "A2B-P3",
        "NR"
    })
    void brokenMarksAreRefusedWithAHint(String text) {
        Refused<FilterMark> refused = (Refused<FilterMark>) FilterMarks.read(text);
        assertTrue(refused.sentence().contains("Write"), refused::sentence);
    }

    /** GUV-R 190 Table 13. */
    @ParameterizedTest(name = "{0} at {1} ppm: {2}")
    @CsvSource({
        "A1, 1000, 1000", "A1, 1001, ABOVE_CLASS_LIMIT", "B2, 5000, 5000", "K3, 10000, 10000",
        "E3, 10001, ABOVE_CLASS_LIMIT", "SX, 5000, 5000", "CO20, 10, OUTSIDE_TABLE", "A1, -3, INVALID_VALUE"
    })
    void classLimitsHold(String mark, double ppm, String expected) {
        GasPart part = FilterMarks.read(mark).value().orElseThrow().gases().get(0);
        Reckoning<Double> limit = Tables.classLimits().check(part, ppm);
        assertEquals(expected, limit.value().map(WrittenNumbers::plain).orElseGet(() -> limit.status()
                .name()));
    }

    @Test
    void everyRandomMarkReadsBackAsItself() {
        Random random = new Random(143);
        for (int i = 0; i < 5000; i++) {
            StringBuilder text = new StringBuilder();
            for (String letter : new String[] {"A", "B", "E", "K"}) {
                if (random.nextBoolean()) {
                    text.append(letter).append(1 + random.nextInt(3));
                }
            }
            text.append(random.nextBoolean() ? "AX" : "").append(random.nextBoolean() ? "Hg" : "");
            text.append("-P3").append(random.nextBoolean() ? " R" : "");
            String mark = text.charAt(0) == '-' ? text.substring(1) : text.toString();
            assertEquals(mark, FilterMarks.read(mark).value().orElseThrow().written());
        }
    }
}
