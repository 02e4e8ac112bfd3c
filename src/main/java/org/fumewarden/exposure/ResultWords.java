package org.fumewarden.exposure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Words that several results share. */
final class ResultWords {
    static final String ALL_EQUAL =
            "All samples are equal, so their spread is unknown and no test can pass. Check whether they were rounded or copied.";
    private static final MathContext CERTAIN = new MathContext(9, RoundingMode.HALF_UP);
    private static final MathContext UP = new MathContext(2, RoundingMode.CEILING);
    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_UP);
    private static final int TYPED = 4;

    private ResultWords() {}

    /** As it was typed; a calculated number to two digits, rounded up, for reading only. Whole numbers stay whole. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            return "no number";
        }
        BigDecimal exact = BigDecimal.valueOf(value).round(CERTAIN).stripTrailingZeros();
        return words(exact.precision() <= TYPED || exact.scale() <= 0 ? exact : exact.round(UP));
    }

    /** Three digits of a statistic of a test, for reading only. */
    static String statistic(double value) {
        return words(BigDecimal.valueOf(value).round(THREE));
    }

    private static String words(BigDecimal value) {
        BigDecimal rounded = value.stripTrailingZeros();
        boolean plain = rounded.precision() - rounded.scale() <= 7 && rounded.scale() <= 7;
        return plain ? rounded.toPlainString() : rounded.toString();
    }
}
