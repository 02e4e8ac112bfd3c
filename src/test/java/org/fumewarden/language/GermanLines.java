package org.fumewarden.language;

import java.util.List;

/** What is left in English of lines that were printed in German. */
public final class GermanLines {
    private GermanLines() {}

    /**
     * The faults found, empty for none.
     *
     * @param typed what a person typed, which stays in the language of that person
     */
    public static String faults(String where, String printed, List<String> typed) {
        String own = typed.stream().reduce(printed, (text, word) -> text.replace(word, ""));
        return LanguageTest.faults(own.lines()
                .filter(line -> !line.isBlank())
                .map(line -> new Sentence(where, "german", line.strip()))
                .toList());
    }
}
