package org.fumewarden.exposure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Words that several results share. */
final class Sentences {
    static final String ALL_EQUAL =
            "All samples are equal, so their spread is unknown and no test can pass. Check whether they were rounded or copied.";
    private static final MathContext SHORT = new MathContext(3, RoundingMode.HALF_UP);

    private Sentences() {}

    /** Three digits, for reading only. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            return "no number";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(SHORT).stripTrailingZeros();
        boolean plain = rounded.precision() - rounded.scale() <= 7 && rounded.scale() <= 7;
        return plain ? rounded.toPlainString() : rounded.toString();
    }
}
