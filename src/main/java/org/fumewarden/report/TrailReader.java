package org.fumewarden.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.lang3.StringUtils;

/** Reads what {@link TrailJson} writes. */
final class TrailReader {
    private final OpenTrail open;
    private final Map<String, ObjectNode> clauses;
    private final Names names;

    private TrailReader(Names names, Map<String, ObjectNode> clauses) {
        this.clauses = clauses;
        this.names = names;
        this.open = new OpenTrail(names);
    }

    /** The trail with its references opened. */
    static OpenTrail read(JsonNode trail, Names names, Map<String, ObjectNode> clauses) {
        TrailReader reader = new TrailReader(names, clauses);
        trail.path("facts").forEach(reader::facts);
        trail.path("steps").forEach(reader::steps);
        return reader.open;
    }

    private void facts(JsonNode group) {
        String kind = group.path("kind").asText();
        String table = group.has("table") ? group.path("table").asText() + "#" : "";
        boolean own = !table.isEmpty() && !group.has("by");
        group.path("facts").fields().forEachRemaining(fact -> {
            List<String> told = texts(fact.getValue());
            String at = told.get(0);
            String by = own && told.size() > 1 ? told.get(1) : group.path("by").asText();
            open.fact(
                    fact.getKey(),
                    kind,
                    table + at,
                    Alike.filled(
                            group.path("words").asText(),
                            told.subList(Math.min(own ? 2 : 1, told.size()), told.size()),
                            names(at)),
                    cited(by));
        });
    }

    private Map<String, String> names(String at) {
        Map<String, String> found = new HashMap<>();
        String[] parts = at.split("/", -1);
        for (int i = 0; i < parts.length; i++) {
            found.put("at" + (i + 1), names.of(parts[i]));
        }
        return found;
    }

    private void steps(JsonNode group) {
        List<String> common = words(group.path("from").asText());
        group.path("steps").fields().forEachRemaining(step -> {
            List<String> told = texts(step.getValue());
            List<String> own = words(told.get(0));
            String subject = own.isEmpty() ? "" : own.get(0);
            List<String> from = new ArrayList<>(common);
            from.addAll(own.subList(Math.min(1, own.size()), own.size()));
            String says = Alike.filled(
                    group.path("says").asText(), told.subList(1, told.size()), Map.of("of", names.of(subject)));
            ObjectNode whole = open.step(
                    step.getKey(),
                    group.path("rule").asText(),
                    subject,
                    says,
                    cited(group.path("by").asText()),
                    from);
            JsonNode lifted = group.path("overridden-by").path(step.getKey());
            if (!lifted.isMissingNode()) {
                whole.set("overridden-by", lifted);
            }
        });
    }

    private ObjectNode cited(String by) {
        return clauses.getOrDefault(by, OpenTrail.node());
    }

    private static List<String> words(String text) {
        return Arrays.asList(StringUtils.split(text, ' '));
    }

    /** A text alone, or several. */
    private static List<String> texts(JsonNode told) {
        List<String> texts = new ArrayList<>();
        if (told.isTextual()) {
            texts.add(told.asText());
        }
        told.forEach(t -> texts.add(t.asText()));
        if (texts.isEmpty()) {
            texts.add("");
        }
        return texts;
    }
}
