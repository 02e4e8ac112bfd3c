package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers in sentences, for reading only. */
final class Words {
    private static final MathContext SHORT = new MathContext(4, RoundingMode.HALF_UP);

    private Words() {}

    static String number(double value) {
        return BigDecimal.valueOf(value).round(SHORT).stripTrailingZeros().toPlainString();
    }

    static String minutes(double minutes) {
        return number(minutes) + " min";
    }
}
