package org.fumewarden.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.fumewarden.model.Act;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nobody is told to mend a unit that the work bars anyway: carbon monoxide above its limit takes supplied air in every code. */
final class UnitForOtherWorkTest {
    private static final List<String> FAULTS = List.of(
            "filter-mark: A1",
            "filter-expiry: 2020-01-01",
            "filter-pressure: 900 Pa, warning-pressure: 800 Pa",
            "spark-arrestor: false",
            "measured-flow: 100 L/min, minimum-design-flow: 170 L/min");

    private static Advice advise(String code, String level, String kit) {
        return Bench.ofText("task", """
                title: A hood in the bracket shop of Tarn Haven
                code: %s
                on: 2026-03-02
                task: {process: mag-solid-wire, base-metal: mild-steel, coating: none, filler: plain, place: indoors, extraction: verified, time-on-task: PT4H, shift: PT8H, purpose: work}
                exposures:
                  - {agent: carbon-monoxide, twa: %s}
                  - {agent: welding-fume, twa: 20 mg/m3}
                kit: {%s}
                """.formatted(code, level, kit), Advisor::shipped)
                .advise();
    }

    private static String orders(Advice advice) {
        return Acts.of("do-now", advice, Advisor.shipped(advice.code()).base().rowsOn(advice.on())).stream()
                .map(Act::id)
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"gb", "us", "de", "fi", "it", "se", "au", "nz"})
    void aFaultOfAUnitThatTheWorkBarsIsNotMended(String code) {
        for (String fault : FAULTS) {
            Advice advice = advise(code, "90 ppm, stel: 100 ppm", fault);
            UnitInHand unit = advice.unit().orElseThrow();
            String what = fault + " " + unit.heals() + " " + orders(advice);
            assertFalse(unit.heals().contains("Fit the filter that is named under WEAR."), what);
            if (unit.barred() && advice.recommended().isPresent()) {
                assertEquals(List.of("Take what is named under WEAR instead."), unit.heals(), what);
                assertTrue(orders(advice).contains("other-kit"), what);
                for (String mends :
                        List.of("new-filter", "seat-filter", "fit-arrestor", "charged-pack", "lasting-pack")) {
                    assertFalse(orders(advice).contains(mends), what);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"gb", "de"})
    void whereAFilterIsOfferedTheFaultIsMended(String code) {
        Advice advice = advise(code, "2 ppm, stel: 3 ppm", "filter-expiry: 2020-01-01");
        assertEquals(
                List.of("Fit a new filter and check its date."),
                advice.unit().orElseThrow().heals());
        assertTrue(orders(advice).contains("new-filter"), orders(advice));
        assertFalse(orders(advice).contains("other-kit"), orders(advice));
    }
}
