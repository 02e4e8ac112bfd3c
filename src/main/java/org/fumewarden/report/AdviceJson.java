package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.ByStatistic;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.CodeUsed;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.ToCompare;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.task.RegisterNote;

/** The advice as JSON: stable names, stable order, one format number. */
public final class AdviceJson {
    /** Name and number of the format; the number grows when a name changes its meaning. */
    public static final String FORMAT = "fumewarden-advice/2";

    private static final int EXPECTED = 1 << 14;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private AdviceJson() {}

    /** Writes the advice, a line for each respirator, check, fact and step, with a line feed at the end. */
    public static String write(Advice advice) {
        return text(json -> write(advice, json.setPrettyPrinter(new AdviceLines()))) + "\n";
    }

    /** What writes one line of JSON. */
    public interface Writing {
        void to(JsonGenerator json) throws IOException;
    }

    /** The JSON that is written, on one line and without a line end. */
    public static String text(Writing writing) {
        StringWriter text = new StringWriter(EXPECTED);
        try (JsonGenerator json = MAPPER.createGenerator(text)) {
            writing.to(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** Writes the advice as the next value. */
    public static void write(Advice advice, JsonGenerator json) throws IOException {
        json.writeStartObject();
        head(FORMAT, advice, json);
        factor(advice.requiredFactor(), json);
        AccountJson.write(advice, json);
        json.writeArrayFieldStart("respirators");
        for (Respirator respirator : advice.respirators()) {
            respirator(respirator, json);
        }
        json.writeEndArray();
        if (advice.unit().isPresent()) {
            unit(advice.unit().get(), json);
        }
        StepJson.reasons("interim", advice.interim(), json);
        StepJson.reasons("by-choice", advice.byChoice(), json);
        StepJson.reasons("stops", advice.stops(), json);
        StepJson.reasons("controls-first", advice.controlsFirst(), json);
        StepJson.reasons("hazards", advice.hazards(), json);
        StepJson.reasons("filters", advice.filters(), json);
        json.writeArrayFieldStart("checks");
        for (Check check : advice.checks()) {
            check(check, json);
        }
        json.writeEndArray();
        StepJson.reasons("cautions", advice.cautions(), json);
        json.writeArrayFieldStart("questions");
        for (OpenQuestion question : advice.questions()) {
            json.writeStartObject();
            json.writeStringField("question", question.question());
            json.writeStringField("ask", question.ask());
            StepJson.reasons("reasons", question.reasons(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
        StepJson.reasons("conflicts", advice.conflicts(), json);
        compare(advice.compareBeforeSigning(), json);
        register(advice.register(), json);
        json.writeArrayFieldStart("codes");
        code(advice.codeUsed(), json);
        json.writeEndArray();
        json.writeStringField("revision", advice.revision());
        json.writeStringField("decides", Advice.CLOSING);
        new StepJson(advice.trail().steps(), json).write();
        json.writeEndObject();
    }

    /** What every form of an advice begins with. */
    static void head(String format, Advice advice, JsonGenerator json) throws IOException {
        json.writeStringField("format", format);
        json.writeStringField("title", advice.title());
        json.writeStringField("code", advice.code());
        json.writeStringField("on", advice.on().toString());
        json.writeStringField("status", advice.status().key());
    }

    /** The required factor without what it rests on. */
    static void figure(RequiredFactor factor, JsonGenerator json) throws IOException {
        number("value", factor.value(), json);
        json.writeBooleanField("open", factor.open());
        json.writeStringField("agent", factor.agent());
        json.writeStringField("basis", factor.basis());
        json.writeStringField("statistic", factor.statistic());
        texts("without-limit", factor.withoutLimit(), json);
    }

    private static void compare(List<ToCompare> values, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("compare-before-signing");
        for (ToCompare value : values) {
            json.writeStartObject();
            json.writeStringField("row", value.row());
            json.writeStringField("value", value.value());
            json.writeStringField("document", value.document());
            json.writeStringField("place", value.place());
            json.writeStringField("matters", value.matters());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** Left out where no register was asked, so that advice kept before there was one replays byte for byte. */
    private static void register(List<RegisterNote> notes, JsonGenerator json) throws IOException {
        if (notes.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("register");
        for (RegisterNote note : notes) {
            json.writeStartObject();
            json.writeStringField("about", note.about());
            json.writeStringField("says", note.says());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void code(CodeUsed code, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", code.id());
        json.writeStringField("name", code.name());
        json.writeStringField("edition", code.edition());
        json.writeStringField("checked-on", code.checkedOn());
        texts("lacks", code.lacks(), json);
        if (code.valuesUntil().isPresent()) {
            json.writeStringField("values-until", code.valuesUntil().get().toString());
        }
        json.writeEndObject();
    }

    private static void factor(RequiredFactor factor, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("required-factor");
        figure(factor, json);
        json.writeArrayFieldStart("by-statistic");
        for (ByStatistic other : factor.byStatistic()) {
            json.writeStartObject();
            json.writeStringField("statistic", other.statistic());
            number("level", other.level(), json);
            number("factor", other.factor(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
        StepJson.reasons("reasons", factor.reasons(), json);
        json.writeEndObject();
    }

    private static void respirator(Respirator respirator, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("class", respirator.deviceClass());
        json.writeStringField("name", respirator.name());
        if (respirator.factor().isPresent()) {
            number("factor", respirator.factor().get(), json);
        } else {
            json.writeNullField("factor");
        }
        json.writeStringField("verdict", respirator.verdict());
        json.writeStringField("filter", respirator.filter());
        StepJson.reasons("reasons", respirator.reasons(), json);
        StepJson.reasons("conditions", respirator.conditions(), json);
        json.writeEndObject();
    }

    private static void unit(UnitInHand unit, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("unit");
        json.writeStringField("id", unit.id());
        json.writeStringField("class", unit.deviceClass());
        json.writeStringField("condition", unit.condition());
        StepJson.reasons("reasons", unit.reasons(), json);
        texts("heals", unit.heals(), json);
        json.writeEndObject();
    }

    private static void check(Check check, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", check.id());
        json.writeStringField("what", check.what());
        json.writeStringField("who", check.who());
        json.writeStringField("when", check.when());
        json.writeBooleanField("record", check.recorded());
        texts("fields", check.fields(), json);
        json.writeStringField("keep", check.keep());
        json.writeStringField("force", check.force());
        json.writeStringField("source", check.source());
        json.writeStringField("clause", check.clause());
        json.writeStringField("confidence", check.confidence().key());
        json.writeStringField("step", check.step());
        json.writeEndObject();
    }

    static void texts(String name, Collection<String> texts, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    static void number(String name, BigDecimal value, JsonGenerator json) throws IOException {
        BigDecimal plain = value.stripTrailingZeros();
        json.writeNumberField(name, plain.scale() < 0 ? plain.setScale(0) : plain);
    }
}
