package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;

/** The checks of an advice as JSON. What is to be done stands in their steps, and here only where it differs. */
final class CheckJson {
    /** How long a record is kept, where nobody says. */
    static final String NOT_STATED = "not stated";

    private CheckJson() {}

    static void write(Advice advice, Clauses clauses, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("checks");
        for (Check check : advice.checks()) {
            json.writeStartObject();
            json.writeStringField("id", check.id());
            String said = advice.trail().step(check.step()).map(s -> s.says()).orElse("");
            if (!said.equals(check.what())) {
                json.writeStringField("what", check.what());
            }
            json.writeStringField("who", check.who());
            json.writeStringField("when", check.when());
            if (check.recorded()) {
                json.writeBooleanField("record", true);
            }
            if (!check.fields().isEmpty()) {
                AdviceJson.texts("fields", check.fields(), json);
            }
            if (!check.keep().equals(NOT_STATED)) {
                json.writeStringField("keep", check.keep());
            }
            json.writeStringField("force", check.force());
            cited(check, clauses, json);
            json.writeStringField("step", check.step());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void cited(Check check, Clauses clauses, JsonGenerator json) throws IOException {
        Optional<String> known =
                clauses.id(check.source(), check.clause(), check.confidence().key());
        if (known.isPresent()) {
            json.writeStringField("by", known.get());
        } else {
            json.writeStringField("source", check.source());
            json.writeStringField("clause", check.clause());
            json.writeStringField("confidence", check.confidence().key());
        }
    }
}
