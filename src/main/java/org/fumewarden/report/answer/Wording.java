package org.fumewarden.report.answer;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;

/** The words of one code where they differ from those of the rule base, such as American spelling; whole words only. */
final class Wording {
    /** For a sheet in another language. */
    static final Wording NONE = new Wording(Map.of());

    private final Map<String, String> words;
    private final Pattern any;

    Wording(Vocabulary vocabulary) {
        this(vocabulary.catalogues().getOrDefault("wording", Map.of()));
    }

    private Wording(Map<String, String> table) {
        words = table.entrySet().stream()
                .collect(Collectors.toMap(e -> e.getKey().replace('-', ' '), Map.Entry::getValue));
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

    /** A part of a sheet in the words of the code. */
    Part of(Part part) {
        return words.isEmpty()
                ? part
                : new Part(
                        part.key(),
                        of(part.title()),
                        part.lines().stream().map(this::of).toList());
    }

    private Line of(Line line) {
        UnaryOperator<String> say = this::of;
        if (line instanceof Line.Says says && says.language().isEmpty()) {
            return new Line.Says(says.sign(), of(says.lead()), of(says.says()), says.notes(), says.language());
        }
        if (line instanceof Line.State state) {
            return new Line.State(state.word(), of(state.says()));
        }
        if (line instanceof Line.Table table) {
            List<List<String>> rows =
                    table.rows().stream().map(r -> r.stream().map(say).toList()).toList();
            return new Line.Table(table.heads().stream().map(say).toList(), rows, table.numbers());
        }
        return line instanceof Line.Head head ? new Line.Head(of(head.text())) : line;
    }
}
