package org.fumewarden.training;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Answers without what does not matter in them: case, accents, hyphens, points. */
final class Plain {
    private Plain() {}

    /** The words of an answer in lower case; umlauts as two letters, so that both ways of typing them agree. */
    static List<String> words(String text) {
        String folded = Normalizer.normalize(text, Normalizer.Form.NFC)
                .toLowerCase(Locale.ROOT)
                .replace("ä", "ae")
                .replace("ö", "oe")
                .replace("ü", "ue")
                .replace("ß", "ss")
                .replace("'", "")
                .replace("’", "");
        return Arrays.stream(folded.split("[^\\p{L}\\p{N}]+"))
                .filter(w -> !w.isEmpty())
                .toList();
    }

    /** The words with one blank between them. */
    static String line(String text) {
        return String.join(" ", words(text));
    }

    /** The words without any blank. */
    static String joined(String text) {
        return String.join("", words(text));
    }
}
