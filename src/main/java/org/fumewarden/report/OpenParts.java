package org.fumewarden.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/** Puts back into the parts of an advice what its file leaves out because it says it elsewhere, or there is none. */
final class OpenParts {
    private final ObjectNode advice;
    private final Map<String, ObjectNode> steps;
    private final Names names;
    private final Map<String, ObjectNode> clauses;

    OpenParts(ObjectNode advice, Map<String, ObjectNode> steps, Names names, Map<String, ObjectNode> clauses) {
        this.advice = advice;
        this.steps = steps;
        this.names = names;
        this.clauses = clauses;
    }

    void open() {
        for (JsonNode account : advice.path("accounts")) {
            ObjectNode line = OpenTrail.object(account);
            line.put("name", names.of(line.path("agent").asText()));
            line.set("confidence", step(line).path("overall-confidence"));
            text(line, "unit", "");
        }
        for (JsonNode respirator : advice.path("respirators")) {
            ObjectNode line = OpenTrail.object(respirator);
            line.put("name", names.of(line.path("class").asText()));
            text(line, "filter", "");
            list(line, "reasons");
            list(line, "conditions");
            if (!line.has("factor")) {
                line.putNull("factor");
            }
        }
        for (JsonNode check : advice.path("checks")) {
            ObjectNode line = OpenTrail.object(check);
            text(line, "what", step(line).path("says").asText());
            text(line, "keep", CheckJson.NOT_STATED);
            list(line, "fields");
            if (!line.has("record")) {
                line.put("record", false);
            }
            ObjectNode cited = clauses.get(line.path("by").asText());
            if (cited != null) {
                line.remove("by");
                line.set("source", cited.path("source"));
                line.set("clause", cited.path("clause"));
                line.set("confidence", cited.path("confidence"));
            }
        }
    }

    private JsonNode step(ObjectNode line) {
        return steps.getOrDefault(line.path("step").asText(), OpenTrail.node());
    }

    private static void text(ObjectNode line, String name, String lacking) {
        if (!line.has(name)) {
            line.put(name, lacking);
        }
    }

    private static void list(ObjectNode line, String name) {
        if (!line.has(name)) {
            line.putArray(name);
        }
    }
}
