package org.fumewarden.codes;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Characters that begin a line, move the cursor, turn the direction of writing or are not seen. No answer, title or reason
 * needs one, and with them a text can pretend to be another line of a report.
 */
public final class Hidden {
    /** Unicode general categories Cc, Cf, Zl, Zp, Co, Cs and Cn; fillers, joiners and variation selectors, which show nothing. */
    private static final Pattern ANY =
            Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}\\p{Co}\\p{Cs}\\p{Cn}\\u034F\\u115F\\u1160\\u17B4\\u17B5"
                    + "\\u180B-\\u180F\\u2800\\u3164\\uFE00-\\uFE0F\\uFFA0\\x{E0100}-\\x{E01EF}]");

    /** Where the letters and signs of ASCII end, all of which are seen. */
    private static final char DELETE = 0x7F;

    private Hidden() {}

    /** The first such character of a text, by its number in Unicode; empty when there is none. */
    public static Optional<String> first(String text) {
        if (text.chars().allMatch(c -> c >= ' ' && c < DELETE)) {
            return Optional.empty();
        }
        return ANY.matcher(text)
                .results()
                .findFirst()
                .map(m -> "U+" + String.format(Locale.ROOT, "%04X", m.group().codePointAt(0)));
    }

    /** The text with each such character shown by its number, so that it does nothing. */
    public static String shown(String text) {
        return ANY.matcher(text)
                .replaceAll(
                        m -> String.format(Locale.ROOT, "[U+%04X]", m.group().codePointAt(0)));
    }

    /** The words of a person in quotes, so that they end where the person ended. */
    public static String quoted(String text) {
        return '"' + shown(text).replace('"', '\'') + '"';
    }
}
