package org.fumewarden.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.model.Figures;
import org.fumewarden.report.html.Glued;
import org.fumewarden.report.html.Speech;

/** A page of plain text under way. */
final class Page {
    private static final int WIDTH = 88;
    private static final Pattern SENTENCES = Pattern.compile("(?<=[.?!]) +(?=\\p{Lu})");
    private static final MathContext TWO = new MathContext(2, RoundingMode.HALF_UP);
    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_UP);
    private static final MathContext CERTAIN = new MathContext(9, RoundingMode.HALF_UP);
    private static final MathContext DOWN = new MathContext(2, RoundingMode.FLOOR);
    private static final double NEARLY_ALL = 99;
    /** A share that no set of samples can tell from none. */
    private static final double TINY = 0.0001;

    private final StringBuilder out = new StringBuilder();
    private final Set<String> said = new HashSet<>();
    private final Speech speech;

    Page(Speech speech) {
        this.speech = speech;
    }

    /** The title, as it is. */
    void title(String text) {
        out.append(text).append('\n');
        line(StringUtils.repeat('=', Math.min(WIDTH, text.length())));
    }

    /** Opens a section. Within one no sentence is said twice. */
    void head(String english) {
        said.clear();
        String text = speech.told(english);
        line("");
        line(text);
        line(StringUtils.repeat('-', Math.min(WIDTH, text.length())));
    }

    void paragraph(String english) {
        String told = speech.told(english);
        String text = Arrays.stream(SENTENCES.split(told))
                .filter(s -> said.add(s) || s.startsWith("- "))
                .collect(Collectors.joining(" "));
        if (text.isEmpty()) {
            return;
        }
        String wrapped = Glued.wrapped(text.strip(), WIDTH - 4, "\n");
        String hang = text.startsWith("- ") ? "    " : "  ";
        out.append("  ").append(wrapped.replace("\n", "\n" + hang)).append('\n');
    }

    void line(String text) {
        out.append(speech.told(text)).append('\n');
    }

    String text() {
        return out.toString();
    }

    /** As it was typed; a calculated number to two digits, rounded up, as the sheet of advice has it. */
    static String number(double value) {
        return Figures.shown(value);
    }

    /** What a respirator gives, or a limit that was lowered: to two digits, rounded down. */
    static String atMost(double value) {
        BigDecimal exact = BigDecimal.valueOf(value).round(CERTAIN);
        return plain(
                exact.compareTo(BigDecimal.valueOf(NEARLY_ALL)) > 0
                        ? exact.setScale(0, RoundingMode.FLOOR)
                        : exact.round(DOWN));
    }

    /** Three digits of a statistic of a test. */
    static String statistic(double value) {
        return plain(BigDecimal.valueOf(value).round(THREE));
    }

    static String percent(double share) {
        BigDecimal exact = BigDecimal.valueOf(100 * share);
        if (share > 0 && share < TINY) {
            return "less than 0.01 %";
        }
        if (share < 1 && share > 1 - TINY) {
            return "more than 99.99 %";
        }
        return plain(exact.round(100 * share > NEARLY_ALL ? THREE : TWO)) + " %";
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }
}
