package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.fumewarden.advice.Reason;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;

/** The steps of the trail and the reasons that refer to them, as JSON. */
final class StepJson {
    private final Optional<KeptFields> kept;

    /**
     * A writer of steps and reasons.
     *
     * @param kept where fields that come again are kept as text, for advice in bulk
     */
    StepJson(Optional<KeptFields> kept) {
        this.kept = kept;
    }

    void reasons(String name, List<Reason> reasons, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(name);
        for (Reason reason : reasons) {
            json.writeStartObject();
            json.writeStringField("step", reason.step());
            fields(reason.withoutStep(), fields -> said(reason, fields), json);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    void step(Step step, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", step.id());
        fields(StepKey.of(step), fields -> concluded(step, fields), json);
        if (step.overriddenBy().isPresent()) {
            json.writeStringField("overridden-by", step.overriddenBy().get());
        }
        json.writeArrayFieldStart("premises");
        for (Premise premise : step.premises()) {
            json.writeStartObject();
            json.writeStringField("kind", premise.kind());
            if (premise.kind().equals("step")) {
                premise(premise, json);
            } else {
                fields(premise, fields -> premise(premise, fields), json);
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** Everything in a step that does not differ between tasks in which the same was concluded from the same. */
    private record StepKey(
            String rule, String says, Citation citation, Class<?> type, String subject, Confidence confidence) {
        static StepKey of(Step step) {
            return new StepKey(
                    step.rule(),
                    step.says(),
                    step.citation(),
                    step.conclusion().getClass(),
                    step.conclusion().subject(),
                    step.confidence());
        }
    }

    private void fields(Object key, AdviceJson.Writing fields, JsonGenerator json) throws IOException {
        if (kept.isPresent()) {
            kept.get().write(key, fields, json);
        } else {
            fields.to(json);
        }
    }

    private static void said(Reason reason, JsonGenerator json) throws IOException {
        json.writeStringField("rule", reason.rule());
        json.writeStringField("subject", reason.subject());
        json.writeStringField("says", reason.says());
        json.writeStringField("source", reason.source());
        json.writeStringField("clause", reason.clause());
        json.writeStringField("edition", reason.edition());
        json.writeStringField("confidence", reason.confidence().key());
        json.writeBooleanField("unverified", reason.confidence().unverified());
    }

    private static void concluded(Step step, JsonGenerator json) throws IOException {
        json.writeStringField("phase", step.phase());
        json.writeStringField("rule", step.rule());
        json.writeStringField("title", step.title());
        json.writeStringField("says", step.says());
        json.writeStringField("concludes", step.conclusion().getClass().getSimpleName());
        json.writeStringField("subject", step.conclusion().subject());
        citation(step.citation(), json);
        json.writeStringField("overall-confidence", step.confidence().key());
    }

    private static void premise(Premise premise, JsonGenerator json) throws IOException {
        json.writeStringField("address", premise.address());
        json.writeStringField("words", premise.words());
        if (premise.citation().isPresent()) {
            citation(premise.citation().get(), json);
        }
    }

    private static void citation(Citation citation, JsonGenerator json) throws IOException {
        json.writeStringField("source", citation.source());
        json.writeStringField("clause", citation.clause());
        json.writeStringField("edition", citation.edition());
        json.writeStringField("confidence", citation.confidence().key());
    }
}
