package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;

/** The classes of an advice as JSON; what a class has not is left out. */
final class RespiratorJson {
    private RespiratorJson() {}

    static void write(Advice advice, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("respirators");
        for (Respirator respirator : advice.respirators()) {
            json.writeStartObject();
            json.writeStringField("class", respirator.deviceClass());
            if (respirator.factor().isPresent()) {
                AdviceJson.number("factor", respirator.factor().get(), json);
            }
            json.writeStringField("verdict", respirator.verdict().key());
            if (!respirator.filter().isEmpty()) {
                json.writeStringField("filter", respirator.filter());
            }
            reasons("reasons", respirator.reasons(), json);
            reasons("conditions", respirator.conditions(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void reasons(String name, List<Reason> reasons, JsonGenerator json) throws IOException {
        if (!reasons.isEmpty()) {
            TrailJson.reasons(name, reasons, json);
        }
    }
}
