package org.fumewarden.report.upkeep;

import java.util.stream.Collectors;

/**
 * Folds the lines of an iCalendar file at 75 octets (RFC 5545 section 3.1).
 *
 * <p>The library folds by characters, which lets a line of another script grow to three times that. A line is folded between
 * code points only.
 */
final class Folding {
    private static final int OCTETS = 75;
    private static final String BREAK = "\r\n ";

    private Folding() {}

    static String fold(String calendar) {
        return calendar.lines().map(Folding::line).collect(Collectors.joining("\r\n", "", "\r\n"));
    }

    private static String line(String line) {
        StringBuilder out = new StringBuilder();
        int used = 0;
        for (int codePoint : line.codePoints().toArray()) {
            int octets = octets(codePoint);
            if (used + octets > OCTETS) {
                out.append(BREAK);
                used = 1;
            }
            out.appendCodePoint(codePoint);
            used += octets;
        }
        return out.toString();
    }

    private static int octets(int codePoint) {
        if (codePoint < 0x80) {
            return 1;
        }
        if (codePoint < 0x800) {
            return 2;
        }
        return codePoint < 0x10000 ? 3 : 4;
    }
}
