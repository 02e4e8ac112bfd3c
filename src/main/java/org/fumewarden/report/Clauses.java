package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.model.Citation;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;

/** The clauses behind an advice, each once: by document, edition and how far it was compared. */
final class Clauses {
    private final Map<Citation, String> ids = new LinkedHashMap<>();
    private final Set<Citation> met = Collections.newSetFromMap(new IdentityHashMap<>());

    Clauses(List<Step> steps) {
        for (Step step : steps) {
            take(step.citation());
            for (Premise premise : step.premises()) {
                premise.citation().ifPresent(this::take);
            }
        }
    }

    private void take(Citation citation) {
        if (met.add(citation)) {
            ids.putIfAbsent(citation, "c" + (ids.size() + 1));
        }
    }

    String id(Citation citation) {
        return ids.get(citation);
    }

    /** The clause of that place, in whatever edition. */
    Optional<String> id(String source, String clause, String confidence) {
        return ids.entrySet().stream()
                .filter(c -> c.getKey().source().equals(source)
                        && c.getKey().clause().equals(clause)
                        && c.getKey().confidence().key().equals(confidence))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    void write(JsonGenerator json) throws IOException {
        Map<String, Map<String, Map<String, Map<String, String>>>> sources = new LinkedHashMap<>();
        ids.forEach((c, id) -> sources.computeIfAbsent(c.source(), s -> new LinkedHashMap<>())
                .computeIfAbsent(c.edition(), e -> new LinkedHashMap<>())
                .computeIfAbsent(c.confidence().key(), k -> new LinkedHashMap<>())
                .put(id, c.clause()));
        json.writeFieldName("sources");
        json.writePOJO(sources);
    }

    /** Each clause of a file by its id, with its document, edition and confidence. */
    static Map<String, ObjectNode> in(JsonNode sources) {
        Map<String, ObjectNode> clauses = new HashMap<>();
        sources.fields().forEachRemaining(source -> source.getValue()
                .fields()
                .forEachRemaining(edition -> edition.getValue().fields().forEachRemaining(known -> known.getValue()
                        .fields()
                        .forEachRemaining(clause -> clauses.put(
                                clause.getKey(),
                                JsonNodeFactory.instance
                                        .objectNode()
                                        .put("source", source.getKey())
                                        .put("clause", clause.getValue().asText())
                                        .put("edition", edition.getKey())
                                        .put("confidence", known.getKey()))))));
        return clauses;
    }
}
