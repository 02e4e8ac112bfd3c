package org.fumewarden.codes;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The questions a task file may answer, the words it may use, and the names people read for them. */
public record Vocabulary(
        List<Question> questions,
        Map<String, Map<String, String>> catalogues,
        Map<String, String> names,
        Aliases aliases) {

    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");

    static final String PARTICLES = "agents-as-particles";

    /** The allowed words for a question of kind choice. */
    public Map<String, String> choices(Question question) {
        return question.choicesFrom()
                .map(catalogue -> catalogues.getOrDefault(catalogue, Map.of()))
                .orElse(question.choices());
    }

    /**
     * The answers that a word may mean, by the name that people read for them or by a table of other words; never one that the
     * question does not allow.
     */
    public List<String> meant(Question question, String word) {
        Map<String, String> allowed =
                question.kind().equals("flag") ? Map.of("true", "yes", "false", "no") : choices(question);
        return meant(question.id(), word, allowed);
    }

    /** The agents that a word may mean. */
    public List<String> agentsMeant(String word) {
        return meant("agent", word, catalogues.getOrDefault("agents", Map.of()));
    }

    private List<String> meant(String heading, String word, Map<String, String> allowed) {
        String plain = Aliases.plain(word);
        List<String> named = allowed.entrySet().stream()
                .filter(e ->
                        e.getKey().equals(plain) || Aliases.plain(e.getValue()).equals(plain))
                .map(Map.Entry::getKey)
                .toList();
        return named.size() == 1 || plain.isEmpty()
                ? named
                : aliases.meant(heading, word).stream()
                        .filter(id -> allowed.containsKey(id) || id.equals("unknown"))
                        .toList();
    }

    /** True when a word says that nobody knows. */
    public boolean saysUnknown(String word) {
        return word.equals("unknown") || aliases.meant("any", word).equals(List.of("unknown"));
    }

    /** The entries that say something: one that is called unknown counts as left out. */
    public Map<String, Located> told(Map<String, Located> entries) {
        Map<String, Located> told = new LinkedHashMap<>(entries);
        told.values().removeIf(place -> place.isScalar() && !place.isNull() && saysUnknown(place.text()));
        return told;
    }

    /** Ids of a catalogue; none where there is no such catalogue. */
    public Set<String> catalogue(String id) {
        return catalogues.getOrDefault(id, Map.of()).keySet();
    }

    /** Ids of the agents. */
    public Set<String> agents() {
        return catalogue("agents");
    }

    /** Ids of the agents that are dust or fume. */
    public Set<String> particles() {
        return catalogues.getOrDefault(PARTICLES, Map.of()).keySet();
    }

    /** The question with an id. */
    public Optional<Question> question(String id) {
        return questions.stream().filter(q -> q.id().equals(id)).findFirst();
    }

    /** The question that a place of the task file answers. */
    public Optional<Question> asked(String path) {
        return questions.stream().filter(q -> q.path().equals(path)).findFirst();
    }

    /** The name that people read for an id; the id with spaces when none is given, but a day keeps its hyphens. */
    public String name(String id) {
        String name = names.get(id);
        return name != null ? name : DAY.matcher(id).matches() ? id : id.replace('-', ' ');
    }

    /** The name that an answer has under its own question: "none" is bare metal under one and no extraction under another. */
    public String answer(String question, String value) {
        return names.getOrDefault(question + '.' + value, value);
    }

    /** The name of the longest end of an id that has one: "carcinogen-nickel" is about nickel. */
    public String nameWithin(String id) {
        String end = id;
        while (!names.containsKey(end)) {
            int dash = end.indexOf('-');
            if (dash < 0) {
                return name(id);
            }
            end = end.substring(dash + 1);
        }
        return names.get(end);
    }
}
