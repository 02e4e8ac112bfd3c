package org.fumewarden.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.Optional;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Averaging;
import org.fumewarden.task.Spelling;

/** A task in the words of the tables: what people wrote otherwise is written back. What may mean two things stays. */
final class Spelled {
    private static final String LEVEL = "concentration";

    private final Vocabulary vocabulary;

    Spelled(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** The task with its words replaced, in place. */
    JsonNode tree(JsonNode task) {
        for (Question question : vocabulary.questions()) {
            int dot = question.path().indexOf('.');
            String name = question.path().substring(dot + 1);
            if (task.path(question.path().substring(0, dot)) instanceof ObjectNode group
                    && group.path(name).isTextual()) {
                group.put(name, word(question, group.path(name).asText()));
            }
        }
        task.path("exposures").forEach(this::exposure);
        return task;
    }

    /** An answer in the words of the tables. */
    String word(Question question, String text) {
        if (vocabulary.saysUnknown(text)) {
            return "unknown";
        }
        boolean choice = question.kind().equals("choice") || question.kind().equals("flag");
        return choice ? one(vocabulary.meant(question, text), text) : Spelling.of(question.kind(), text);
    }

    private void exposure(JsonNode entry) {
        if (!(entry instanceof ObjectNode cells)) {
            return;
        }
        if (cells.path("agent").isTextual()
                && !vocabulary.agents().contains(cells.path("agent").asText())) {
            String agent = cells.path("agent").asText();
            cells.put("agent", one(vocabulary.agentsMeant(agent), agent));
        }
        for (Averaging averaging : Averaging.values()) {
            if (cells.path(averaging.key()).isTextual()) {
                cells.put(averaging.key(), level(cells.path(averaging.key()).asText()));
            }
        }
        if (cells.path("samples") instanceof ArrayNode samples) {
            for (int i = 0; i < samples.size(); i++) {
                if (samples.get(i).isTextual()) {
                    samples.set(i, TextNode.valueOf(level(samples.get(i).asText())));
                }
            }
        }
    }

    private String level(String text) {
        return vocabulary.saysUnknown(text) ? "unknown" : Spelling.of(LEVEL, text);
    }

    private static String one(List<String> meant, String otherwise) {
        return Optional.of(meant).filter(m -> m.size() == 1).map(m -> m.get(0)).orElse(otherwise);
    }
}
