package org.fumewarden.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Keyed;
import org.fumewarden.trail.Step;

/** A trail whose steps spell out what they rest on, put together from facts and steps as a file tells them. */
final class OpenTrail {
    private static final Comparator<JsonNode> IN_ORDER = Comparator.<JsonNode, String>comparing(
                    p -> p.path("kind").asText())
            .thenComparing(p -> p.path("address").asText())
            .thenComparing(p -> p.path("words").asText());

    private final Names names;
    private final Map<String, ObjectNode> facts = new HashMap<>();
    private final Map<String, ObjectNode> steps = new HashMap<>();
    private final Set<String> named = new HashSet<>();

    OpenTrail(Names names) {
        this.names = names;
    }

    /**
     * Takes a fact.
     *
     * @param citation the clause of a table row; nothing for other facts
     */
    void fact(String id, String kind, String address, String words, ObjectNode citation) {
        ObjectNode fact = node().put("kind", kind).put("address", address).put("words", words);
        fact.setAll(citation);
        facts.put(id, fact);
    }

    /** Takes a step and returns it whole; its facts are known by now. */
    ObjectNode step(String id, String rule, String subject, String says, ObjectNode citation, Iterable<String> from) {
        ObjectNode whole = node().put("id", id)
                .put("phase", phase(rule))
                .put("rule", rule)
                .put("says", says)
                .put("subject", subject);
        whole.setAll(citation);
        List<JsonNode> premises = new ArrayList<>();
        Confidence weakest = confidence(citation);
        for (String premise : from) {
            ObjectNode fact = facts.get(premise);
            if (fact == null) {
                premises.add(node().put("kind", "step").put("address", premise));
            } else {
                named.add(premise);
                ObjectNode own = fact.deepCopy();
                own.put(
                        "address",
                        fact.path("address")
                                .asText()
                                .replace(TrailJson.SUBJECT, subject)
                                .replace(TrailJson.ABOUT, Step.about(subject)));
                if (fact.path("words").asText().equals(TrailJson.SUBJECT) && fact.has("source")) {
                    own.put("words", names.of(subject));
                }
                premises.add(own);
                weakest = fact.has("confidence") ? weakest.weaker(confidence(fact)) : weakest;
            }
        }
        premises.sort(IN_ORDER);
        whole.put("overall-confidence", weakest.key());
        whole.putArray("premises").addAll(premises);
        steps.put(id, whole);
        return whole;
    }

    Map<String, ObjectNode> steps() {
        return steps;
    }

    /** True when every fact is one that a step names. */
    boolean namesAll() {
        return named.equals(facts.keySet());
    }

    /** All steps in their order. */
    ObjectNode written() {
        // The canonical form of kept advice puts s10 before s2.
        Map<Integer, JsonNode> inOrder = new TreeMap<>();
        steps.forEach((id, step) -> inOrder.put(number(id), step));
        ObjectNode trail = node();
        ArrayNode all = trail.putArray("steps");
        all.addAll(inOrder.values());
        return trail;
    }

    private static int number(String id) {
        return id.matches("[a-z]\\d{1,8}") ? Integer.parseInt(id.substring(1)) : Integer.MAX_VALUE;
    }

    /** The phase in the id of a rule: {@code filter} of {@code AU-NZ-FILTER-010}. */
    private static String phase(String rule) {
        String[] parts = rule.split("-");
        return parts.length < 2 ? "" : parts[parts.length - 2].toLowerCase(Locale.ROOT);
    }

    private static Confidence confidence(JsonNode cited) {
        return Keyed.find(Confidence.class, cited.path("confidence").asText()).orElse(Confidence.MEMORY);
    }

    /** The node itself, or an empty one where a file holds something else. */
    static ObjectNode object(JsonNode node) {
        return node instanceof ObjectNode object ? object : node();
    }

    static ObjectNode node() {
        return JsonNodeFactory.instance.objectNode();
    }
}
