package org.fumewarden.model;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people read them. */
public final class Figures {
    private static final MathContext READABLE = new MathContext(4, RoundingMode.CEILING);

    private Figures() {}

    /** At most four figures, rounded up so that print never understates; shorter numbers stay as they are. */
    public static String shown(BigDecimal number) {
        BigDecimal plain = number.stripTrailingZeros();
        boolean whole = plain.scale() <= 0;
        return (whole || plain.precision() <= READABLE.getPrecision() ? plain : plain.round(READABLE))
                .stripTrailingZeros()
                .toPlainString();
    }
}
