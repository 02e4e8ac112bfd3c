package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;

/**
 * A sentence with places to fill.
 *
 * @param pieces text and places in the order of the sentence
 * @param names of what the places name before a dot: parts of the conclusion or bindings of the rule
 * @param fixed the text around the places
 * @param begun the same, with a capital at the beginning
 */
record Template(List<Piece> pieces, Set<String> names, List<String> fixed, List<String> begun) {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z]+)(?:\\.([a-zA-Z]+))?}");

    /**
     * A stretch of text, then a place.
     *
     * @param before text before the place
     * @param name what the place names; empty at the end of the sentence
     * @param part part of the bound fact; empty for the whole
     */
    record Piece(String before, String name, String part) {
        /** The place as the rule's author wrote it. */
        String written() {
            return part.isEmpty() ? "{" + name + "}" : "{" + name + "." + part + "}";
        }
    }

    static Template of(String text) {
        List<Piece> pieces = new ArrayList<>();
        Matcher matcher = PLACEHOLDER.matcher(text);
        int from = 0;
        while (matcher.find()) {
            String part = matcher.group(2) == null ? "" : matcher.group(2);
            pieces.add(new Piece(text.substring(from, matcher.start()), matcher.group(1), part));
            from = matcher.end();
        }
        Set<String> names = pieces.stream().map(Piece::name).collect(Collectors.toUnmodifiableSet());
        pieces.add(new Piece(text.substring(from), "", ""));
        List<String> fixed = pieces.stream().map(Piece::before).toList();
        List<String> begun = new ArrayList<>(fixed);
        begun.set(0, StringUtils.capitalize(begun.get(0)));
        return new Template(List.copyOf(pieces), names, fixed, List.copyOf(begun));
    }
}
