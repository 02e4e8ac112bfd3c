package org.fumewarden.codes;

import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Words that somebody's folder has otherwise than the program: everyday words for answers, and those of sentences. */
public final class EditedWords {
    /** How each begins that differs. */
    public static final String WORD = "Word ";

    private static final String NONE = "none";

    private EditedWords() {}

    /** What differs with what this folder has for it, and what the program has. */
    public static SortedMap<String, String> between(Map<String, String> now, Map<String, String> program) {
        SortedMap<String, String> edited = new TreeMap<>();
        Set<String> all = new TreeSet<>(now.keySet());
        all.addAll(program.keySet());
        for (String word : all) {
            String here = now.getOrDefault(word, NONE);
            String there = program.getOrDefault(word, NONE);
            if (!here.equals(there)) {
                edited.put(WORD + word + ", here " + here, there);
            }
        }
        return edited;
    }

    /** A word with where it stands. */
    public static String word(String word, String place) {
        return '"' + word + "\" (" + place + ")";
    }
}
