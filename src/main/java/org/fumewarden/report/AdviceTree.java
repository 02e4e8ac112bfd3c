package org.fumewarden.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Keyed;

/**
 * Advice with every reference opened, whatever its format: each reason with its sentence and clause, each step with its
 * premises, as format 1 spelled them out.
 */
public final class AdviceTree {
    /** The format in which every step spelled its premises out. */
    public static final String SPELLED_OUT = "fumewarden-advice/1";

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

    private final Map<String, ObjectNode> facts = new HashMap<>();
    private final Map<String, ObjectNode> steps = new HashMap<>();
    private final JsonNode trail;

    private AdviceTree(JsonNode trail) {
        this.trail = trail;
    }

    /** True for a format that this program reads. */
    public static boolean readable(JsonNode advice) {
        String format = advice.path("format").asText();
        return format.equals(AdviceJson.FORMAT) || format.equals(SPELLED_OUT);
    }

    /** The advice with its references opened; advice of format 1 as it is. */
    public static JsonNode opened(JsonNode advice) {
        if (!advice.path("format").asText().equals(AdviceJson.FORMAT)) {
            return advice;
        }
        ObjectNode opened = advice.deepCopy();
        AdviceTree tree = new AdviceTree(advice.path("trail"));
        opened.set("trail", tree.trail());
        tree.reasons(opened);
        return opened;
    }

    private ObjectNode trail() {
        ObjectNode opened = node();
        trail.path("facts").forEach(this::facts);
        ArrayNode all = opened.putArray("steps");
        for (JsonNode group : trail.path("steps")) {
            // The canonical form of kept advice puts s10 before s2.
            Map<Integer, ObjectNode> inOrder = new TreeMap<>();
            group.path("steps").fields().forEachRemaining(step -> {
                ObjectNode whole = step(step.getKey(), group, step.getValue());
                steps.put(step.getKey(), whole);
                inOrder.put(number(step.getKey()), whole);
            });
            all.addAll(inOrder.values());
        }
        return opened;
    }

    private static int number(String id) {
        return id.matches("[a-z]\\d{1,8}") ? Integer.parseInt(id.substring(1)) : Integer.MAX_VALUE;
    }

    private void facts(JsonNode group) {
        String table = group.has("table") ? group.path("table").asText() + "#" : "";
        group.path("facts").fields().forEachRemaining(entry -> {
            ObjectNode fact = node();
            fact.set("kind", group.path("kind"));
            fact.put("address", table + entry.getValue().path("at").asText());
            fact.set("words", entry.getValue().path("words"));
            cite(group, fact);
            facts.put(entry.getKey(), fact);
        });
    }

    private ObjectNode step(String id, JsonNode group, JsonNode step) {
        String rule = group.path("rule").asText();
        String subject = step.path("of").asText();
        ObjectNode whole = node();
        whole.put("id", id);
        whole.put("phase", phase(rule));
        whole.put("rule", rule);
        whole.set("says", step.has("says") ? step.path("says") : group.path("says"));
        whole.put("subject", subject);
        cite(group, whole);
        ArrayNode premises = node().arrayNode();
        Confidence weakest = confidence(group);
        for (JsonNode from : step.path("from")) {
            ObjectNode fact = facts.get(from.asText());
            if (fact == null) {
                premises.add(node().put("kind", "step").put("address", from.asText()));
            } else {
                ObjectNode own = fact.deepCopy();
                own.put("address", fact.path("address").asText().replace(StepJson.SUBJECT, subject));
                premises.add(own);
                weakest = fact.has("confidence") ? weakest.weaker(confidence(fact)) : weakest;
            }
        }
        whole.put("overall-confidence", weakest.key());
        if (step.has("overridden-by")) {
            whole.set("overridden-by", step.path("overridden-by"));
        }
        whole.set("premises", premises);
        return whole;
    }

    /** The phase in the id of a rule: {@code filter} of {@code AU-NZ-FILTER-010}. */
    private static String phase(String rule) {
        String[] parts = rule.split("-");
        return parts.length < 2 ? "" : parts[parts.length - 2].toLowerCase(java.util.Locale.ROOT);
    }

    private void cite(JsonNode from, ObjectNode into) {
        if (from.has("source")) {
            into.set("source", from.path("source"));
            into.set("clause", from.path("clause"));
            into.set(
                    "edition",
                    from.has("edition")
                            ? from.path("edition")
                            : trail.path("editions").path(from.path("source").asText()));
            into.set("confidence", from.path("confidence"));
        }
    }

    private void reasons(JsonNode node) {
        if (node instanceof ObjectNode object) {
            for (Map.Entry<String, JsonNode> field : Map.copyOf(fields(object)).entrySet()) {
                if (field.getKey().equals("trail")) {
                    continue;
                }
                if (REASONS.contains(field.getKey()) && field.getValue() instanceof ArrayNode ids) {
                    ArrayNode opened = node().arrayNode();
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
        ObjectNode step = steps.getOrDefault(id, node());
        ObjectNode reason = node().put("step", id);
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

    private static Confidence confidence(JsonNode cited) {
        return Keyed.find(Confidence.class, cited.path("confidence").asText()).orElse(Confidence.MEMORY);
    }

    private static ObjectNode node() {
        return com.fasterxml.jackson.databind.node.JsonNodeFactory.instance.objectNode();
    }
}
