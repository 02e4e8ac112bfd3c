package org.fumewarden.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;

/** The task as it was told: each question as a person would ask it, and the answer in words. */
record ToldInWords(Vocabulary vocabulary, String codeName) {
    /** Names of a scenario that tell nothing of the task. */
    private static final Set<String> OF_SCENARIOS = Set.of("expect", "extends", "change");

    /** What stands at the top of a task file, in the order of the report. */
    private static final Map<String, String> FIRST = new TreeMap<>(Map.of(
            "title", "Title",
            "because", "Why it was asked",
            "on", "Day whose rules hold",
            "code", "Code"));

    private static final Map<String, String> NAMES = Map.of(
            "because", "reason",
            "by", "judged by",
            "on", "judged on",
            "basis", "judged from",
            "averaging", "averaged over",
            "twa", "8 h average",
            "stel", "15 min average",
            "ceiling", "highest at any moment");

    List<Map.Entry<String, String>> rows(JsonNode task) {
        List<Map.Entry<String, String>> rows = new ArrayList<>();
        FIRST.forEach((name, words) -> {
            if (task.has(name)) {
                String text = task.path(name).asText();
                rows.add(Map.entry(words, name.equals("code") ? codeName : text));
            }
        });
        task.fields().forEachRemaining(f -> {
            if (!OF_SCENARIOS.contains(f.getKey()) && !FIRST.containsKey(f.getKey())) {
                add(f.getKey(), "", f.getValue(), rows);
            }
        });
        return rows;
    }

    private void add(String path, String lead, JsonNode node, List<Map.Entry<String, String>> rows) {
        if (node.isObject()) {
            String about = Optional.of(node.path("agent").asText())
                    .filter(a -> !a.isEmpty())
                    .map(a -> vocabulary.name(a) + ", ")
                    .orElse(lead);
            node.fields().forEachRemaining(f -> {
                if (!f.getKey().equals("agent")) {
                    add(path + "." + f.getKey(), about, f.getValue(), rows);
                }
            });
        } else if (node.isArray() && !node.isEmpty() && !node.get(0).isValueNode()) {
            for (int i = 0; i < node.size(); i++) {
                add(path, lead.isEmpty() ? "" : lead + (i + 1) + ", ", node.get(i), rows);
            }
        } else {
            Optional<Question> question = vocabulary.asked(path);
            String key = path.substring(path.lastIndexOf('.') + 1);
            rows.add(Map.entry(
                    question.map(Question::ask).orElse(lead + NAMES.getOrDefault(key, key.replace('-', ' '))),
                    value(question, node)));
        }
    }

    private String value(Optional<Question> question, JsonNode node) {
        if (node.isArray()) {
            List<String> all = new ArrayList<>();
            node.forEach(n -> all.add(value(question, n)));
            return String.join("; ", all);
        }
        String text = node.asText();
        String named = question.map(q -> vocabulary.choices(q).get(text)).orElse(null);
        if (named != null) {
            return named;
        }
        return switch (text) {
            case "true" -> "yes";
            case "false" -> "no";
            case "unknown" -> "not known";
            default ->
                text.startsWith("P") ? duration(text) : text.matches("[a-z]+(-[a-z]+)*") ? vocabulary.name(text) : text;
        };
    }

    /** {@code PT4H30M} as "4 h 30 min"; what is no duration as it is. */
    private static String duration(String text) {
        try {
            Duration length = Duration.parse(text);
            List<String> parts = new ArrayList<>();
            if (length.toHours() > 0) {
                parts.add(length.toHours() + " h");
            }
            if (length.toMinutesPart() > 0) {
                parts.add(length.toMinutesPart() + " min");
            }
            if (length.toSecondsPart() > 0) {
                parts.add(length.toSecondsPart() + " s");
            }
            return parts.isEmpty() ? "0 min" : String.join(" ", parts);
        } catch (DateTimeParseException e) {
            return text;
        }
    }
}
