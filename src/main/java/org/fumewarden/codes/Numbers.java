package org.fumewarden.codes;

import java.math.BigDecimal;
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
}
