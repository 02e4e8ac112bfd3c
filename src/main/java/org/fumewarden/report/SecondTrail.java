package org.fumewarden.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Reads the trail of format 2. What it reads it takes out of its copy, so that what nobody reads is left and does not go
 * unseen.
 */
final class SecondTrail {
    private final OpenTrail open = new OpenTrail(Names.in(OpenTrail.node()));
    private final ObjectNode trail;
    private final Map<String, String> editions = new TreeMap<>();
    private final Map<String, String> unread = new TreeMap<>();

    private SecondTrail(ObjectNode trail) {
        this.trail = trail;
        trail.path("editions").fields().forEachRemaining(e -> {
            editions.put(e.getKey(), e.getValue().asText());
            unread.put(e.getKey(), e.getValue().asText());
        });
        trail.remove("editions");
    }

    static OpenTrail read(JsonNode trail) {
        return reader(trail).open;
    }

    /** True when the trail holds nothing that its reader does not need. */
    static boolean readWhole(JsonNode trail) {
        SecondTrail reader = reader(trail);
        return reader.open.namesAll() && reader.unread.isEmpty() && empty(reader.trail);
    }

    private static SecondTrail reader(JsonNode trail) {
        SecondTrail reader = new SecondTrail(OpenTrail.object(trail.deepCopy()));
        reader.trail.path("facts").forEach(g -> reader.facts(OpenTrail.object(g)));
        reader.trail.path("steps").forEach(g -> reader.steps(OpenTrail.object(g)));
        return reader;
    }

    private static boolean empty(JsonNode node) {
        if (!node.isContainerNode()) {
            return false;
        }
        for (JsonNode child : node) {
            if (!empty(child)) {
                return false;
            }
        }
        return true;
    }

    private void facts(ObjectNode group) {
        String kind = text(group, "kind");
        String table = group.has("table") ? text(group, "table") + "#" : "";
        ObjectNode citation = cited(group);
        for (Iterator<Map.Entry<String, JsonNode>> all = group.path("facts").fields(); all.hasNext(); ) {
            Map.Entry<String, JsonNode> fact = all.next();
            ObjectNode told = OpenTrail.object(fact.getValue());
            open.fact(fact.getKey(), kind, table + text(told, "at"), text(told, "words"), citation);
        }
    }

    private void steps(ObjectNode group) {
        String rule = text(group, "rule");
        ObjectNode citation = cited(group);
        String common = group.has("says") ? text(group, "says") : "";
        for (Iterator<Map.Entry<String, JsonNode>> all = group.path("steps").fields(); all.hasNext(); ) {
            Map.Entry<String, JsonNode> step = all.next();
            ObjectNode told = OpenTrail.object(step.getValue());
            String says = told.has("says") && common.isEmpty() ? text(told, "says") : common;
            List<String> from = new ArrayList<>();
            told.path("from").forEach(f -> from.add(f.asText()));
            told.remove("from");
            ObjectNode whole = open.step(step.getKey(), rule, text(told, "of"), says, citation, from);
            if (told.has("overridden-by")) {
                whole.set("overridden-by", told.remove("overridden-by"));
            }
        }
    }

    private ObjectNode cited(ObjectNode group) {
        ObjectNode citation = OpenTrail.node();
        if (group.has("source")) {
            String source = text(group, "source");
            citation.put("source", source);
            citation.put("clause", text(group, "clause"));
            unread.remove(source);
            citation.put("edition", group.has("edition") ? text(group, "edition") : editions.getOrDefault(source, ""));
            citation.put("confidence", text(group, "confidence"));
        }
        return citation;
    }

    private static String text(ObjectNode object, String name) {
        JsonNode value = object.remove(name);
        return value == null ? "" : value.asText();
    }
}
