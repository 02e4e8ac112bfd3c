package org.fumewarden.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.CodeCard;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Limit;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.task.Choices;

/** The questions, words, units, limits and codes that the form is made of. */
final class VocabularyJson {
    /** Units that the form offers per kind of question, with the factor to the first of them; the task reader knows them all. */
    static final Map<String, Map<String, String>> UNITS = Map.ofEntries(
            Map.entry("percent", ordered("%", "1")),
            Map.entry("length", ordered("m", "1", "ft", "0.3048", "mm", "0.001")),
            Map.entry("volume", ordered("m3", "1", "ft3", "0.028316846592")),
            Map.entry("flow", ordered("L/min", "1", "m3/h", "16.6666666666666667", "cfm", "28.316846592")),
            Map.entry("duration", ordered("min", "1", "h", "60")),
            Map.entry("temperature", ordered("C", "1")),
            Map.entry("mass", ordered("g", "1", "mg", "0.001")),
            Map.entry("pressure", ordered("Pa", "1", "mbar", "100")),
            Map.entry("energy", ordered("Wh", "1")),
            Map.entry("area", ordered("cm2", "1", "m2", "10000")),
            Map.entry("density", ordered("g/cm3", "1")),
            Map.entry("age", ordered("years", "1", "months", "0.0833333333333333333")),
            Map.entry("current", ordered("A", "1")),
            Map.entry("count", ordered("", "1")));

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private VocabularyJson() {}

    static ObjectNode of(CodeBook book, LocalDate on, Words words) {
        Vocabulary vocabulary = book.vocabulary();
        Speech speech = Speech.of(words, vocabulary);
        ObjectNode root = NODES.objectNode();
        root.put("code", book.card().id());
        root.put("on", on.toString());
        root.put("revision", book.revision());
        ArrayNode questions = root.putArray("questions");
        vocabulary.questions().forEach(q -> questions.add(question(q, vocabulary, speech)));
        ArrayNode agents = root.putArray("agents");
        vocabulary.agents().forEach(id -> {
            ObjectNode agent = agents.addObject();
            agent.put("id", id);
            agent.put("name", speech.named("agent." + id, vocabulary.name(id)));
        });
        ObjectNode names = root.putObject("names");
        ArrayNode translated = root.putArray("translated");
        vocabulary.names().forEach((id, name) -> {
            String own = speech.told(name);
            names.put(id, own);
            if (!own.equals(name)) {
                translated.add(id);
            }
        });
        vocabulary.agents().forEach(id -> {
            String name = words.sayOr("agent." + id, "");
            if (!name.isEmpty()) {
                names.put(id, name);
                translated.add(id);
            }
        });
        ArrayNode bases = root.putArray("bases");
        vocabulary.catalogues().getOrDefault("judgement-bases", Map.of()).forEach((id, name) -> bases.addObject()
                .put("id", id)
                .put("name", name));
        ArrayNode bounds = root.putArray("bounds");
        vocabulary.catalogue("judgement-bounds").forEach(bounds::add);
        ArrayNode statistics = root.putArray("statistics");
        Choices.statistics().forEach(statistics::add);
        ArrayNode unsampled = root.putArray("unsampled");
        Choices.unsampled().forEach(unsampled::add);
        root.set("aliases", aliases(vocabulary));
        ArrayNode limits = root.putArray("limits");
        book.rows(on).stream()
                .filter(Limit.class::isInstance)
                .map(Limit.class::cast)
                .forEach(l -> limits.add(limit(l)));
        return root;
    }

    static ObjectNode code(CodeCard card) {
        ObjectNode node = NODES.objectNode();
        node.put("id", card.id());
        node.put("name", card.name());
        node.put("territory", card.territory());
        node.put("edition", card.edition());
        node.put("checked-on", card.checkedOn());
        ArrayNode lacks = node.putArray("lacks");
        card.lacks().forEach(lacks::add);
        return node;
    }

    private static ObjectNode question(Question question, Vocabulary vocabulary, Speech speech) {
        Words words = speech.words();
        ObjectNode node = NODES.objectNode();
        node.put("id", question.id());
        node.put("path", question.path());
        node.put("ask", speech.named("ask." + question.id(), question.ask()));
        node.put(
                "translated",
                words.ofRuleBase() || !words.sayOr("ask." + question.id(), "").isEmpty());
        node.put("kind", question.kind());
        node.put("group", question.group());
        ArrayNode choices = node.putArray("choices");
        vocabulary.choices(question).forEach((id, name) -> {
            ObjectNode choice = choices.addObject();
            choice.put("id", id);
            String key = "choice." + question.id() + "." + id;
            choice.put("name", speech.named(key, name));
            if (!words.ofRuleBase() && words.sayOr(key, "").isEmpty()) {
                choice.put("lang", "en");
            }
        });
        ArrayNode units = node.putArray("units");
        UNITS.getOrDefault(question.kind(), Map.of()).forEach((unit, factor) -> {
            ObjectNode each = units.addObject();
            each.put("unit", unit);
            each.put("factor", factor);
        });
        return node;
    }

    /** The words that find an answer, by question. */
    private static ObjectNode aliases(Vocabulary vocabulary) {
        ObjectNode all = NODES.objectNode();
        List<String> headings = new ArrayList<>(List.of("agent"));
        vocabulary.questions().stream().map(Question::id).forEach(headings::add);
        for (String heading : headings) {
            Map<String, List<String>> words = vocabulary.aliases().under(heading);
            if (!words.isEmpty()) {
                ObjectNode own = all.putObject(heading);
                words.forEach((word, ids) -> ids.forEach(own.putArray(word)::add));
            }
        }
        return all;
    }

    private static ObjectNode limit(Limit limit) {
        ObjectNode node = NODES.objectNode();
        node.put("agent", limit.agent());
        node.put("averaging", limit.averaging().key());
        node.put("value", limit.value().stripTrailingZeros().toPlainString());
        node.put("unit", limit.unit().symbol());
        node.put("source", limit.ref().citation().source());
        node.put("clause", limit.ref().citation().clause());
        node.put("unverified", limit.ref().citation().confidence().unverified());
        return node;
    }

    private static Map<String, String> ordered(String... pairs) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i], pairs[i + 1]);
        }
        return map;
    }

    /** The allowed words of a kind, tried out to see whether a question matters. */
    static List<String> samples(String kind) {
        return switch (kind) {
            case "flag" -> List.of("true", "false");
            case "percent" -> List.of("18 %", "20.9 %", "25 %");
            case "length" -> List.of("1 m", "4 m", "4000 m");
            case "volume" -> List.of("20 m3", "1000 m3");
            case "flow" -> List.of("60 L/min", "400 L/min");
            case "duration" -> List.of("5 min", "90 min", "12 h");
            case "temperature" -> List.of("-20 C", "20 C", "60 C");
            case "count" -> List.of("0", "1", "100");
            default -> List.of();
        };
    }
}
