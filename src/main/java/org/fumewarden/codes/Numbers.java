package org.fumewarden.codes;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;

/** Plain decimal numbers, without exponents large enough to exhaust the machine. */
public final class Numbers {
    private static final Pattern PLAIN = Pattern.compile("[+-]?\\d{1,15}(\\.\\d{1,40})?([eE][+-]?\\d{1,2})?");

    private Numbers() {}

    /**
     * Reads a decimal number.
     *
     * @throws NumberFormatException when the text is no plain decimal number
     */
    public static BigDecimal decimal(String text) {
        if (!PLAIN.matcher(text).matches()) {
            throw new NumberFormatException(text);
        }
        return new BigDecimal(text);
    }

    /**
     * The numbers that a text with commas, blanks or apostrophes may mean, each written plainly: none when it is no number, two
     * when a single comma may part decimals or thousands. Then the first takes it for decimals.
     */
    public static List<String> readings(String text) {
        String joined = text.replaceAll("(?<=\\d)['\u2019_ \u00a0\u202f](?=\\d{3}(\\D|$))", "");
        int comma = joined.lastIndexOf(',');
        int point = joined.lastIndexOf('.');
        List<String> readings;
        if (joined.matches("[+-]?[1-9]\\d{0,2},\\d{3}")) {
            readings = List.of(joined.replace(',', '.'), joined.replace(",", ""));
        } else if (joined.matches("[+-]?\\d{1,3}(,\\d{3})+(\\.\\d+)?")
                        && joined.chars().filter(c -> c == ',').count() > 1
                || point > comma && joined.matches("[+-]?\\d{1,3}(,\\d{3})+\\.\\d+")) {
            readings = List.of(joined.replace(",", ""));
        } else if (joined.matches("[+-]?\\d{1,3}(\\.\\d{3})*,\\d+")) {
            readings = List.of(joined.replace(".", "").replace(',', '.'));
        } else if (joined.matches("[+-]?\\d{1,3}(\\.\\d{3}){2,}")) {
            readings = List.of(joined.replace(".", ""));
        } else {
            readings = List.of(joined.replace(',', '.'));
        }
        return readings.stream().filter(r -> PLAIN.matcher(r).matches()).toList();
    }
}
