package org.fumewarden.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.lang3.StringUtils;
import org.apache.commons.text.WordUtils;

/** A page of plain text under way. */
final class Page {
    private static final int WIDTH = 88;
    private static final MathContext SHORT = new MathContext(4, RoundingMode.HALF_UP);

    private final StringBuilder out = new StringBuilder();

    void title(String text) {
        line(text);
        line(StringUtils.repeat('=', Math.min(WIDTH, text.length())));
    }

    void head(String text) {
        line("");
        line(text);
        line(StringUtils.repeat('-', Math.min(WIDTH, text.length())));
    }

    void paragraph(String text) {
        String wrapped = WordUtils.wrap(text.strip(), WIDTH - 4, "\n", false);
        String hang = text.startsWith("- ") ? "    " : "  ";
        line("  " + wrapped.replace("\n", "\n" + hang));
    }

    void line(String text) {
        out.append(text).append('\n');
    }

    String text() {
        return out.toString();
    }

    /** Four digits, for reading only. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(SHORT).stripTrailingZeros();
        boolean plain = rounded.precision() - rounded.scale() <= 9 && rounded.scale() <= 9;
        return plain ? rounded.toPlainString() : rounded.toString();
    }

    static String percent(double share) {
        return number(100 * share) + " %";
    }
}
