package org.fumewarden.report.html;

import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Figures and days inside a sentence as a language writes them. */
public final class Written {
    /** A figure: no section of a law, which has more digits before its point, and no number of a clause with two points. */
    private static final Pattern FIGURE = Pattern.compile("(?<![\\d.\\w])(\\d{1,3})\\.(\\d+)(?![\\d.]*\\.\\d|\\d|\\()");

    private static final Pattern DAY = Pattern.compile("\\b(\\d{4}-\\d{2}-\\d{2})\\b");

    private Written() {}

    /** The text with the decimal sign and the days of the language. */
    public static String in(String language, String text) {
        Locale locale = Locale.forLanguageTag(language);
        char point = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        if (point == '.') {
            return text;
        }
        DateTimeFormatter days =
                DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale);
        return DAY.matcher(FIGURE.matcher(text).replaceAll("$1" + point + "$2"))
                .replaceAll(m ->
                        Matcher.quoteReplacement(LocalDate.parse(m.group(1)).format(days)));
    }
}
