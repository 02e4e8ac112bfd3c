package org.fumewarden.task;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.codes.Numbers;

/**
 * What a quantity that cannot be read may be written as. A suggestion is always the same quantity: a number that is moved to
 * another unit is converted, and where that cannot be done no number is named.
 */
final class SameQuantity {
    /**
     * A unit that is not read here.
     *
     * @param unit the unit to write instead
     * @param factor the number is multiplied with it, after {@code offset} was added
     * @param note when it holds, or empty
     */
    private record Foreign(String unit, BigDecimal factor, BigDecimal offset, String note) {
        static Foreign of(String unit, String factor) {
            return new Foreign(unit, new BigDecimal(factor), BigDecimal.ZERO, "");
        }
    }

    private static final Foreign PERCENT =
            new Foreign("ppm", new BigDecimal("10000"), BigDecimal.ZERO, " when the percentage is by volume");

    /** Definitions of units: the international foot, pound and inch, the atmosphere of pressure in pascal, the kelvin. */
    private static final Map<String, Map<String, Foreign>> FOREIGN = Map.ofEntries(
            Map.entry(
                    "concentration",
                    Map.ofEntries(
                            entry("g/m3", "mg/m3", "1000"),
                            entry("kg/m3", "mg/m3", "1000000"),
                            entry("ng/m3", "ug/m3", "0.001"),
                            entry("mg/l", "mg/m3", "1000"),
                            entry("mg/dm3", "mg/m3", "1000"),
                            entry("mg/cm3", "mg/m3", "1000000"),
                            entry("g/l", "mg/m3", "1000000"),
                            entry("ug/l", "mg/m3", "1"),
                            entry("ng/l", "ug/m3", "1"),
                            entry("mg/m^3", "mg/m3", "1"),
                            entry("mg m-3", "mg/m3", "1"),
                            entry("ug m-3", "ug/m3", "1"),
                            entry("mcg/m3", "ug/m3", "1"),
                            entry("mg/cbm", "mg/m3", "1"),
                            entry("ml/m3", "ppm", "1"),
                            entry("cm3/m3", "ppm", "1"),
                            Map.entry("%", PERCENT),
                            Map.entry("percent", PERCENT),
                            Map.entry("vol%", PERCENT),
                            Map.entry("vol.%", PERCENT),
                            Map.entry("% vol", PERCENT))),
            Map.entry(
                    "percent",
                    Map.ofEntries(
                            entry("percent", "%", "1"),
                            entry("Prozent", "%", "1"),
                            entry("Vol.-%", "%", "1"),
                            entry("vol%", "%", "1"),
                            entry("vol.%", "%", "1"),
                            entry("% vol", "%", "1"),
                            entry("ppm", "%", "0.0001"))),
            Map.entry(
                    "length",
                    Map.ofEntries(
                            entry("cm", "m", "0.01"),
                            entry("metres", "m", "1"),
                            entry("meters", "m", "1"),
                            entry("feet", "ft", "1"),
                            entry("in", "mm", "25.4"),
                            entry("inches", "mm", "25.4"))),
            Map.entry(
                    "volume",
                    Map.ofEntries(
                            entry("cbm", "m3", "1"),
                            entry("m^3", "m3", "1"),
                            entry("L", "l", "1"),
                            entry("litres", "l", "1"),
                            entry("cu ft", "ft3", "1"))),
            Map.entry(
                    "flow",
                    Map.ofEntries(
                            entry("l/s", "l/min", "60"),
                            entry("L/s", "L/min", "60"),
                            entry("l/h", "l/min", "0.0166666666666666667"),
                            entry("m3/min", "l/min", "1000"),
                            entry("m3/s", "l/min", "60000"),
                            entry("lpm", "l/min", "1"),
                            entry("LPM", "L/min", "1"),
                            entry("CFM", "cfm", "1"))),
            Map.entry(
                    "mass-flow",
                    Map.ofEntries(
                            entry("g/h", "kg/h", "0.001"), entry("g/s", "g/min", "60"), entry("kg/min", "kg/h", "60"))),
            Map.entry(
                    "duration",
                    Map.ofEntries(
                            entry("Std", "h", "1"),
                            entry("Std.", "h", "1"),
                            entry("std", "h", "1"),
                            entry("Stunden", "h", "1"),
                            entry("Stunde", "h", "1"),
                            entry("Minuten", "min", "1"),
                            entry("Minute", "min", "1"),
                            entry("Min", "min", "1"),
                            entry("Min.", "min", "1"),
                            entry("min.", "min", "1"),
                            entry("hours", "h", "1"),
                            entry("hour", "h", "1"),
                            entry("hrs", "h", "1"),
                            entry("hr", "h", "1"),
                            entry("minutes", "min", "1"),
                            entry("minute", "min", "1"),
                            entry("mins", "min", "1"),
                            entry("seconds", "s", "1"),
                            entry("sec", "s", "1"))),
            Map.entry(
                    "temperature",
                    Map.of(
                            "\u00b0C", Foreign.of("C", "1"),
                            "F", fahrenheit(),
                            "\u00b0F", fahrenheit(),
                            "degF", fahrenheit(),
                            "K", new Foreign("C", BigDecimal.ONE, new BigDecimal("-273.15"), ""))),
            Map.entry(
                    "mass",
                    Map.ofEntries(
                            entry("t", "kg", "1000"),
                            entry("ug", "mg", "0.001"),
                            entry("lb", "g", "453.59237"),
                            entry("oz", "g", "28.349523125"))),
            Map.entry(
                    "pressure",
                    Map.ofEntries(
                            entry("bar", "kPa", "100"),
                            entry("MPa", "kPa", "1000"),
                            entry("atm", "Pa", "101325"),
                            entry("psi", "Pa", "6894.757293168"))),
            Map.entry("energy", Map.ofEntries(entry("J", "kJ", "0.001"), entry("MJ", "kJ", "1000"))),
            Map.entry(
                    "area",
                    Map.ofEntries(
                            entry("mm2", "cm2", "0.01"),
                            entry("in2", "cm2", "6.4516"),
                            entry("ft2", "cm2", "929.0304"))),
            Map.entry(
                    "density",
                    Map.ofEntries(entry("g/l", "g/L", "1"), entry("kg/l", "g/cm3", "1"), entry("g/ml", "g/cm3", "1"))),
            Map.entry(
                    "age",
                    Map.ofEntries(
                            entry("Jahre", "years", "1"),
                            entry("Jahr", "years", "1"),
                            entry("Monate", "months", "1"),
                            entry("Monat", "months", "1"),
                            entry("y", "years", "1"),
                            entry("yr", "years", "1"),
                            entry("yrs", "years", "1"))),
            Map.entry(
                    "current",
                    Map.ofEntries(entry("mA", "A", "0.001"), entry("kA", "A", "1000"), entry("amps", "A", "1"))));

    /** Signs with a raised figure or a Greek letter, as people without them on the keyboard write them. */
    private static final Set<String> SIGNS =
            Set.of("mg/m3", "ug/m3", "m3", "ft3", "m3/h", "cm2", "m2", "g/cm3", "kg/m3");

    private SameQuantity() {}

    private static Map.Entry<String, Foreign> entry(String foreign, String unit, String factor) {
        return Map.entry(foreign, Foreign.of(unit, factor));
    }

    private static Foreign fahrenheit() {
        return new Foreign("C", new BigDecimal("0.555555555555555556"), new BigDecimal("-32"), "");
    }

    /** The remedy for a unit that is not read: the same quantity in one that is, or those that are, without a number. */
    static String inKnownUnit(String kind, String number, String unit, Collection<String> known) {
        String units = String.join(", ", known);
        if (unit.isEmpty()) {
            return "add the unit: one of " + units + ".";
        }
        Optional<String> converted = written(kind, number, unit, List.of());
        return converted.map(c -> "write " + c + ".").orElse("convert it to one of these units: " + units + ".");
    }

    /** The remedy for a number that is not read; empty when it may mean nothing. */
    static Optional<String> inPlainDigits(String kind, String number, String unit, Collection<String> known) {
        List<String> readings = Numbers.readings(number);
        List<String> written = new ArrayList<>();
        for (String reading : readings) {
            written(kind, reading, unit, known).ifPresent(written::add);
        }
        if (readings.isEmpty() || written.size() < readings.size()) {
            return Optional.empty();
        }
        return Optional.of(
                written.size() == 1
                        ? (written.get(0).contains(".") && number.contains(",") ? "use a decimal point: " : "write ")
                                + written.get(0) + "."
                        : "write " + written.get(0) + " when the comma parts decimals, " + written.get(1)
                                + " when it parts thousands.");
    }

    private static Optional<String> written(String kind, String number, String unit, Collection<String> known) {
        if (known.contains(unit)) {
            return Optional.of("\"" + (number + " " + unit).strip() + "\"");
        }
        Foreign foreign = FOREIGN.getOrDefault(kind, Map.of()).get(normal(kind, unit));
        if (foreign == null) {
            return Optional.empty();
        }
        try {
            BigDecimal converted =
                    Numbers.decimal(number).add(foreign.offset()).multiply(foreign.factor(), MathContext.DECIMAL64);
            return Optional.of("\"" + converted.stripTrailingZeros().toPlainString() + " " + foreign.unit() + "\""
                    + foreign.note());
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** The usual sign of a unit that is only written otherwise; the unit as it stands when it is another one. */
    static String sign(String kind, String unit) {
        String normal = normal(kind, unit);
        Foreign foreign = FOREIGN.getOrDefault(kind, Map.of()).get(normal);
        boolean same = foreign != null
                && foreign.factor().compareTo(BigDecimal.ONE) == 0
                && foreign.offset().signum() == 0
                && foreign.note().isEmpty();
        return same ? foreign.unit() : SIGNS.contains(normal) ? normal : unit;
    }

    private static String normal(String kind, String unit) {
        String plain = unit.replace('\u00b5', 'u')
                .replace('\u03bc', 'u')
                .replace("\u00b3", "3")
                .replace("\u00b2", "2")
                .replaceAll("\\s+", " ");
        return kind.equals("concentration") ? plain.replace("/L", "/l") : plain;
    }
}
