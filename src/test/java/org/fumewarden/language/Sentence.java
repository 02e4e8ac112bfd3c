package org.fumewarden.language;

import java.util.Arrays;
import java.util.List;

/**
 * Something that people read.
 *
 * @param where file and key
 * @param kind the word of the list of habits that decides which habits are looked for
 */
record Sentence(String where, String kind, String text) {

    /** The sentences of a text: what stands between two full stops, question or exclamation marks. */
    List<String> parts() {
        return Arrays.stream(text.split("(?<=[.?!])\\s+(?=[\\p{Lu}{\"\\d])")).toList();
    }

    /** Words of a sentence; a place that a rule fills counts as one. */
    static int words(String sentence) {
        return (int) Arrays.stream(sentence.strip().split("[\\s]+"))
                .filter(w -> w.matches(".*[\\p{L}\\d}].*"))
                .count();
    }
}
