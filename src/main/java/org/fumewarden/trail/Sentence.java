package org.fumewarden.trail;

import java.util.ArrayList;
import java.util.List;

/**
 * A sentence that knows which words stand in its places, so that sentences of one form can be told by their form once and
 * by what differs.
 */
public final class Sentence {
    private final List<String> fixed;
    private final List<String> filled;
    private final String text;

    /**
     * Takes the sentence apart.
     *
     * @param fixed the stretches around the places, one more than there are places
     * @param filled the words in the places
     */
    public Sentence(List<String> fixed, List<String> filled) {
        if (fixed.size() != filled.size() + 1) {
            throw new IllegalArgumentException("a sentence has one piece more than places: " + fixed + filled);
        }
        this.fixed = List.copyOf(fixed);
        this.filled = List.copyOf(filled);
        StringBuilder all = new StringBuilder(fixed.get(0));
        for (int i = 0; i < filled.size(); i++) {
            all.append(filled.get(i)).append(fixed.get(i + 1));
        }
        this.text = all.toString();
    }

    /** A sentence that is one place. */
    public static Sentence plain(String text) {
        return new Sentence(List.of("", ""), List.of(text));
    }

    public List<String> fixed() {
        return fixed;
    }

    public List<String> filled() {
        return filled;
    }

    /** The same sentence with one place more, at its end. */
    public Sentence and(String more) {
        List<String> stretches = new ArrayList<>(fixed);
        List<String> words = new ArrayList<>(filled);
        stretches.add("");
        words.add(more);
        return new Sentence(stretches, words);
    }

    public String text() {
        return text;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Sentence sentence && text.equals(sentence.text) && fixed.equals(sentence.fixed);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
