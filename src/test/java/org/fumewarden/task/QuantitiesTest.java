package org.fumewarden.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.apache.commons.lang3.StringUtils;
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

    /** A decimal comma that cannot part thousands, and a unit in other signs or words: the same quantity, read at once. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0,12 mg/m3 | concentration | 0.12 mg/m3",
                "0,125 mg/m3 | concentration | 0.125 mg/m3",
                "12,5 µg/m³ | concentration | 12.5 ug/m3",
                "<0,01 mg/m3 | concentration | <0.01 mg/m3",
                "< 0.01 mg/m3 | concentration | < 0.01 mg/m3",
                "1,234.5 ug/m3 | concentration | 1234.5 ug/m3",
                "1.234,5 ug/m3 | concentration | 1234.5 ug/m3",
                "3 µg/l | concentration | 3 mg/m3",
                "20,9 % | percent | 20.9 %",
                "1,5 hours | duration | 1.5 h",
                "90 Minuten | duration | 90 min",
                "0,5 Std. | duration | 0.5 h",
                "1,200 mg/m3 | concentration | 1,200 mg/m3",
                "0,5 g/m3 | concentration | 0.5 g/m3",
                "PT4H | duration | PT4H",
            })
    void whatIsOnlySpeltOtherwiseIsTheSameQuantity(String text, String kind, String spelt) {
        assertEquals(spelt, Spelling.of(kind, text));
        assertEquals(spelt, Spelling.of(kind, spelt), "spelling it again changes nothing");
    }

    /**
     * What is suggested for a number or a unit that is not read is the same quantity. The expected values are converted by hand:
     * definitions of the litre, the bar, the degree Fahrenheit, the inch and the pound; a percent by volume is 10 000 ppm.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,200 mg/m3 | concentration | \"1.200 mg/m3\" when the comma parts decimals, \"1200 mg/m3\" when it parts thousands.",
                "1.234.567 ug/m3 | concentration | \"1234567 ug/m3\".",
                "1'200 ppm | concentration | \"1200 ppm\".",
                "1 200 ppm | concentration | \"1200 ppm\".",
                "0,5 g/m3 | concentration | \"500 mg/m3\".",
                "0.5 g/m3 | concentration | \"500 mg/m3\".",
                "2 mg/l | concentration | \"2000 mg/m3\".",
                "2 mg/L | concentration | \"2000 mg/m3\".",
                "700 ng/m3 | concentration | \"0.7 ug/m3\".",
                "0.5 % | concentration | \"5000 ppm\" when the percentage is by volume.",
                "0,5 % | concentration | \"5000 ppm\" when the percentage is by volume.",
                "7 barleycorns | concentration | convert it to one of these units: mg/m3, ug/m3, ppm, ppb.",
                "7 | concentration | add the unit: mg/m3, ug/m3, ppm, ppb.",
                "1 atm | pressure | \"101325 Pa\".",
                "68 F | temperature | \"20 C\".",
                "293.15 K | temperature | \"20 C\".",
                "-4 °F | temperature | \"-20 C\".",
                "6 in | length | \"152.4 mm\".",
                "3 l/s | flow | \"180 l/min\".",
                "2 lb | mass | \"907.18474 g\".",
                "209000 ppm | percent | read the instrument again, and give its reading in %.",
            })
    void aSuggestionIsTheSameQuantity(String text, String kind, String maybe) {
        Located place = YamlFiles.parse("f", "v: \"" + text + "\"").entries().get("v");
        boolean read = kind.equals("concentration")
                ? Quantities.level(place).isPresent()
                : Quantities.amount(place, kind).isPresent();
        assertTrue(!read && place.problems().size() == 1, place.problems().toString());
        String remedy = place.problems().get(0).remedy();
        assertTrue(StringUtils.endsWithIgnoreCase(remedy, maybe), remedy);
    }

    /** Where no quantity can be read, none is suggested: the form is shown and the reader's own number asked for. */
    @ParameterizedTest
    @CsvSource({"5;2 mg/m3", "five mg/m3", "'1,2,3 ppm'", "1e99 ppm", "-0.5 mg/m3"})
    void nothingReadNothingSuggested(String text) {
        Located place = YamlFiles.parse("f", "v: \"" + text + "\"").entries().get("v");
        assertTrue(Quantities.level(place).isEmpty());
        String maybe = place.problems().get(0).remedy();
        assertTrue(
                maybe.startsWith("Write your own number")
                        || maybe.startsWith("Check ")
                        || maybe.startsWith("Convert it"),
                maybe);
    }
}
