package org.fumewarden.report.html;

import java.util.Comparator;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;

/** The words of one code where they differ from those of the rule base, such as American spelling; whole words only. */
final class Wording {
    private final Map<String, String> words;
    private final Pattern any;

    /**
     * The words.
     *
     * @param table American words by British ones, a dash for a space and a low line for a dash; empty to leave all as it is
     */
    Wording(Map<String, String> table) {
        words = table.entrySet().stream()
                .collect(Collectors.toMap(e -> e.getKey().replace('-', ' ').replace('_', '-'), Map.Entry::getValue));
        any = Pattern.compile(
                words.keySet().stream()
                        .sorted(Comparator.comparingInt(String::length).reversed())
                        .map(Pattern::quote)
                        .collect(Collectors.joining("|", "\\b(", ")\\b")),
                Pattern.CASE_INSENSITIVE);
    }

    /** A text in the words of the code. */
    String of(String text) {
        return words.isEmpty()
                ? text
                : any.matcher(text)
                        .replaceAll(m -> Matcher.quoteReplacement(
                                like(m.group(), words.get(m.group().toLowerCase()))));
    }

    private static String like(String found, String word) {
        return Character.isUpperCase(found.charAt(0)) ? StringUtils.capitalize(word) : word;
    }
}
