package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;

/**
 * The answer of an advice with the ids of the rules behind it, for bulk work: no sentences and no trail. The same task
 * with the same revision gives both again.
 */
public final class BriefJson {
    /** Name and number of the format; the number grows when a name changes its meaning. */
    public static final String FORMAT = "fumewarden-brief/1";

    private BriefJson() {}

    /** Writes the answer as the next value. */
    public static void write(Advice advice, JsonGenerator json) throws IOException {
        Set<String> unverified = new TreeSet<>();
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeStringField("title", advice.title());
        json.writeStringField("code", advice.code());
        json.writeStringField("on", advice.on().toString());
        json.writeStringField("status", advice.status().key());
        factor(advice.requiredFactor(), unverified, json);
        json.writeArrayFieldStart("respirators");
        for (Respirator respirator : advice.respirators()) {
            respirator(respirator, unverified, json);
        }
        json.writeEndArray();
        rules("stops", advice.stops(), unverified, json);
        rules("controls-first", advice.controlsFirst(), unverified, json);
        rules("hazards", advice.hazards(), unverified, json);
        rules("filters", advice.filters(), unverified, json);
        texts("checks", advice.checks().stream().map(Check::id).toList(), json);
        advice.checks().stream().filter(c -> c.confidence().unverified()).forEach(c -> unverified.add(c.id()));
        rules("cautions", advice.cautions(), unverified, json);
        texts(
                "questions",
                advice.questions().stream().map(OpenQuestion::question).toList(),
                json);
        rules("conflicts", advice.conflicts(), unverified, json);
        texts("unverified", unverified, json);
        json.writeStringField("revision", advice.revision());
        json.writeNumberField("steps", advice.trail().steps().size());
        json.writeStringField("decides", Advice.CLOSING);
        json.writeEndObject();
    }

    private static void factor(RequiredFactor factor, Set<String> unverified, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("required-factor");
        AdviceJson.number("value", factor.value(), json);
        json.writeBooleanField("open", factor.open());
        json.writeStringField("agent", factor.agent());
        json.writeStringField("basis", factor.basis());
        json.writeStringField("statistic", factor.statistic());
        texts("without-limit", factor.withoutLimit(), json);
        texts("rules", ids(factor.reasons().stream(), unverified), json);
        json.writeEndObject();
    }

    private static void respirator(Respirator respirator, Set<String> unverified, JsonGenerator json)
            throws IOException {
        json.writeStartObject();
        json.writeStringField("class", respirator.deviceClass());
        json.writeStringField("verdict", respirator.verdict());
        if (respirator.factor().isPresent()) {
            AdviceJson.number("factor", respirator.factor().get(), json);
        }
        json.writeStringField("filter", respirator.filter());
        texts("rules", ids(respirator.reasons().stream(), unverified), json);
        texts("conditions", ids(respirator.conditions().stream(), unverified), json);
        json.writeEndObject();
    }

    /** What each rule of a part is about, rule by rule. */
    private static void rules(String name, List<Reason> reasons, Set<String> unverified, JsonGenerator json)
            throws IOException {
        json.writeArrayFieldStart(name);
        for (Reason reason : reasons) {
            json.writeStartObject();
            json.writeStringField("rule", reason.rule());
            json.writeStringField("subject", reason.subject());
            json.writeEndObject();
        }
        json.writeEndArray();
        ids(reasons.stream(), unverified);
    }

    private static Set<String> ids(Stream<Reason> reasons, Set<String> unverified) {
        Set<String> ids = new TreeSet<>();
        reasons.forEach(r -> {
            ids.add(r.rule());
            if (r.confidence().unverified()) {
                unverified.add(r.rule());
            }
        });
        return ids;
    }

    private static void texts(String name, Collection<String> texts, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
