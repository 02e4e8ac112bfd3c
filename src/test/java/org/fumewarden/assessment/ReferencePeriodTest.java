package org.fumewarden.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Reason;
import org.fumewarden.exposure.TimeWeightedAverage;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Exposure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Averages of work longer than 8 hours, counted over 8 hours. E = sum of C times T / 8 (29 CFR 1910.1000(d)(1)(i)); EH40/2005
 * counts all exposure of 24 hours as one of 8 (approved method, from memory).
 */
final class ReferencePeriodTest {

    private static Advice advise(String code, String hours, String entry) {
        return Bench.ofText("task", """
                title: A long shift at the slip of Tarn Haven
                code: %s
                on: 2026-03-02
                task: {process: mag-solid-wire, base-metal: mild-steel, place: indoors, time-on-task: %s, shift: PT12H}
                exposures:
                  - {agent: %s}
                """.formatted(code, hours, entry), Advisor::shipped)
                .advise();
    }

    private static BigDecimal average(Advice advice) {
        return advice.inputs().stream()
                .filter(i -> i instanceof Exposure x && x.averaging() == Averaging.TWA)
                .map(i -> ((Exposure) i).level())
                .findFirst()
                .orElseThrow();
    }

    /** By hand: minutes / 480, and never below 1. */
    @ParameterizedTest
    @CsvSource({"720,1.5", "600,1.25", "480,1", "479,1", "481,1.0020833333", "240,1", "1440,3"})
    void hoursCountOverEight(double minutes, double times) {
        assertEquals(times, TimeWeightedAverage.times(minutes, 480), 1e-9);
    }

    /** 16 ppm x 12 h / 8 h = 24 ppm; 10 h: 20 ppm; 8 h and less: as stated. */
    @ParameterizedTest
    @CsvSource({
        "gb,PT12H,24",
        "us,PT12H,24",
        "de,PT12H,24",
        "fi,PT12H,24",
        "it,PT12H,24",
        "se,PT12H,24",
        "gb,PT10H,20",
        "gb,PT8H,16",
        "gb,PT4H,16",
        "au,PT12H,16",
        "nz,PT12H,16"
    })
    void aStatedAverageCountsWithItsHours(String code, String hours, BigDecimal level) {
        Advice stated = advise(code, hours, "carbon-monoxide, twa: 16 ppm");
        assertEquals(0, level.compareTo(average(stated)), () -> average(stated).toPlainString());
    }

    @Test
    void theSameAirAsOnePeriodGivesTheSame() {
        Advice period = advise("gb", "PT12H", "carbon-monoxide, periods: [{level: 16 ppm, duration: PT12H}]");
        Advice stated = advise("gb", "PT12H", "carbon-monoxide, twa: 16 ppm");
        assertEquals(0, average(period).compareTo(average(stated)));
        assertTrue(said(stated).contains("16 ppm over 12 h counts as 24 ppm over 8 h."), said(stated));
    }

    /** The limit of lead falls to 400 / hours instead (29 CFR 1926.62(c)(2)). */
    @Test
    void noAgentIsCountedTwiceWhoseLimitFalls() {
        assertEquals(0, new BigDecimal("0.02").compareTo(average(advise("us", "PT12H", "lead, twa: 0.02 mg/m3"))));
        assertEquals(0, new BigDecimal("0.03").compareTo(average(advise("gb", "PT12H", "lead, twa: 0.02 mg/m3"))));
    }

    /** All figures of samples grow by the same share, whatever the statistic: the logarithms are moved. */
    @Test
    void samplesCountWithTheirHoursToo() {
        for (String samples : List.of("11 ppm, 12 ppm", "11 ppm, 9 ppm, 14 ppm, 8 ppm, 10 ppm, 12 ppm, 7 ppm")) {
            double eight = average(advise("gb", "PT8H", "carbon-monoxide, samples: [" + samples + "]"))
                    .doubleValue();
            double twelve = average(advise("gb", "PT12H", "carbon-monoxide, samples: [" + samples + "]"))
                    .doubleValue();
            assertEquals(1.5, twelve / eight, 1e-6, samples);
        }
    }

    @Test
    void aSampleThatRanLongerThanTheTaskCountsWithItsOwnTime() {
        Advice own = advise("gb", "PT4H", "carbon-monoxide, samples: [{level: 11 ppm, duration: PT12H}]");
        Advice task = advise("gb", "PT12H", "carbon-monoxide, samples: [11 ppm]");
        assertEquals(0, average(own).compareTo(average(task)));
    }

    private static String said(Advice advice) {
        return advice.cautions().stream().map(Reason::says).collect(Collectors.joining("\n"));
    }
}
