package org.fumewarden.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.YamlFiles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers with units as people write them. Factors of feet and cubic feet are those of the international foot, 0.3048 m exactly. */
final class QuantitiesTest {
    @ParameterizedTest
    @CsvSource({
        "20.9 %, percent, 20.9",
        "20.9%, percent, 20.9",
        "120 m, length, 120",
        "1000 ft, length, 304.8",
        "1.2 km, length, 1200",
        "10000 ft3, volume, 283.16846592",
        "280 m3, volume, 280",
        "170 L/min, flow, 170",
        "6 cfm, flow, 169.901079552",
        "PT4H, duration, 240",
        "PT1H30M, duration, 90",
        "4 h, duration, 240",
        "45 min, duration, 45",
        "-5 C, temperature, -5",
        "3, count, 3",
    })
    void amountsAreReadIntoTheUnitOfTheirKind(String text, String kind, String expected) {
        Located place = YamlFiles.parse("f", "v: \"" + text + "\"").entries().get("v");
        BigDecimal amount = Quantities.amount(place, kind).orElseThrow(() -> new AssertionError(place.problems()));
        assertEquals(0, amount.compareTo(new BigDecimal(expected)), amount + " is not " + expected);
    }

    @ParameterizedTest
    @CsvSource({
        "0.12 mg/m3, 0.12, mg/m3",
        "0.12 mg/m³, 0.12, mg/m3",
        "120 ug/m3, 0.120, mg/m3",
        "120 µg/m3, 0.120, mg/m3",
        "5 ppm, 5, ppm",
        "50 ppb, 0.050, ppm",
        "0 ppm, 0, ppm",
    })
    void concentrationsAreReadAsReported(String text, String value, String unit) {
        Located place = YamlFiles.parse("f", "v: \"" + text + "\"").entries().get("v");
        Quantities.Level level = Quantities.level(place).orElseThrow(() -> new AssertionError(place.problems()));
        assertEquals(0, level.value().compareTo(new BigDecimal(value)));
        assertEquals(unit, level.unit().symbol());
    }

    @ParameterizedTest
    @CsvSource({
        "20.9, percent",
        "20.9 m, percent",
        "-1 m, length",
        "PT-4H, duration",
        "P1Y, duration",
        "PT99999999999999999999H, duration",
        "much, flow",
        "-1, count",
        "1e99 m, flow",
    })
    void whatIsNoAmountIsNamed(String text, String kind) {
        Located place = YamlFiles.parse("f", "v: \"" + text + "\"").entries().get("v");
        assertTrue(Quantities.amount(place, kind).isEmpty());
        assertEquals(1, place.problems().size(), place.problems().toString());
    }
}
