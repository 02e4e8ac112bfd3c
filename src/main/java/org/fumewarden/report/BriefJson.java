package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.model.Confidence;

/**
 * The answer of an advice with the ids of the rules behind it, for bulk work: no sentences and no trail. The same task
 * with the same revision gives both again.
 */
public final class BriefJson {
    /** Name and number of the format; the number grows when a name changes its meaning. */
    public static final String FORMAT = "fumewarden-brief/1";

    private final JsonGenerator json;

    /** Ids of the rules and checks that rest on memory; known when all the rest is written. */
    private final Set<String> unverified = new HashSet<>();

    private BriefJson(JsonGenerator json) {
        this.json = json;
    }

    /** Writes the answer as the next value. */
    public static void write(Advice advice, JsonGenerator json) throws IOException {
        new BriefJson(json).write(advice);
    }

    private void write(Advice advice) throws IOException {
        json.writeStartObject();
        AdviceJson.head(FORMAT, advice, json);
        if (advice.unit().isPresent()) {
            unit(advice.unit().get());
        }
        json.writeObjectFieldStart("required-factor");
        AdviceJson.figure(advice.requiredFactor(), json);
        rules("rules", advice.requiredFactor().reasons());
        json.writeEndObject();
        json.writeArrayFieldStart("respirators");
        for (Respirator respirator : advice.respirators()) {
            respirator(respirator);
        }
        json.writeEndArray();
        subjects("stops", advice.stops());
        subjects("controls-first", advice.controlsFirst());
        subjects("hazards", advice.hazards());
        subjects("filters", advice.filters());
        checks(advice.checks());
        subjects("cautions", advice.cautions());
        texts("questions", advice.questions().stream().map(OpenQuestion::question));
        subjects("conflicts", advice.conflicts());
        texts("unverified", unverified.stream().sorted());
        json.writeStringField("revision", advice.revision());
        json.writeNumberField("steps", advice.trail().steps().size());
        json.writeStringField("decides", Advice.CLOSING);
        json.writeEndObject();
    }

    private void unit(UnitInHand unit) throws IOException {
        json.writeObjectFieldStart("unit");
        json.writeStringField("id", unit.id());
        json.writeStringField("class", unit.deviceClass());
        json.writeStringField("condition", unit.condition());
        rules("rules", unit.reasons());
        json.writeEndObject();
    }

    private void respirator(Respirator respirator) throws IOException {
        json.writeStartObject();
        json.writeStringField("class", respirator.deviceClass());
        json.writeStringField("verdict", respirator.verdict().key());
        if (respirator.factor().isPresent()) {
            AdviceJson.number("factor", respirator.factor().get(), json);
        }
        json.writeStringField("filter", respirator.filter());
        rules("rules", respirator.reasons());
        rules("conditions", respirator.conditions());
        json.writeEndObject();
    }

    private void checks(List<Check> checks) throws IOException {
        texts("checks", checks.stream().map(Check::id));
        checks.forEach(c -> seen(c.id(), c.confidence()));
    }

    /** The rules of a part, each once. */
    private void rules(String name, List<Reason> reasons) throws IOException {
        Set<String> rules = new TreeSet<>();
        for (Reason reason : reasons) {
            rules.add(reason.rule());
            seen(reason.rule(), reason.confidence());
        }
        AdviceJson.texts(name, rules, json);
    }

    /** What each rule of a part is about. */
    private void subjects(String name, List<Reason> reasons) throws IOException {
        json.writeArrayFieldStart(name);
        for (Reason reason : reasons) {
            json.writeStartObject();
            json.writeStringField("rule", reason.rule());
            json.writeStringField("subject", reason.subject());
            json.writeEndObject();
            seen(reason.rule(), reason.confidence());
        }
        json.writeEndArray();
    }

    private void seen(String id, Confidence confidence) {
        if (confidence.unverified()) {
            unverified.add(id);
        }
    }

    private void texts(String name, Stream<String> texts) throws IOException {
        AdviceJson.texts(name, texts.toList(), json);
    }
}
