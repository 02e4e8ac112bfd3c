package org.fumewarden.task;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.DateTimeException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Numbers;
import org.fumewarden.model.Unit;

/** Numbers with units, as people write them in a task file. */
final class Quantities {
    private static final Pattern NUMBER_UNIT = Pattern.compile("([+-]?[0-9][0-9.eE+-]*)\\s*(\\S.*)?");

    /** Units per kind of question, with the factor to the canonical unit, which is the first. */
    private static final Map<String, Map<String, String>> UNITS = Map.ofEntries(
            Map.entry("percent", Map.of("%", "1")),
            Map.entry("length", ordered("m", "1", "ft", "0.3048", "km", "1000", "mm", "0.001")),
            Map.entry("volume", ordered("m3", "1", "ft3", "0.028316846592", "l", "0.001")),
            Map.entry(
                    "flow", ordered("l/min", "1", "L/min", "1", "m3/h", "16.6666666666666667", "cfm", "28.316846592")),
            Map.entry("mass-flow", ordered("kg/h", "1", "g/min", "0.06", "lb/h", "0.45359237")),
            Map.entry("duration", ordered("min", "1", "h", "60", "s", "0.0166666666666666667")),
            Map.entry("temperature", ordered("C", "1", "degC", "1")),
            Map.entry("mass", ordered("g", "1", "mg", "0.001", "kg", "1000")),
            Map.entry("pressure", ordered("Pa", "1", "hPa", "100", "mbar", "100", "kPa", "1000", "bar", "100000")),
            Map.entry("energy", ordered("Wh", "1", "kWh", "1000", "kJ", "0.2777777777777778")),
            Map.entry("area", ordered("cm2", "1", "m2", "10000")),
            Map.entry("density", ordered("g/cm3", "1", "kg/m3", "0.001", "g/L", "0.001")),
            Map.entry(
                    "age",
                    ordered(
                            "years",
                            "1",
                            "year",
                            "1",
                            "months",
                            "0.0833333333333333333",
                            "month",
                            "0.0833333333333333333")),
            Map.entry("current", ordered("A", "1")));

    private Quantities() {}

    /** A concentration with its unit. */
    record Level(BigDecimal value, Unit unit) {}

    /** The canonical unit of a kind of question. */
    static String canonical(String kind) {
        return switch (kind) {
            case "percent" -> "%";
            case "length" -> "m";
            case "volume" -> "m3";
            case "flow" -> "L/min";
            case "mass-flow" -> "kg/h";
            case "duration" -> "min";
            case "temperature" -> "C";
            case "mass" -> "g";
            case "pressure" -> "Pa";
            case "energy" -> "Wh";
            case "area" -> "cm2";
            case "density" -> "g/cm3";
            case "age" -> "years";
            case "current" -> "A";
            default -> "";
        };
    }

    /** Reads an amount of the given kind into its canonical unit. */
    static Optional<BigDecimal> amount(Located place, String kind) {
        String text = place.text();
        if (kind.equals("duration") && text.startsWith("P")) {
            return duration(place, text);
        }
        if (kind.equals("count")) {
            return signed(place, place.decimal(), false);
        }
        Map<String, String> units = UNITS.get(kind);
        Matcher match = NUMBER_UNIT.matcher(text);
        if (!match.matches()) {
            place.complain("must be a number with a unit but is \"" + Located.shown(text) + "\".", example(kind));
            return Optional.empty();
        }
        String unit = Optional.ofNullable(match.group(2)).orElse("").strip();
        if (!units.containsKey(unit)) {
            String found = unit.isEmpty() ? "has no unit." : "has the unit \"" + Located.shown(unit) + "\".";
            place.complain(found, unit.isEmpty() ? example(kind) : Nearest.maybe(unit, units.keySet()));
            return Optional.empty();
        }
        Optional<BigDecimal> number = number(place, match.group(1), kind)
                .map(n -> n.multiply(new BigDecimal(units.get(unit)), MathContext.DECIMAL64));
        return signed(place, number, kind.equals("temperature"));
    }

    /** Reads a concentration: mg/m3, ug/m3, ppm or ppb. */
    static Optional<Level> level(Located place) {
        return level(place, place.text());
    }

    /** Reads a concentration from words that stand in a place. */
    static Optional<Level> level(Located place, String text) {
        Matcher match = NUMBER_UNIT.matcher(text);
        if (!match.matches()) {
            place.complain(
                    "must be a concentration but is \"" + Located.shown(text) + "\".",
                    "\"0.12 mg/m3\", \"5 ppm\" or \"unknown\".");
            return Optional.empty();
        }
        Optional<BigDecimal> number = signed(place, number(place, match.group(1), "concentration"), false);
        String unit = Optional.ofNullable(match.group(2))
                .orElse("")
                .strip()
                .replace('µ', 'u')
                .replace('μ', 'u')
                .replace("³", "3");
        return switch (unit) {
            case "mg/m3" -> number.map(n -> new Level(n, Unit.MG_M3));
            case "ug/m3" -> number.map(n -> new Level(n.movePointLeft(3), Unit.MG_M3));
            case "ppm" -> number.map(n -> new Level(n, Unit.PPM));
            case "ppb" -> number.map(n -> new Level(n.movePointLeft(3), Unit.PPM));
            default -> {
                place.complain(
                        unit.isEmpty() ? "has no unit." : "has the unit \"" + Located.shown(unit) + "\".",
                        "\"" + match.group(1) + " mg/m3\" or \"" + match.group(1)
                                + " ppm\" (also ug/m3 and ppb), as the laboratory reported it.");
                yield Optional.empty();
            }
        };
    }

    private static Optional<BigDecimal> number(Located place, String text, String kind) {
        try {
            return Optional.of(Numbers.decimal(text));
        } catch (NumberFormatException e) {
            place.complain("has the number \"" + Located.shown(text) + "\", which cannot be read.", example(kind));
            return Optional.empty();
        }
    }

    private static Optional<BigDecimal> signed(Located place, Optional<BigDecimal> number, boolean negativeAllowed) {
        if (number.isPresent() && number.get().signum() < 0 && !negativeAllowed) {
            place.complain(
                    "is negative: \"" + Located.shown(place.text()) + "\".", "drop the sign, or write \"unknown\".");
            return Optional.empty();
        }
        return number;
    }

    private static Optional<BigDecimal> duration(Located place, String text) {
        try {
            Duration duration = Duration.parse(text);
            BigDecimal minutes =
                    BigDecimal.valueOf(duration.getSeconds()).divide(BigDecimal.valueOf(60), MathContext.DECIMAL64);
            return signed(place, Optional.of(minutes), false);
        } catch (DateTimeException | ArithmeticException e) {
            place.complain("is not a length of time: \"" + Located.shown(text) + "\".", example("duration"));
            return Optional.empty();
        }
    }

    private static String example(String kind) {
        return switch (kind) {
            case "percent" -> "\"20.9 %\" or \"unknown\".";
            case "length" -> "\"120 m\" or \"unknown\".";
            case "volume" -> "\"280 m3\" or \"unknown\".";
            case "flow" -> "\"180 L/min\" or \"unknown\".";
            case "mass-flow" -> "\"1.5 kg/h\" or \"unknown\".";
            case "duration" -> "\"PT4H\", \"4 h\", \"45 min\" or \"unknown\".";
            case "temperature" -> "\"25 C\" or \"unknown\".";
            case "mass" -> "\"80 g\" or \"unknown\".";
            case "pressure" -> "\"350 Pa\" or \"unknown\".";
            case "energy" -> "\"50 Wh\" or \"unknown\".";
            case "area" -> "\"90 cm2\", \"0.12 m2\" or \"unknown\".";
            case "density" -> "\"0.45 g/cm3\" or \"unknown\".";
            case "age" -> "\"1.5 years\", \"18 months\" or \"unknown\".";
            case "current" -> "\"180 A\" or \"unknown\".";
            default -> "a number such as 3, or \"unknown\".";
        };
    }

    private static Map<String, String> ordered(String... pairs) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i], pairs[i + 1]);
        }
        return map;
    }
}
