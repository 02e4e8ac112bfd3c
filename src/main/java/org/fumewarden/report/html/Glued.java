package org.fumewarden.report.html;

import java.util.regex.Pattern;
import org.apache.commons.text.WordUtils;

/** A figure and its unit, which no line break parts. */
public final class Glued {
    private static final char NO_BREAK = '\u00a0';
    private static final Pattern BEFORE_UNIT = Pattern.compile(
            "(?<=\\d) (?=(?:%|[mu]g/m3|ppm|m3(?:/h|/min)?|L/min|min|[hmg]|[mc]m|mg|[hk]?Pa|bar|°?C|A|V)(?![\\w/]))");

    private Glued() {}

    /** The text with a space that does not break before each unit. */
    public static String in(String text) {
        return BEFORE_UNIT.matcher(text).replaceAll(String.valueOf(NO_BREAK));
    }

    /** The text in lines of a width; what no line holds is cut. */
    public static String wrapped(String text, int width, String newLine) {
        return WordUtils.wrap(in(text), width, newLine, true).replace(NO_BREAK, ' ');
    }
}
