package org.fumewarden.task;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
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
        static Foreign of(String[] row) {
            return new Foreign(
                    row[1],
                    new BigDecimal(row[2]),
                    row.length > 4 ? new BigDecimal(row[4]) : BigDecimal.ZERO,
                    row.length > 5 ? " " + row[5] : "");
        }
    }

    /**
     * Definitions of units: the international foot, pound and inch, the atmosphere of pressure in pascal, the kelvin. Kind, unit,
     * factor, how people write it; then what is added before, and when it holds.
     */
    private static final String UNITS = """
            concentration | mg/m3 | 1000 | g/m3, mg/l, mg/dm3
            concentration | mg/m3 | 1000000 | kg/m3, mg/cm3, g/l
            concentration | ug/m3 | 0.001 | ng/m3
            concentration | mg/m3 | 1 | ug/l, mg/m^3, mg m-3, mg/cbm
            concentration | ug/m3 | 1 | ng/l, ug m-3, mcg/m3
            concentration | ppm | 1 | ml/m3, cm3/m3
            concentration | ppm | 10000 | %, percent, vol%, vol.%, % vol | 0 | when the percentage is by volume
            percent | % | 1 | percent, Prozent
            length | m | 0.01 | cm
            length | m | 1 | metres, meters
            length | ft | 1 | feet
            length | mm | 25.4 | in, inches
            volume | m3 | 1 | cbm, m^3
            volume | l | 1 | L, litres
            volume | ft3 | 1 | cu ft
            flow | l/min | 60 | l/s
            flow | L/min | 60 | L/s
            flow | l/min | 0.0166666666666666667 | l/h
            flow | l/min | 1000 | m3/min
            flow | l/min | 60000 | m3/s
            flow | l/min | 1 | lpm
            flow | L/min | 1 | LPM
            flow | cfm | 1 | CFM
            mass-flow | kg/h | 0.001 | g/h
            mass-flow | g/min | 60 | g/s
            mass-flow | kg/h | 60 | kg/min
            duration | h | 1 | Std, Std., std, Stunden, Stunde, hours, hour, hrs, hr
            duration | min | 1 | Minuten, Minute, Min, Min., min., minutes, minute, mins
            duration | s | 1 | seconds, sec
            temperature | C | 1 | \u00b0C
            temperature | C | 0.555555555555555556 | F, \u00b0F, degF | -32
            temperature | C | 1 | K | -273.15
            mass | kg | 1000 | t
            mass | mg | 0.001 | ug
            mass | g | 453.59237 | lb
            mass | g | 28.349523125 | oz
            pressure | kPa | 100 | bar
            pressure | kPa | 1000 | MPa
            pressure | Pa | 101325 | atm
            pressure | Pa | 6894.757293168 | psi
            energy | kJ | 0.001 | J
            energy | kJ | 1000 | MJ
            area | cm2 | 0.01 | mm2
            area | cm2 | 6.4516 | in2
            area | cm2 | 929.0304 | ft2
            density | g/L | 1 | g/l
            density | g/cm3 | 1 | kg/l, g/ml
            age | years | 1 | Jahre, Jahr, y, yr, yrs
            age | months | 1 | Monate, Monat
            current | A | 0.001 | mA
            current | A | 1000 | kA
            current | A | 1 | amps
            """;

    private static final Map<String, Map<String, Foreign>> FOREIGN = UNITS.lines()
            .map(line -> line.split(" \\| "))
            .collect(Collectors.groupingBy(
                    row -> row[0],
                    Collectors.flatMapping(
                            row -> Arrays.stream(row[3].split(", "))
                                    .map(foreign -> Map.entry(foreign, Foreign.of(row))),
                            Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue))));

    /** Signs with a raised figure or a Greek letter, as people without them on the keyboard write them. */
    private static final Set<String> SIGNS =
            Set.of("mg/m3", "ug/m3", "m3", "ft3", "m3/h", "cm2", "m2", "g/cm3", "kg/m3");

    /**
     * What would do.
     *
     * @param ready the quantities that may be put in as they are
     */
    record Remedy(String words, List<String> ready) {}

    /** A quantity that is read, and when it holds. */
    private record Read(String quantity, String note) {
        @Override
        public String toString() {
            return '"' + quantity + '"' + note;
        }
    }

    private SameQuantity() {}

    /** The remedy for a unit that is not read: the same quantity in one that is, or those that are, without a number. */
    static Remedy inKnownUnit(String kind, String number, String unit, Collection<String> known) {
        String units = String.join(", ", known);
        if (unit.isEmpty()) {
            return new Remedy("add the unit: " + units + ".", List.of());
        }
        if (kind.equals("percent")) {
            return new Remedy("read the instrument again, and give its reading in %.", List.of());
        }
        return written(kind, number, unit, List.of())
                .map(c -> new Remedy("write " + c + ".", List.of(c.quantity())))
                .orElse(new Remedy("convert it to one of these units: " + units + ".", List.of()));
    }

    /** The remedy for a number that is not read; empty when it may mean nothing. */
    static Optional<Remedy> inPlainDigits(String kind, String number, String unit, Collection<String> known) {
        List<String> readings = Numbers.readings(number);
        List<Read> written = new ArrayList<>();
        for (String reading : readings) {
            written(kind, reading, unit, known).ifPresent(written::add);
        }
        if (readings.isEmpty() || written.size() < readings.size()) {
            return Optional.empty();
        }
        return Optional.of(new Remedy(
                written.size() == 1
                        ? (written.get(0).toString().contains(".") && number.contains(",")
                                        ? "use a decimal point: "
                                        : "write ")
                                + written.get(0) + "."
                        : "write " + written.get(0) + " when the comma parts decimals, " + written.get(1)
                                + " when it parts thousands.",
                written.stream().map(Read::quantity).toList()));
    }

    private static Optional<Read> written(String kind, String number, String unit, Collection<String> known) {
        if (known.contains(unit)) {
            return Optional.of(new Read((number + " " + unit).strip(), ""));
        }
        Foreign foreign = FOREIGN.getOrDefault(kind, Map.of()).get(normal(kind, unit));
        if (foreign == null) {
            return Optional.empty();
        }
        return amount(kind, number, unit)
                .map(converted -> new Read(
                        converted.stripTrailingZeros().toPlainString() + " " + foreign.unit(), foreign.note()));
    }

    /** The number of the unit that is to be written instead; empty for one without such a unit, and for what is no number. */
    static Optional<BigDecimal> amount(String kind, String number, String unit) {
        Foreign foreign = FOREIGN.getOrDefault(kind, Map.of()).get(normal(kind, unit));
        if (foreign == null) {
            return Optional.empty();
        }
        try {
            BigDecimal given = Numbers.decimal(number);
            BigDecimal exact = given.add(foreign.offset()).multiply(foreign.factor(), MathContext.DECIMAL64);
            return Optional.of(
                    foreign.offset().signum() == 0
                            ? exact
                            : exact.setScale(Math.max(0, given.scale()), RoundingMode.HALF_UP));
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
