package org.fumewarden.endurance;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as they stand in a sentence. */
final class Figures {
    private static final MathContext FOUR_DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);

    private Figures() {}

    /** Four digits at most, without exponent and trailing zeros; what is no number is named as such. */
    static String plain(double value) {
        if (!Double.isFinite(value)) {
            return String.valueOf(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(FOUR_DIGITS).stripTrailingZeros();
        return (rounded.signum() == 0 ? BigDecimal.ZERO : rounded).toPlainString();
    }

    /** Whole minutes, rounded down, so that no sentence promises more than was reckoned. */
    static long minutesDown(double minutes) {
        return (long) Math.floor(minutes);
    }
}
