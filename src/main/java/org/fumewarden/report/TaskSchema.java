package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.task.Choices;

/** The JSON Schema of task files, made from the vocabulary so that it cannot drift from it. */
public final class TaskSchema {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String LEVEL =
            "^(unknown|[+]?[0-9][0-9.eE+-]*\\s*(mg/m3|ug/m3|µg/m3|ppm|ppb|mg/m³|ug/m³|µg/m³))$";

    private static final String RESULT = LEVEL.replace("^(unknown|", "^(<?\\s*");

    /** One below what the instrument shows is a level too. */
    private static final String STATED = LEVEL.replace("^(unknown|", "^(unknown|<?\\s*");

    private TaskSchema() {}

    /** Writes the schema. */
    public static String write(Vocabulary vocabulary) {
        try {
            return MAPPER.writeValueAsString(tree(vocabulary)).replace("\r\n", "\n") + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    static ObjectNode tree(Vocabulary vocabulary) {
        ObjectNode root = NODES.objectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Fumewarden task");
        root.put("type", "object");
        ObjectNode properties = root.putObject("properties");
        text(properties, "title", "What the task is called");
        text(properties, "code", "Folder under rules/ that decides");
        text(properties, "on", "Day whose rules hold, year-month-day");
        text(properties, "because", "Why this file exists");
        text(properties, "extends", "Task file that this one changes");
        for (String any : new String[] {"change", "expect", "variants"}) {
            properties.putObject(any).put("type", "object");
        }
        for (Question question : vocabulary.questions()) {
            String group = question.path().substring(0, question.path().indexOf('.'));
            ObjectNode inGroup = properties.has(group) ? (ObjectNode) properties.get(group) : group(properties, group);
            ((ObjectNode) inGroup.get("properties"))
                    .set(question.path().substring(group.length() + 1), answer(question, vocabulary));
        }
        if (properties.has("kit")) {
            ObjectNode kit = (ObjectNode) properties.get("kit").get("properties");
            kit.set("endurance", curves());
            kit.set("breakthrough", breakthroughs(vocabulary.agents()));
        }
        properties.set("register", register());
        properties.set("exposures", exposures(vocabulary));
        root.put("additionalProperties", false);
        return root;
    }

    private static ObjectNode group(ObjectNode properties, String name) {
        ObjectNode group = properties.putObject(name);
        group.put("type", "object");
        group.putObject("properties");
        group.put("additionalProperties", false);
        return group;
    }

    private static void text(ObjectNode properties, String name, String description) {
        properties.putObject(name).put("type", "string").put("description", description);
    }

    private static ObjectNode answer(Question question, Vocabulary vocabulary) {
        ObjectNode node = NODES.objectNode();
        node.put("description", question.ask());
        switch (question.kind()) {
            case "choice" -> words(node, vocabulary.choices(question).keySet());
            case "flag" -> {
                ArrayNode values = node.putArray("enum");
                values.add(true).add(false).add("true").add("false").add("unknown");
            }
            case "count" -> {
                ArrayNode types = node.putArray("type");
                types.add("number").add("string");
            }
            default -> node.put("type", "string");
        }
        return node;
    }

    private static ObjectNode register() {
        ObjectNode list = NODES.objectNode();
        list.put("description", "What the register of the site said of answers, kept with the task; no rule reads it");
        list.put("type", "array");
        ObjectNode item = list.putObject("items");
        item.put("type", "object");
        item.putArray("required").add("about").add("says");
        item.put("additionalProperties", false);
        ObjectNode cells = item.putObject("properties");
        text(cells, "about", "Path of the answer");
        text(cells, "says", "One sentence");
        return list;
    }

    private static ObjectNode curves() {
        ObjectNode list = NODES.objectNode();
        list.put("description", "Run times that were measured on the unit, one curve for each pack");
        list.put("type", "array");
        ObjectNode item = list.putObject("items");
        item.put("type", "object");
        item.putArray("required").add("pack").add("ends-at").add("hours");
        item.put("additionalProperties", false);
        ObjectNode cells = item.putObject("properties");
        text(cells, "pack", "Your own id of the battery pack");
        cells.putObject("ends-at").putArray("enum").add("reserve").add("empty");
        cells.putObject("hours")
                .put("type", "object")
                .put(
                        "description",
                        "Hours of a full pack by filter resistance: 300 Pa, 60 % of the warning pressure, or the number of your own point");
        return list;
    }

    private static ObjectNode breakthroughs(Collection<String> agents) {
        ObjectNode list = NODES.objectNode();
        list.put(
                "description",
                "Breakthrough times that the manufacturer measured on the filter, one line for each agent");
        list.put("type", "array");
        ObjectNode item = list.putObject("items");
        item.put("type", "object");
        ArrayNode required = item.putArray("required");
        item.put("additionalProperties", false);
        ObjectNode cells = item.putObject("properties");
        words(cells.putObject("agent"), agents);
        text(cells, "concentration", "Before the filter, in ppm");
        text(cells, "exit", "Behind the filter when the time ended, in ppm");
        text(cells, "flow", "Air through one filter");
        text(cells, "humidity", "Relative humidity, percent; the most humid air for which the time holds");
        text(cells, "temperature", "Of the air");
        text(cells, "time", "Until that much came through");
        text(cells, "document", "The manufacturer's document and its line");
        cells.fieldNames().forEachRemaining(required::add);
        text(cells, "humidity-from", "The driest air for which the time holds, where the manufacturer states it");
        return list;
    }

    private static void words(ObjectNode node, Collection<String> words) {
        ArrayNode values = node.putArray("enum");
        words.forEach(word -> {
            values.add(word);
            if (word.equals("true") || word.equals("false")) {
                values.add(Boolean.parseBoolean(word));
            }
        });
        values.add("unknown");
    }

    /** A sample is a result, a detection limit with {@code <} in front, or a set of names. */
    private static void samples(ObjectNode samples) {
        samples.put("type", "array").put("minItems", 1);
        ArrayNode kinds = samples.putObject("items").putArray("anyOf");
        kinds.addObject().put("type", "string").put("pattern", RESULT);
        ObjectNode full = kinds.addObject().put("type", "object").put("additionalProperties", false);
        full.putArray("required").add("level");
        ObjectNode parts = full.putObject("properties");
        parts.putObject("level").put("type", "string").put("pattern", RESULT);
        text(parts, "duration", "How long the sample ran, such as 4 h");
        text(parts, "worker", "Who carried it");
    }

    private static void only(ObjectNode node, Collection<String> words) {
        words.forEach(node.putArray("enum")::add);
    }

    private static ObjectNode exposures(Vocabulary vocabulary) {
        ObjectNode list = NODES.objectNode();
        list.put("type", "array")
                .put("description", "Levels taken where the welder breathes, outside visor, hood or mask");
        ObjectNode item = list.putObject("items");
        item.put("type", "object");
        item.putArray("required").add("agent");
        item.put("additionalProperties", false);
        ObjectNode cells = item.putObject("properties");
        ArrayNode known = cells.putObject("agent").putArray("enum");
        new TreeSet<>(vocabulary.agents()).forEach(known::add);
        for (String averaging : new String[] {"twa", "stel", "ceiling"}) {
            cells.putObject(averaging).put("type", "string").put("pattern", STATED);
        }
        samples(cells.putObject("samples"));
        only(cells.putObject("non-detects"), Choices.nonDetects());
        only(cells.putObject("statistic"), Choices.statistics());
        ObjectNode periods = cells.putObject("periods").put("type", "array").putObject("items");
        periods.put("type", "object").put("additionalProperties", false);
        periods.putArray("required").add("level").add("duration");
        ObjectNode period = periods.putObject("properties");
        period.putObject("level").put("type", "string").put("pattern", LEVEL);
        text(period, "duration", "How long, such as 2 h or 45 min");
        only(cells.putObject("unsampled"), Choices.unsampled());
        text(cells, "error", "Sampling and analytical error of each result, such as 23 %");
        only(cells.putObject("estimate"), Set.of("room-model"));
        ArrayNode averagings = cells.putObject("averaging").putArray("enum");
        averagings.add("PT8H").add("PT15M").add("ceiling");
        ArrayNode estimated = cells.putObject("estimated").putArray("enum");
        estimated.add(true).add(false).add("true").add("false");
        only(cells.putObject("judged"), vocabulary.catalogue("judgement-bounds"));
        text(cells, "because", "What the judgement rests on, in words");
        text(cells, "by", "Who judged");
        text(cells, "basis", "What the judgement rests on: objective-data, like-task or calculation");
        text(cells, "on", "The day of the judgement");
        for (String limit : new String[] {"limit-twa", "limit-stel", "limit-ceiling"}) {
            cells.putObject(limit).put("type", "string").put("pattern", LEVEL);
        }
        text(cells, "limit-from", "The document in which these limits were read, with edition and place");
        text(cells, "limit-none", "The day on which that document was searched and named no limit");
        return list;
    }
}
