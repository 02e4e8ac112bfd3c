package org.fumewarden.model;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.regex.Pattern;

/** Numbers as people read them: one figure for one quantity, wherever it stands. */
public final class Figures {
    private static final Pattern SPAN = Pattern.compile("\\bP(\\d+)([DWMY])\\b");
    private static final int TYPED = 4;
    /** What is beyond it is error of the arithmetic. */
    private static final MathContext CERTAIN = new MathContext(9, RoundingMode.HALF_UP);

    private static final MathContext DOWN = new MathContext(2, RoundingMode.FLOOR);

    private static final MathContext TWO = new MathContext(2, RoundingMode.CEILING);

    private static final BigDecimal TEN_KILOPASCALS = new BigDecimal("10000");

    private Figures() {}

    /** As it was typed; what was calculated, with more than four figures, to two, rounded up so that print never understates. */
    public static String shown(BigDecimal number) {
        BigDecimal plain = number.stripTrailingZeros();
        return (plain.precision() <= TYPED ? plain : short2(plain)).toPlainString();
    }

    /** A calculated level to as many figures, up to four, as its printed ratio to the limit follows from; two where none do. */
    public static String agreeing(BigDecimal level, BigDecimal limit, String ratio) {
        BigDecimal plain = level.stripTrailingZeros();
        BigDecimal against = new BigDecimal(limit(limit));
        if (against.signum() > 0 && plain.precision() > TYPED) {
            for (int figures = 2; figures <= TYPED; figures++) {
                BigDecimal printed = plain.round(new MathContext(figures, RoundingMode.CEILING))
                        .stripTrailingZeros();
                if (factor(printed.divide(against, CERTAIN)).equals(ratio)) {
                    return printed.toPlainString();
                }
            }
        }
        return shown(level);
    }

    /** True for a pressure that nobody tells in pascals, such as that of the air. */
    public static boolean inKilopascals(BigDecimal value, String unit) {
        return unit.equals("Pa") && value.compareTo(TEN_KILOPASCALS) >= 0;
    }

    /** Such a pressure in kilopascals, to four figures. */
    public static BigDecimal kilopascals(BigDecimal pascals) {
        return pascals.movePointLeft(3).round(new MathContext(TYPED, RoundingMode.HALF_UP));
    }

    /** A limit: what was calculated is rounded down, so that print never allows more. */
    public static String limit(BigDecimal number) {
        BigDecimal plain = number.stripTrailingZeros();
        return plain.precision() <= TYPED
                ? plain.toPlainString()
                : plain.round(DOWN).toPlainString();
    }

    /** As {@link #shown(BigDecimal)}, of a number that was calculated. */
    public static String shown(double number) {
        return shown(BigDecimal.valueOf(number).round(CERTAIN));
    }

    /** A text with its spans of time in words: {@code P5Y} is 5 years. */
    public static String spans(String text) {
        return SPAN.matcher(text).replaceAll(span -> {
            String unit =
                    Map.of("D", "day", "W", "week", "M", "month", "Y", "year").get(span.group(2));
            return span.group(1) + " " + unit + (span.group(1).equals("1") ? "" : "s");
        });
    }

    /** A factor to two figures, rounded up so that print never asks for less; whole numbers stay whole. */
    public static String factor(BigDecimal number) {
        return short2(number.stripTrailingZeros()).toPlainString();
    }

    private static BigDecimal short2(BigDecimal plain) {
        return plain.scale() <= 0 ? plain : plain.round(TWO).stripTrailingZeros();
    }
}
