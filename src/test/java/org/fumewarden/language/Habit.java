package org.fumewarden.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A way of saying things that this project has given up.
 *
 * @param where kinds of sentences that it is looked for in, see the list
 */
record Habit(Pattern pattern, String where, String reason) {

    static List<Habit> all() {
        try (InputStream in = Habit.class.getResourceAsStream("habits.tsv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> !l.startsWith("#") && !l.isBlank())
                    .map(l -> l.split("\t"))
                    .map(c -> new Habit(Pattern.compile(c[0]), c[1], c[2]))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** True where a sentence of this kind is to be free of it. */
    boolean concerns(String kind) {
        return switch (where) {
            case "english" -> !kind.equals("german");
            case "british" -> kind.equals("english") || kind.equals("page");
            case "us" -> kind.equals("us") || kind.equals("us-page");
            case "said" -> !kind.equals("german") && !kind.equals("literal");
            case "page" -> kind.endsWith("page");
            default -> kind.equals(where);
        };
    }

    /** What was found in a sentence, empty when it is free of the habit. */
    String found(String text) {
        Matcher matcher = pattern.matcher(text);
        return matcher.find() ? matcher.group() : "";
    }
}
