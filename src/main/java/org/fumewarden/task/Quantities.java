package org.fumewarden.task;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.DateTimeException;
import java.time.Duration;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Numbers;
import org.fumewarden.model.Unit;

/** Numbers with units, as people write them in a task file. */
final class Quantities {
    private static final Pattern RANGE = Pattern.compile("[+-]?[0-9][0-9.,]*(?![eE][+-]?[0-9])"
            + "(?:\\s*[^\\s0-9.,\u2013\u2014\u00b1~-][^\\s\u2013\u2014\u00b1~-]*)?"
            + "\\s*(?:-|\u2013|\u2014|\u00b1|\\.\\.+|\u2026|~|\\bto\\b|\\bbis\\b|\\band\\b)\\s*[.,]?[0-9].*");
    private static final Pattern OTHER_BASE = Pattern.compile("[+-]?0[xXbBoO][0-9a-fA-F]");
    private static final Pattern FORMULA =
            Pattern.compile("[0-9.,]+\\s*[*/+x\u00d7^]\\s*[0-9]|[<>~\u2248\u2264\u2265]");
    private static final Pattern BARE_POINT = Pattern.compile("[+-]?[.,][0-9]");

    static final Pattern NUMBER_UNIT =
            Pattern.compile("([+-]?[0-9](?:[0-9.,'\u2019_]|[ \u00a0\u202f](?=[0-9])|[eE][+-]?[0-9])*)\\s*(\\S.*)?");

    /** A million parts of a million, and by mass about what a cubic metre of air weighs: a kilogram. */
    private static final BigDecimal WHOLE_AIR = new BigDecimal("1000000");

    private static final List<String> LEVELS = List.of("mg/m3", "ug/m3", "ppm", "ppb");

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

    /** Of the shares that are asked, only that of oxygen is one by volume; others are by weight or of a limit. */
    private static final Pattern BY_VOLUME = Pattern.compile("(?i)\\s*(vol\\.?-?\\s*%|%\\s*vol\\.?)$");

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
        boolean ofAir = place.path().endsWith("oxygen");
        String text = Spelling.of(kind, ofAir ? BY_VOLUME.matcher(place.text()).replaceFirst(" %") : place.text());
        if (kind.equals("duration") && text.startsWith("P")) {
            return duration(place, text);
        }
        if (kind.equals("count")) {
            return signed(place, place.decimal(), false);
        }
        Map<String, String> units = UNITS.get(kind);
        Matcher match = NUMBER_UNIT.matcher(text);
        if (!match.matches()) {
            unread(place, text, "a number with a unit", kind);
            return Optional.empty();
        }
        String unit = Optional.ofNullable(match.group(2)).orElse("").strip();
        Optional<BigDecimal> number = number(place, match.group(1), unit, kind, units.keySet());
        if (number.isPresent() && !units.containsKey(unit)) {
            if (odd(place, text, kind)) {
                return Optional.empty();
            }
            foreign(place, match.group(1), unit, kind, units.keySet());
            return Optional.empty();
        }
        return signed(
                place,
                number.map(n -> n.multiply(new BigDecimal(units.get(unit)), MathContext.DECIMAL64)),
                kind.equals("temperature"));
    }

    private static void unread(Located place, String text, String wanted, String kind) {
        if (BARE_POINT.matcher(text).lookingAt()) {
            place.complain(
                    Fault.POINT,
                    "begins with a point: \"" + Located.shown(text) + "\". A digit may be missing before it.",
                    "write the zero, if it is one, as in 0.5; or \"unknown\".");
        } else if (!odd(place, text, kind)) {
            place.complain(
                    Fault.AMOUNT, "must be " + wanted + " but is \"" + Located.shown(text) + "\".", example(kind));
        }
    }

    /** Complains about two numbers in place of one, and about a number that is not written in tens. */
    private static boolean odd(Located place, String text, String kind) {
        boolean range = RANGE.matcher(text).lookingAt();
        if (range) {
            place.complain(
                    Fault.RANGE,
                    "is a range: \"" + Located.shown(text) + "\". One figure is read.",
                    kind.equals("concentration")
                            ? "give the higher end, or each sample under samples:."
                            : "give the one figure that holds, or \"unknown\".");
        } else if (OTHER_BASE.matcher(text).lookingAt()) {
            place.complain(
                    Fault.FIGURE,
                    "is not written in tens: \"" + Located.shown(text) + "\". Digits, a point and a unit are read.",
                    example(kind));
        } else if (FORMULA.matcher(text).lookingAt()) {
            place.complain(
                    Fault.FIGURE,
                    "is a sum or a comparison: \"" + Located.shown(text) + "\". One figure with its unit is read.",
                    example(kind));
        } else {
            return false;
        }
        return true;
    }

    private static void foreign(Located place, String number, String unit, String kind, Collection<String> known) {
        SameQuantity.Remedy remedy = SameQuantity.inKnownUnit(kind, number, unit, known);
        place.complain(
                unit.isEmpty() ? Fault.UNIT_NONE : Fault.UNIT,
                unit.isEmpty() ? "has no unit." : "has the unit \"" + Located.shown(unit) + "\".",
                remedy.words(),
                remedy.ready());
    }

    /** Reads a concentration: mg/m3, ug/m3, ppm or ppb. */
    static Optional<Level> level(Located place) {
        return level(place, place.text());
    }

    /** Reads a concentration from words that stand in a place. */
    static Optional<Level> level(Located place, String written) {
        String text = Spelling.of("concentration", written);
        Matcher match = NUMBER_UNIT.matcher(text);
        if (!match.matches()) {
            unread(place, text, "a concentration", "concentration");
            return Optional.empty();
        }
        String unit = Optional.ofNullable(match.group(2)).orElse("").strip();
        Optional<BigDecimal> number =
                signed(place, number(place, match.group(1), unit, "concentration", LEVELS), false);
        if (number.isPresent() && !LEVELS.contains(unit) && !odd(place, text, "concentration")) {
            if (SameQuantity.amount("concentration", match.group(1), unit)
                    .filter(a -> a.compareTo(WHOLE_AIR) >= 0)
                    .isPresent()) {
                return Impossible.level(place, "cannot be right in air, and has the unit", unit);
            }
            foreign(place, match.group(1), unit, "concentration", LEVELS);
        }
        Optional<Level> level =
                switch (unit) {
                    case "mg/m3" -> number.map(n -> new Level(n, Unit.MG_M3));
                    case "ug/m3" -> number.map(n -> new Level(n.movePointLeft(3), Unit.MG_M3));
                    case "ppm" -> number.map(n -> new Level(n, Unit.PPM));
                    case "ppb" -> number.map(n -> new Level(n.movePointLeft(3), Unit.PPM));
                    default -> Optional.empty();
                };
        return level.filter(l -> l.value().compareTo(WHOLE_AIR) > 0).isPresent()
                ? Impossible.level(place, "is more than the air itself:", place.text())
                : level;
    }

    private static Optional<BigDecimal> number(
            Located place, String text, String unit, String kind, Collection<String> known) {
        try {
            return Optional.of(Numbers.decimal(text));
        } catch (NumberFormatException e) {
            if (!odd(place, place.text(), kind)) {
                SameQuantity.Remedy remedy = SameQuantity.inPlainDigits(kind, text, unit, known)
                        .orElse(new SameQuantity.Remedy(example(kind), List.of()));
                place.complain(
                        Fault.NUMBER,
                        "has the number \"" + Located.shown(text) + "\", which cannot be read for certain.",
                        remedy.words(),
                        remedy.ready());
            }
            return Optional.empty();
        }
    }

    private static Optional<BigDecimal> signed(Located place, Optional<BigDecimal> number, boolean negativeAllowed) {
        if (number.isPresent() && number.get().signum() < 0 && !negativeAllowed) {
            place.complain(
                    Fault.NEGATIVE,
                    "is negative: \"" + Located.shown(place.text()) + "\".",
                    "check the reading, or write \"unknown\".");
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
            place.complain(
                    Fault.TIME, "is not a length of time: \"" + Located.shown(text) + "\".", example("duration"));
            return Optional.empty();
        }
    }

    private static String example(String kind) {
        String form =
                switch (kind) {
                    case "concentration" -> "0.12 mg/m3 or 5 ppm";
                    case "percent" -> "20.9 %";
                    case "length" -> "120 m";
                    case "volume" -> "280 m3";
                    case "flow" -> "180 L/min";
                    case "mass-flow" -> "1.5 kg/h";
                    case "duration" -> "PT4H, 4 h or 45 min";
                    case "temperature" -> "25 C";
                    case "mass" -> "80 g";
                    case "pressure" -> "350 Pa";
                    case "energy" -> "50 Wh";
                    case "area" -> "90 cm2 or 0.12 m2";
                    case "density" -> "0.45 g/cm3";
                    case "age" -> "1.5 years or 18 months";
                    case "current" -> "180 A";
                    default -> "3";
                };
        return "write your own number in the manner of " + form + "; or \"unknown\".";
    }

    private static Map<String, String> ordered(String... pairs) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i], pairs[i + 1]);
        }
        return map;
    }

    /** True for a level above zero. An instrument shows 0 for whatever lies below its lowest reading, so a zero is complained of. */
    static boolean found(Located place, String text, Level level) {
        if (positive(level.value())) {
            return true;
        }
        place.complain(
                Fault.ZERO,
                "is no result above zero: \"" + Located.shown(text) + "\".",
                "nothing was found: write < and the detection limit that the laboratory states, or the lowest reading of the instrument.");
        return false;
    }

    static boolean positive(BigDecimal value) {
        return value.doubleValue() > 0 && Double.isFinite(value.doubleValue());
    }
}
