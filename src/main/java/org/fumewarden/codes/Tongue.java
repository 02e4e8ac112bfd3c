package org.fumewarden.codes;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fumewarden.model.Sha256;

/**
 * The sentences of rules in another language than that of the rule base.
 *
 * @param language its tag
 * @param complete true when each folder says that every rule of it has its sentence
 * @param sentences by id of the rule, with the same {places} as the rule's own sentence
 * @param words what stands in a place, by its words in the language of the rule base
 */
public record Tongue(String language, boolean complete, Map<String, String> sentences, Map<String, String> words) {
    public Tongue {
        sentences = Map.copyOf(sentences);
        words = Map.copyOf(words);
    }

    /** The file of a folder that holds its sentences in a language. */
    public static String file(String folder, String language) {
        return folder + "/says_" + language + ".yaml";
    }

    /** True for a file of sentences: it decides nothing, and a start does without it. */
    static boolean holds(String file) {
        return file.contains("/says_");
    }

    /**
     * Reads the sentences of some folders; a folder without such a file has none.
     *
     * @throws InputException when a file cannot be read as one
     */
    public static Tongue read(RuleFolder rules, List<String> folders, String language) {
        Map<String, String> sentences = new LinkedHashMap<>();
        Map<String, String> words = new LinkedHashMap<>();
        List<Problem> problems = new ArrayList<>();
        boolean complete = true;
        for (String folder : folders) {
            for (String name : rules.names(file(folder, language), "")) {
                Located root = rules.located(name);
                Map<String, Located> parts = root.entries(Set.of("complete", "confidence", "rules", "words"));
                complete &= parts.containsKey("complete")
                        && parts.get("complete").text().equals("true");
                texts(parts.get("rules"), sentences);
                texts(parts.get("words"), words);
                problems.addAll(root.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return new Tongue(language, complete, sentences, words);
    }

    /** The name of the state of its sentences and words: a SHA-256 over them, whatever files they stand in. */
    public String revision() {
        StringBuilder all = new StringBuilder();
        Stream.of(sentences, words).forEach(part -> new TreeMap<>(part)
                .forEach(
                        (key, says) -> all.append(key).append('\t').append(says).append('\n')));
        return Sha256.hex(all.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static void texts(Located part, Map<String, String> into) {
        if (part != null) {
            part.entries().forEach((key, text) -> into.put(key, text.text()));
        }
    }
}
