package org.fumewarden.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.CodeUsed;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.ToCompare;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.model.Keyed;
import org.fumewarden.report.html.Speech;

/** The advice as JSON: stable names, stable order, one format number. */
public final class AdviceJson {
    /** Name and number of the format; the number grows when a name changes its meaning. */
    public static final String FORMAT = "fumewarden-advice/3";

    private static final String CHANGED = "rules-changed-in";
    private static final int EXPECTED = 1 << 14;
    /** The records of which a name differs. */
    static final List<Class<?>> RENAMED = List.of(Respirator.class, UnitInHand.class, Check.class, CodeUsed.class);

    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(new SimpleModule()
                    .addSerializer(Reason.class, written((reason, json) -> json.writeString(reason.step())))
                    .addSerializer(Keyed.class, written((word, json) -> json.writeString(word.key())))
                    .addSerializer(LocalDate.class, written((day, json) -> json.writeString(day.toString())))
                    .addSerializer(BigDecimal.class, written((value, json) -> json.writeNumber(plain(value)))))
            .addMixIn(Respirator.class, Named.class)
            .addMixIn(UnitInHand.class, Named.class)
            .addMixIn(Check.class, Named.class)
            .addMixIn(CodeUsed.class, Named.class)
            .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
            .disable(SerializationFeature.FLUSH_AFTER_WRITE_VALUE)
            .build();

    /** Names in the file that differ from those of the records, and what is left out where there is none. */
    interface Named {
        @JsonProperty("class")
        String deviceClass();

        @JsonProperty("record")
        boolean recorded();

        @JsonInclude(JsonInclude.Include.NON_ABSENT)
        Optional<LocalDate> valuesUntil();

        @JsonInclude(JsonInclude.Include.NON_EMPTY)
        List<CodeUsed.Ended> ended();
    }

    private interface ValueWriting<T> {
        void to(T value, JsonGenerator json) throws IOException;
    }

    private static <T> JsonSerializer<T> written(ValueWriting<T> writing) {
        return new JsonSerializer<>() {
            @Override
            public void serialize(T value, JsonGenerator json, SerializerProvider provider) throws IOException {
                writing.to(value, json);
            }
        };
    }

    private AdviceJson() {}

    /** Writes the advice, a line for each respirator, check, fact and step, with a line feed at the end. */
    public static String write(Advice advice) {
        return write(advice, Optional.empty());
    }

    /** The same, with the folder of the rules when somebody changed them: advice that goes out says so, kept advice keeps them. */
    public static String write(Advice advice, Optional<String> changed) {
        return text(json -> write(advice, advice.turning(), changed, json.setPrettyPrinter(new AdviceLines()))) + "\n";
    }

    /** The same in another language, which the file names: an advice of rules that speak it, and the words of the program. */
    public static String write(Advice said, Optional<String> changed, Speech speech) {
        if (speech.words().ofRuleBase()) {
            return write(said, changed);
        }
        return text(json -> {
                    json.setPrettyPrinter(new AdviceLines());
                    MAPPER.writeTree(json, ToldJson.of(write(said, changed), speech));
                })
                + "\n";
    }

    /** Whose rules decided, where they are not those of the program. */
    public static void changed(Optional<String> folder, JsonGenerator json) throws IOException {
        if (folder.isPresent()) {
            json.writeStringField(CHANGED, folder.get());
        }
    }

    /** The same, but for the values to compare, which are as {@link Advice#untried} has them. */
    public static String writeUntried(Advice advice) {
        return text(json -> writeUntried(advice, json.setPrettyPrinter(new AdviceLines()))) + "\n";
    }

    /** The same in the form of a file that it is compared with. */
    public static String writeAs(JsonNode kept, Advice advice) {
        boolean untried =
                kept.path("compare-before-signing").findValuesAsText("matters").contains(ToCompare.UNTRIED);
        return untried ? writeUntried(advice) : write(advice);
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
        write(advice, advice.turning(), Optional.empty(), json);
    }

    /** Writes the advice as the next value, as {@link Advice#untried} has the values to compare. */
    public static void writeUntried(Advice advice, JsonGenerator json) throws IOException {
        write(advice, advice.untried().stream().filter(ToCompare::turns).toList(), Optional.empty(), json);
    }

    private static void write(Advice advice, List<ToCompare> compare, Optional<String> changed, JsonGenerator json)
            throws IOException {
        json.writeStartObject();
        Names names = Names.of(advice);
        Clauses clauses = new Clauses(advice.trail().steps());
        head(FORMAT, advice, json);
        changed(changed, json);
        value("required-factor", advice.requiredFactor(), json);
        AccountJson.write(advice, json);
        RespiratorJson.write(advice, json);
        if (advice.unit().isPresent()) {
            value("unit", advice.unit().get(), json);
        }
        TrailJson.reasons("interim", advice.interim(), json);
        // While something is open a respirator may yet be required, so nothing is left to choice.
        boolean settled = advice.status() == Status.COMPLETE;
        TrailJson.reasons("by-choice", settled ? advice.byChoice() : List.of(), json);
        TrailJson.reasons("stops", advice.stops(), json);
        TrailJson.reasons("controls-first", advice.controlsFirst(), json);
        TrailJson.reasons("hazards", advice.hazards(), json);
        TrailJson.reasons("filters", advice.filters(), json);
        CheckJson.write(advice, clauses, json);
        TrailJson.reasons("cautions", advice.cautions(), json);
        value("questions", advice.questions(), json);
        TrailJson.reasons("conflicts", advice.conflicts(), json);
        value("compare-before-signing", compare, json);
        json.writeNumberField("compared-without-change", advice.untried().size() - compare.size());
        // Left out where no register was asked, so that advice kept before there was one replays byte for byte.
        if (!advice.register().isEmpty()) {
            value("register", advice.register(), json);
        }
        value("codes", List.of(advice.codeUsed()), json);
        json.writeStringField("revision", advice.revision());
        json.writeStringField("decides", Advice.CLOSING);
        value("names", names.all(), json);
        new TrailJson(advice.trail().steps(), names, clauses, json).write();
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

    /** A part by the names of its record. */
    private static void value(String name, Object part, JsonGenerator json) throws IOException {
        json.writeFieldName(name);
        MAPPER.writeValue(json, part);
    }

    static void texts(String name, Collection<String> texts, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    static void number(String name, BigDecimal value, JsonGenerator json) throws IOException {
        json.writeNumberField(name, plain(value));
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal plain = value.stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }
}
