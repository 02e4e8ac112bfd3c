package org.fumewarden.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fumewarden.model.Confidence;

/**
 * Advice with every reference opened, whatever its format: each reason with its sentence and clause, each step with its
 * premises, as format 1 spelled them out.
 */
public final class AdviceTree {
    /** The format in which every step spelled its premises out. */
    public static final String SPELLED_OUT = "fumewarden-advice/1";

    /** The format in which every step spelled its sentence out. */
    public static final String BY_REFERENCE = "fumewarden-advice/2";

    private static final Set<String> REASONS = Set.of(
            "reasons",
            "conditions",
            "interim",
            "by-choice",
            "stops",
            "controls-first",
            "hazards",
            "filters",
            "cautions",
            "conflicts");

    private final Map<String, ObjectNode> steps;

    private AdviceTree(OpenTrail trail) {
        this.steps = trail.steps();
    }

    /** True for a format that this program reads. */
    public static boolean readable(JsonNode advice) {
        return List.of(AdviceJson.FORMAT, BY_REFERENCE, SPELLED_OUT).contains(format(advice));
    }

    private static String format(JsonNode advice) {
        return advice.path("format").asText();
    }

    /** True when advice of format 2 holds nothing in its trail that its reader does not need. */
    public static boolean readWhole(JsonNode advice) {
        return format(advice).equals(BY_REFERENCE) && SecondTrail.readWhole(advice.path("trail"));
    }

    /** The advice with its references opened; advice of format 1 as it is. */
    public static JsonNode opened(JsonNode advice) {
        boolean present = format(advice).equals(AdviceJson.FORMAT);
        if (!present && !format(advice).equals(BY_REFERENCE)) {
            return advice;
        }
        ObjectNode opened = advice.deepCopy();
        JsonNode told = advice.path("trail");
        Names names = Names.in(opened.path("names"));
        Map<String, ObjectNode> clauses = Clauses.in(told.path("sources"));
        OpenTrail trail = present ? TrailReader.read(told, names, clauses) : SecondTrail.read(told);
        opened.set("trail", trail.written());
        if (present) {
            opened.remove("names");
            new OpenParts(opened, trail.steps(), names, clauses).open();
        }
        new AdviceTree(trail).reasons(opened);
        return opened;
    }

    private void reasons(JsonNode node) {
        if (node instanceof ObjectNode object) {
            for (Map.Entry<String, JsonNode> field : Map.copyOf(fields(object)).entrySet()) {
                if (field.getKey().equals("trail")) {
                    continue;
                }
                if (REASONS.contains(field.getKey()) && field.getValue() instanceof ArrayNode ids) {
                    ArrayNode opened = OpenTrail.node().arrayNode();
                    ids.forEach(id -> opened.add(reason(id.asText())));
                    object.set(field.getKey(), opened);
                } else {
                    reasons(field.getValue());
                }
            }
        } else if (node.isArray()) {
            node.forEach(this::reasons);
        }
    }

    private ObjectNode reason(String id) {
        ObjectNode step = steps.getOrDefault(id, OpenTrail.node());
        ObjectNode reason = OpenTrail.node().put("step", id);
        for (String name : new String[] {"rule", "subject", "says", "source", "clause", "edition"}) {
            reason.put(name, step.path(name).asText());
        }
        String confidence = step.path("overall-confidence").asText();
        reason.put("confidence", confidence);
        reason.put("unverified", confidence.equals(Confidence.MEMORY.key()));
        return reason;
    }

    private static Map<String, JsonNode> fields(ObjectNode object) {
        Map<String, JsonNode> fields = new HashMap<>();
        object.fields().forEachRemaining(f -> fields.put(f.getKey(), f.getValue()));
        return fields;
    }
}
