package org.fumewarden.training;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fumewarden.report.html.Words;

/** Reads a duty in people's words: every word must be known, and one curated phrase must be whole in them. */
final class DutyWords {
    private static final List<WordTable.Row> ROWS = WordTable.rows("duty-words");
    private static final Set<String> FILL = all("fill");
    private static final Set<String> NOT = all("not");
    /** Deeds that only some work calls for: they are wrong elsewhere, while any other deed is good practice at least. */
    static final Set<String> OF_SPECIAL_WORK = ids("special");

    /** Deeds that say little to a room: they are asked about last. */
    static final Set<String> VAGUE = ids("vague");

    /** Ids of duties that only keep papers. */
    static final Set<String> PAPERS = ids("papers");

    /** Ids of duties whose interval holds for some substances only. */
    static final Set<String> FOR_SOME = ids("some");

    private static final List<Phrase> PHRASES = phrases();
    /** Deeds of which one gives way to the other at another level of exposure. */
    private static final Pattern STEPS =
            Pattern.compile("(medical/)(?:care-)?(\\w+?)(?:s|-(?:offer|mandatory|blood|urine|skin))*");

    private static final int LONGEST = 4;

    private DutyWords() {}

    /**
     * What an answer says is done: for each phrase in it, the deeds that it may mean; empty when a word is left over or the answer says
     * not to do it.
     */
    static List<Set<String>> read(String answer) {
        Set<String> words = new LinkedHashSet<>(Plain.words(answer));
        if (words.stream().anyMatch(NOT::contains)) {
            return List.of();
        }
        words.removeAll(FILL);
        List<Set<String>> read = new ArrayList<>();
        for (int size = LONGEST; size > 0; size--) {
            for (boolean found = true; found; ) {
                Set<String> deeds = new LinkedHashSet<>();
                Set<String> used = new HashSet<>();
                for (Phrase phrase : PHRASES) {
                    Set<String> mine = phrase.within(words);
                    if (phrase.words().size() == size && !mine.isEmpty() && (used.isEmpty() || used.equals(mine))) {
                        deeds.add(phrase.deed());
                        used.addAll(mine);
                    }
                }
                found = !deeds.isEmpty();
                if (found) {
                    read.add(deeds);
                    words.removeAll(used);
                }
            }
        }
        return words.isEmpty() ? List.copyOf(read) : List.of();
    }

    /** The kind and the substance that a deed is about; empty when it is about none. */
    static String stem(String deed) {
        return STEPS.matcher(deed).matches() ? STEPS.matcher(deed).replaceAll("$1$2") : "";
    }

    /** True when a deed that an answer names is among those that are due; a general name stands for a deed of its kind. */
    static boolean due(Set<String> named, Set<String> due) {
        return named.stream().anyMatch(n -> due.stream()
                .anyMatch(d -> d.equals(n) || d.startsWith(n + "/") || d.startsWith(n + "-")));
    }

    /** Words of which each is as good as those beside it. */
    private record Phrase(String deed, List<List<String>> words) {
        /** The words of an answer that this phrase uses up; none when one is lacking. */
        Set<String> within(Set<String> answer) {
            Set<String> used = new HashSet<>();
            for (List<String> either : words) {
                Optional<String> found = either.stream()
                        .filter(w -> answer.contains(w) && !used.contains(w))
                        .findFirst();
                if (found.isEmpty()) {
                    return Set.of();
                }
                used.add(found.get());
            }
            return used;
        }
    }

    private static List<Phrase> phrases() {
        List<Phrase> all = new ArrayList<>();
        for (WordTable.Row row : ROWS) {
            for (String language : Words.LANGUAGES) {
                for (String phrase : row.optional("id").isPresent() ? row.words(language) : List.<String>of()) {
                    List<List<String>> words = Arrays.stream(phrase.split(" "))
                            .map(word -> Arrays.stream(word.split("\\|"))
                                    .map(Plain::joined)
                                    .toList())
                            .map(either -> either.stream()
                                    .filter(w -> !FILL.contains(w))
                                    .toList())
                            .filter(either -> !either.isEmpty())
                            .toList();
                    if (!words.isEmpty()) {
                        all.add(new Phrase(row.text("id"), words));
                    }
                }
            }
        }
        return all;
    }

    private static Set<String> ids(String key) {
        return ROWS.stream().flatMap(r -> r.words(key).stream()).collect(Collectors.toUnmodifiableSet());
    }

    private static Set<String> all(String key) {
        return ROWS.stream()
                .flatMap(r -> r.words(key).stream())
                .map(Plain::joined)
                .collect(Collectors.toSet());
    }
}
