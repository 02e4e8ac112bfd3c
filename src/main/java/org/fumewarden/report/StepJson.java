package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.advice.Reason;
import org.fumewarden.model.Citation;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;

/**
 * The trail as JSON, by reference: each fact stands once, each step names the facts and steps it rests on. Facts of one
 * table and steps of one rule stand together under their clause.
 */
final class StepJson {
    /** What stands for the subject of a step in the address of something that it found missing. */
    static final String SUBJECT = "{subject}";

    private final JsonGenerator json;
    private final List<Step> steps;
    private final Map<String, String> editions = new TreeMap<>();
    private final Map<Object, Group> groups = new LinkedHashMap<>();
    private final Map<Premise, String> ids = new HashMap<>();

    /** Facts of one kind, and of one table and clause. */
    private record Group(String kind, String table, Optional<Citation> citation, Map<String, Premise> facts) {}

    private record Place(String kind, String table, Optional<Citation> citation) {}

    StepJson(List<Step> steps, JsonGenerator json) {
        this.steps = steps;
        this.json = json;
    }

    /** The numbers of the steps behind reasons. */
    static void reasons(String name, List<Reason> reasons, JsonGenerator json) throws IOException {
        AdviceJson.texts(name, reasons.stream().map(Reason::step).toList(), json);
    }

    void write() throws IOException {
        List<List<Step>> byRule = byRule();
        for (Step step : steps) {
            edition(step.citation());
            step.premises().stream().filter(p -> !p.kind().equals("step")).forEach(p -> fact(p, step));
        }
        json.writeObjectFieldStart("trail");
        json.writeObjectFieldStart("editions");
        for (Map.Entry<String, String> edition : editions.entrySet()) {
            json.writeStringField(edition.getKey(), edition.getValue());
        }
        json.writeEndObject();
        json.writeArrayFieldStart("facts");
        for (Group group : groups.values()) {
            facts(group);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("steps");
        for (List<Step> group : byRule) {
            steps(group);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** Steps of one rule and clause follow one another in a trail. */
    private List<List<Step>> byRule() {
        List<List<Step>> groups = new ArrayList<>();
        Step last = null;
        for (Step step : steps) {
            if (last == null
                    || !last.rule().equals(step.rule())
                    || !last.citation().equals(step.citation())) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(step);
            last = step;
        }
        return groups;
    }

    private void edition(Citation citation) {
        editions.putIfAbsent(citation.source(), citation.edition());
    }

    private void fact(Premise premise, Step step) {
        Premise fact = general(premise, step);
        if (ids.containsKey(fact)) {
            return;
        }
        premise.citation().ifPresent(this::edition);
        int mark = premise.address().indexOf('#');
        String table =
                premise.citation().isPresent() && mark > 0 ? premise.address().substring(0, mark) : "";
        String id = "f" + (ids.size() + 1);
        ids.put(fact, id);
        groups.computeIfAbsent(
                        new Place(premise.kind(), table, premise.citation()),
                        p -> new Group(premise.kind(), table, premise.citation(), new LinkedHashMap<>()))
                .facts()
                .put(id, fact);
    }

    /** What a step found missing, for all steps of which the same is said but for their subject. */
    private static Premise general(Premise premise, Step step) {
        String subject = "/" + step.conclusion().subject();
        if (!premise.kind().equals("absent") || !premise.address().contains(subject)) {
            return premise;
        }
        String part = Pattern.quote(subject) + "(?=[/+]|$)";
        return new Premise(
                premise.kind(),
                premise.address().replaceAll(part, Matcher.quoteReplacement("/" + SUBJECT)),
                premise.words(),
                premise.citation());
    }

    private void facts(Group group) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", group.kind());
        if (!group.table().isEmpty()) {
            json.writeStringField("table", group.table());
        }
        if (group.citation().isPresent()) {
            citation(group.citation().get());
        }
        json.writeObjectFieldStart("facts");
        for (Map.Entry<String, Premise> fact : group.facts().entrySet()) {
            String address = fact.getValue().address();
            json.writeObjectFieldStart(fact.getKey());
            json.writeStringField(
                    "at",
                    group.table().isEmpty()
                            ? address
                            : address.substring(group.table().length() + 1));
            json.writeStringField("words", fact.getValue().words());
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void steps(List<Step> group) throws IOException {
        Step first = group.get(0);
        boolean alike = group.stream().allMatch(s -> s.says().equals(first.says()));
        json.writeStartObject();
        json.writeStringField("rule", first.rule());
        citation(first.citation());
        if (alike) {
            json.writeStringField("says", first.says());
        }
        json.writeObjectFieldStart("steps");
        for (Step step : group) {
            json.writeObjectFieldStart(step.id());
            json.writeStringField("of", step.conclusion().subject());
            if (!alike) {
                json.writeStringField("says", step.says());
            }
            if (step.overriddenBy().isPresent()) {
                json.writeStringField("overridden-by", step.overriddenBy().get());
            }
            json.writeArrayFieldStart("from");
            for (Premise premise : step.premises()) {
                json.writeString(premise.kind().equals("step") ? premise.address() : ids.get(general(premise, step)));
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void citation(Citation citation) throws IOException {
        json.writeStringField("source", citation.source());
        json.writeStringField("clause", citation.clause());
        if (!citation.edition().equals(editions.get(citation.source()))) {
            json.writeStringField("edition", citation.edition());
        }
        json.writeStringField("confidence", citation.confidence().key());
    }
}
