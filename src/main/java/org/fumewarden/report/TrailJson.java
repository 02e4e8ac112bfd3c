package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Reason;
import org.fumewarden.model.Citation;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Sentence;
import org.fumewarden.trail.Step;

/**
 * The trail as JSON, by reference: each clause and each fact stands once, each step names the facts and steps it rests on.
 * Facts of one table and steps of one rule stand together under the form of what they say.
 */
final class TrailJson {
    /** What stands for the subject of a step in what is the same for all steps of a kind. */
    static final String SUBJECT = "{subject}";

    /** What stands for the part of a subject that it is about. */
    static final String ABOUT = "{about}";

    private static final List<String> OF = List.of("of");
    /** Fewer facts than this are told shorter among others of their kind. */
    private static final int OWN_GROUP = 3;

    private final JsonGenerator json;
    private final Names names;
    private final List<Step> steps;
    private final Clauses clauses;
    private final Map<Place, Map<String, Premise>> groups = new LinkedHashMap<>();
    private final Map<Premise, String> ids = new HashMap<>();
    /** Premises whose id is known already: many steps rest on the same few, and to find one by its parts is dear. */
    private final Map<Premise, String> met = new IdentityHashMap<>();

    /** Facts of one kind and table, said in one form. */
    private record Place(String kind, String table, List<String> form) {}

    /** A step and the ids of what it rests on. */
    private record Told(Step step, Set<String> from) {}

    TrailJson(List<Step> steps, Names names, Clauses clauses, JsonGenerator json) {
        this.steps = steps;
        this.names = names;
        this.clauses = clauses;
        this.json = json;
    }

    /** The numbers of the steps behind reasons. */
    static void reasons(String name, List<Reason> reasons, JsonGenerator json) throws IOException {
        AdviceJson.texts(name, reasons.stream().map(Reason::step).toList(), json);
    }

    void write() throws IOException {
        List<List<Told>> rules = byRule();
        json.writeObjectFieldStart("trail");
        clauses.write(json);
        json.writeArrayFieldStart("facts");
        for (Map.Entry<Place, Map<String, Premise>> group : joined().entrySet()) {
            facts(group.getKey(), group.getValue());
        }
        json.writeEndArray();
        json.writeArrayFieldStart("steps");
        for (List<Told> group : rules) {
            steps(group);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** Steps of one rule and clause follow one another in a trail. */
    private List<List<Told>> byRule() {
        List<List<Told>> rules = new ArrayList<>();
        Step last = null;
        for (Step step : steps) {
            if (last == null
                    || !last.rule().equals(step.rule())
                    || !last.citation().equals(step.citation())) {
                rules.add(new ArrayList<>());
            }
            Set<String> from = new LinkedHashSet<>();
            step.premises().forEach(p -> from.add(p.kind().equals("step") ? p.address() : fact(p, step)));
            rules.get(rules.size() - 1).add(new Told(step, from));
            last = step;
        }
        return rules;
    }

    private String fact(Premise premise, Step step) {
        Premise fact = general(premise, step);
        return fact == premise ? met.computeIfAbsent(fact, this::id) : id(fact);
    }

    private String id(Premise fact) {
        String known = ids.get(fact);
        if (known != null) {
            return known;
        }
        String id = "f" + (ids.size() + 1);
        ids.put(fact, id);
        Place place = new Place(fact.kind(), table(fact), form(fact));
        groups.computeIfAbsent(place, p -> new LinkedHashMap<>()).put(id, fact);
        return id;
    }

    /**
     * Rows are of one form when they are said alike and the same places hold a name of their address, other facts when they stand
     * in one part of the task or are of one kind.
     */
    private List<String> form(Premise fact) {
        if (!fact.kind().equals("row")) {
            return List.of(fact.address().split("[./+]", 2)[0]);
        }
        List<String> at = Arrays.stream(
                        StringUtils.substringAfter(fact.address(), "#").split("/"))
                .map(names::of)
                .toList();
        List<String> form = new ArrayList<>(fact.sentence().fixed());
        fact.sentence().filled().forEach(word -> form.add(String.valueOf(at.indexOf(word))));
        return form;
    }

    /** The groups, with those of a few facts in one of their kind, rows in one of what they say. */
    private Map<Place, Map<String, Premise>> joined() {
        Map<Place, Map<String, Premise>> joined = new LinkedHashMap<>();
        groups.forEach((place, facts) -> {
            Premise first = facts.values().iterator().next();
            boolean row = place.kind().equals("row");
            Place among = new Place(
                    place.kind(), place.table(), row ? first.sentence().fixed() : List.of());
            joined.computeIfAbsent(facts.size() < OWN_GROUP ? among : place, p -> new LinkedHashMap<>())
                    .putAll(facts);
        });
        return joined;
    }

    private static String table(Premise fact) {
        return fact.kind().equals("row")
                ? fact.address().substring(0, fact.address().indexOf('#'))
                : "";
    }

    /** What a step found missing, or a name it looked up, for all steps of which the same is said but for their subject. */
    private Premise general(Premise premise, Step step) {
        String subject = step.conclusion().subject();
        String address = premise.address();
        if (premise.kind().equals("absent")) {
            String any = anyOf(anyOf(address, subject, SUBJECT), Step.about(subject), ABOUT);
            return any.equals(address) ? premise : about(premise, any, premise.sentence());
        }
        return address.endsWith(subject)
                        && address.endsWith("#" + subject)
                        && premise.words().equals(names.of(subject))
                ? about(premise, table(premise) + "#" + SUBJECT, Sentence.plain(SUBJECT))
                : premise;
    }

    /** An address with any subject in place of one, where the subject is a whole part of it. */
    private static String anyOf(String address, String subject, String placeholder) {
        if (subject.isEmpty() || !address.contains(subject)) {
            return address;
        }
        StringBuilder any = new StringBuilder();
        int from = 0;
        for (int at = address.indexOf(subject, 1); at > 0; at = address.indexOf(subject, at + 1)) {
            int end = at + subject.length();
            if ("/.|".indexOf(address.charAt(at - 1)) >= 0
                    && (end == address.length() || "/+.|".indexOf(address.charAt(end)) >= 0)) {
                any.append(address, from, at).append(placeholder);
                from = end;
            }
        }
        return any.append(address, from, address.length()).toString();
    }

    private static Premise about(Premise premise, String address, Sentence says) {
        return new Premise(premise.kind(), address, says, premise.citation());
    }

    private void facts(Place place, Map<String, Premise> facts) throws IOException {
        List<Premise> all = List.copyOf(facts.values());
        List<String> at = all.stream()
                .map(f -> place.table().isEmpty()
                        ? f.address()
                        : f.address().substring(place.table().length() + 1))
                .toList();
        Optional<Citation> cited = all.get(0).citation();
        boolean together = all.stream().allMatch(f -> f.citation().equals(cited));
        List<String[]> parts = at.stream().map(a -> a.split("/", -1)).toList();
        int shortest = parts.stream().mapToInt(p -> p.length).min().orElse(0);
        Alike alike = Alike.of(
                all.stream().map(Premise::sentence).toList(),
                IntStream.rangeClosed(1, shortest).mapToObj(i -> "at" + i).toList(),
                (i, word) -> names.of(parts.get(i)[Integer.parseInt(word.substring(2)) - 1]));
        json.writeStartObject();
        json.writeStringField("kind", place.kind());
        if (!place.table().isEmpty()) {
            json.writeStringField("table", place.table());
        }
        if (together && cited.isPresent()) {
            json.writeStringField("by", clauses.id(cited.get()));
        }
        json.writeStringField("words", alike.form());
        json.writeObjectFieldStart("facts");
        int i = 0;
        for (Map.Entry<String, Premise> fact : facts.entrySet()) {
            List<String> rest = new ArrayList<>(alike.fillings().get(i));
            if (!together) {
                rest.add(0, clauses.id(fact.getValue().citation().orElseThrow()));
            }
            json.writeFieldName(fact.getKey());
            told(at.get(i), rest);
            i++;
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void steps(List<Told> told) throws IOException {
        List<Step> rule = told.stream().map(Told::step).toList();
        Step first = rule.get(0);
        List<Sentence> said = rule.stream().map(s -> s.finding().sentence()).toList();
        Alike alike = Alike.of(
                said, OF, (i, word) -> names.of(rule.get(i).conclusion().subject()));
        Set<String> common = new LinkedHashSet<>(told.get(0).from());
        told.forEach(t -> common.retainAll(rule.size() == 1 ? Set.of() : t.from()));
        json.writeStartObject();
        json.writeStringField("rule", first.rule());
        json.writeStringField("by", clauses.id(first.citation()));
        json.writeStringField("says", alike.form());
        if (!common.isEmpty()) {
            json.writeStringField("from", String.join(" ", common));
        }
        json.writeObjectFieldStart("steps");
        for (int i = 0; i < rule.size(); i++) {
            Set<String> own = told.get(i).from();
            own.removeAll(common);
            step(rule.get(i), own, alike.fillings().get(i));
        }
        json.writeEndObject();
        lifted(rule);
        json.writeEndObject();
    }

    /** What a step is of and rests on, and what fills the places of its sentence. */
    private void step(Step step, Set<String> from, List<String> fillings) throws IOException {
        String subject = step.conclusion().subject();
        String told = from.isEmpty() ? subject : subject + " " + String.join(" ", from);
        json.writeFieldName(step.id());
        told(told, fillings);
    }

    /** A text alone, or with what fills the places. */
    private void told(String text, List<String> fillings) throws IOException {
        if (fillings.isEmpty()) {
            json.writeString(text);
            return;
        }
        json.writeStartArray();
        json.writeString(text);
        for (String filling : fillings) {
            json.writeString(filling);
        }
        json.writeEndArray();
    }

    private void lifted(List<Step> rule) throws IOException {
        if (rule.stream().allMatch(Step::stands)) {
            return;
        }
        json.writeObjectFieldStart("overridden-by");
        for (Step step : rule) {
            if (step.overriddenBy().isPresent()) {
                json.writeStringField(step.id(), step.overriddenBy().get());
            }
        }
        json.writeEndObject();
    }
}
