package org.fumewarden.endurance;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as they stand in a sentence. */
final class WrittenNumbers {
    private static final MathContext FOUR_DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);

    private static final long HOUR = 60;

    private WrittenNumbers() {}

    /** Four digits at most, without exponent and trailing zeros; what is no number is named as such. */
    static String plain(double value) {
        if (!Double.isFinite(value)) {
            return String.valueOf(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(FOUR_DIGITS).stripTrailingZeros();
        return (rounded.signum() == 0 ? BigDecimal.ZERO : rounded).toPlainString();
    }

    /** A long time rounded down to whole hours, a short one to minutes. */
    static String about(double minutes) {
        return minutes < 10 * HOUR ? clock(minutesDown(minutes)) : minutesDown(minutes) / HOUR + " h";
    }

    /** Minutes as people say them: 45 min, 2 h, 7 h 40 min. */
    static String clock(long minutes) {
        String hours = minutes < HOUR ? "" : minutes / HOUR + " h";
        String rest = minutes % HOUR == 0 && minutes > 0 ? "" : minutes % HOUR + " min";
        return (hours + " " + rest).strip();
    }

    /** Whole minutes, rounded down, so that no sentence promises more than was calculated. */
    static long minutesDown(double minutes) {
        return (long) Math.floor(minutes);
    }
}
