package org.fumewarden.task;

import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import org.fumewarden.codes.Numbers;

/**
 * A quantity spelt as the tables spell it: the same number in the same unit. What may mean two things stays as it was, so that
 * the reader asks.
 */
public final class Spelling {
    private static final Set<String> WITHOUT_UNIT = Set.of("choice", "flag", "day", "text");

    private Spelling() {}

    /**
     * The same quantity with a point for a decimal comma and with the unit by its usual sign: "0,5 Std." is "0.5 h".
     *
     * @param kind of question, or {@code concentration}
     */
    public static String of(String kind, String text) {
        if (WITHOUT_UNIT.contains(kind)) {
            return text;
        }
        String below = text.startsWith("<") ? "<" : "";
        String rest = text.substring(below.length()).strip();
        Matcher match = Quantities.NUMBER_UNIT.matcher(rest);
        if (!match.matches()) {
            return text;
        }
        String unit = match.group(2) == null ? "" : match.group(2).strip();
        String spelt = (number(match.group(1)) + " " + SameQuantity.sign(kind, unit)).strip();
        boolean same = spelt.equals((match.group(1) + " " + unit).strip());
        return same ? text : below + spelt;
    }

    private static String number(String text) {
        List<String> readings = Numbers.readings(text.strip());
        return text.contains(",") && readings.size() == 1 ? readings.get(0) : text;
    }
}
