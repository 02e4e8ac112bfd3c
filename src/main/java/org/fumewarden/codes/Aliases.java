package org.fumewarden.codes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;

/** Words that people use for answers, from one table for each language. It is read when the first of them is met. */
public final class Aliases {
    private static final Pattern APART = Pattern.compile("[\\s_./()\\[\\],'\u2019-]+");

    /** Heading of the words that hold for every question. */
    private static final String ANY = "any";

    private final RuleFolder rules;
    private Map<String, Map<String, List<String>>> words;
    private Optional<SortedMap<String, String>> edited = Optional.empty();

    private Aliases(RuleFolder rules) {
        this.rules = rules;
    }

    static Aliases in(RuleFolder rules) {
        return new Aliases(rules);
    }

    /** What a word may mean for a question, a code or an agent, by the headings of the tables; none when it is unknown. */
    public List<String> meant(String question, String word) {
        String plain = plain(word);
        List<String> own = under(question).getOrDefault(plain, List.of());
        return own.isEmpty() ? under(ANY).getOrDefault(plain, List.of()) : own;
    }

    /** Every word of a heading with what it may mean. */
    public Map<String, List<String>> under(String heading) {
        return words().getOrDefault(heading, Map.of());
    }

    private synchronized Map<String, Map<String, List<String>>> words() {
        if (words == null) {
            words = read();
        }
        return words;
    }

    /** The words that somebody changed, by {@link EditedWords}: what a task says may be read as something else. */
    public synchronized SortedMap<String, String> edited() {
        if (edited.isEmpty()) {
            edited = Optional.of(
                    rules.isShipped()
                            ? Collections.emptySortedMap()
                            : EditedWords.between(
                                    in(rules.like(rules.program())).plain(),
                                    in(rules.program()).plain()));
        }
        return edited.get();
    }

    /** Tables with the same words are the same, wherever they were read from. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Aliases that && words().equals(that.words());
    }

    @Override
    public int hashCode() {
        return words().hashCode();
    }

    /** Each word with its heading, and what it may mean. */
    private Map<String, String> plain() {
        Map<String, String> all = new TreeMap<>();
        words().forEach((heading, under) ->
                under.forEach((word, ids) -> all.put(EditedWords.word(word, heading), String.join(" or ", ids))));
        return all;
    }

    private Map<String, Map<String, List<String>>> read() {
        Map<String, Map<String, List<String>>> all = new LinkedHashMap<>();
        for (String name : rules.names("shared/aliases_", ".yaml")) {
            Located root = rules.located(name);
            root.entries().forEach((heading, entry) -> {
                if (!entry.isMap()) {
                    return;
                }
                Map<String, List<String>> into = all.computeIfAbsent(heading, k -> new TreeMap<>());
                entry.entries().forEach((word, ids) -> into.merge(plain(word), ids.words(), Aliases::both));
            });
            root.settle();
        }
        return all;
    }

    private static List<String> both(List<String> a, List<String> b) {
        List<String> all = new ArrayList<>(a);
        b.stream().filter(id -> !all.contains(id)).forEach(all::add);
        return List.copyOf(all);
    }

    /** A word without what people write one way or the other: case, blanks, hyphens, points and brackets. */
    static String plain(String word) {
        return StringUtils.strip(
                APART.matcher(word.strip().toLowerCase(Locale.ROOT)).replaceAll("-"), "-");
    }
}
