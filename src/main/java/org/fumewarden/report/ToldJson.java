package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Arrays;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fumewarden.report.html.DutyTerms;
import org.fumewarden.report.html.Speech;

/** Advice as JSON with its sentences in another language. Names, ids, addresses and clauses stay as they are. */
final class ToldJson {
    private static final ObjectMapper MAPPER = new ObjectMapper()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .setNodeFactory(JsonNodeFactory.withExactBigDecimals(true));
    /** Fields that hold a sentence or the name of something. */
    private static final Set<String> TOLD = Set.of(
            "ask",
            "what",
            "fields",
            "words",
            "says",
            "decides",
            "held-against",
            "document",
            "place",
            "matters",
            "name",
            "lacks",
            "counted-as",
            "filter",
            "statistic",
            "heals");
    /** Objects whose values are texts that begin with an address and go on with words. */
    private static final Set<String> ADDRESSED = Set.of("facts", "steps");

    private static final Pattern CLAUSE = Pattern.compile("c\\d+");

    private final Speech speech;

    private ToldJson(Speech speech) {
        this.speech = speech;
    }

    static JsonNode of(String advice, Speech speech) throws JsonProcessingException {
        ObjectNode read = (ObjectNode) MAPPER.readTree(advice);
        ObjectNode told = MAPPER.createObjectNode();
        told.set("format", read.get("format"));
        told.put("language", speech.words().language());
        new ToldJson(speech).told(read);
        told.setAll(read);
        return told;
    }

    private void told(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.properties().forEach(field -> field.setValue(told(field.getKey(), field.getValue())));
        } else {
            node.forEach(this::told);
        }
    }

    private JsonNode told(String name, JsonNode value) {
        if (value instanceof ObjectNode object && name.equals("names")) {
            object.properties().forEach(f -> f.setValue(text(f.getValue())));
        } else if (value instanceof ObjectNode object && ADDRESSED.contains(name)) {
            object.properties().forEach(f -> filled(f.getValue()));
        } else if (TOLD.contains(name) && value instanceof ArrayNode many) {
            words(many, 0);
        } else if (name.equals("who")) {
            return TextNode.valueOf(new DutyTerms(speech).who(value.asText()));
        } else if (name.equals("value") && value.isTextual()) {
            // A name and what the row holds, as the annex says them.
            return TextNode.valueOf(Arrays.stream(value.textValue().split(": ", 2))
                    .map(speech::told)
                    .collect(Collectors.joining(": ")));
        } else if (TOLD.contains(name) && value.isTextual()) {
            return text(value);
        } else {
            told(value);
        }
        return value;
    }

    private void filled(JsonNode told) {
        if (told instanceof ArrayNode parts) {
            words(parts, 1);
        }
    }

    private void words(ArrayNode texts, int from) {
        for (int i = from; i < texts.size(); i++) {
            texts.set(i, text(texts.get(i)));
        }
    }

    private JsonNode text(JsonNode text) {
        return text.isTextual() && !CLAUSE.matcher(text.textValue()).matches()
                ? TextNode.valueOf(speech.told(text.textValue()))
                : text;
    }
}
