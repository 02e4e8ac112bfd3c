package org.fumewarden.report;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DatabindException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.function.Function;
import org.fumewarden.advice.AccountLine;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.Suitability;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Keyed;
import org.fumewarden.trail.Trail;

/** Reads advice back from JSON, for comparing; inputs and trail stay behind in the file. */
public final class AdviceReader {
    private static final long LARGEST = 20_000_000;
    private static final ObjectMapper MAPPER =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    private static final ObjectMapper RECORDS = records();

    private AdviceReader() {}

    /** Reads a file that holds advice, or kept advice. */
    public static Advice read(Path file) {
        try {
            JsonNode root = MAPPER.readTree(YamlFiles.bytes(file, LARGEST));
            JsonNode advice = root.has("advice") ? root.get("advice") : root;
            if (AdviceTree.readable(advice)) {
                return advice(AdviceTree.opened(advice));
            }
        } catch (DatabindException e) {
            throw problem(file, "holds advice in which something is not what it should be.");
        } catch (IOException e) {
            throw problem(file, "is not JSON.");
        } catch (DateTimeException | IllegalArgumentException | NoSuchElementException e) {
            throw problem(file, "holds advice in which something is not what it should be.");
        }
        throw problem(file, "holds no advice in the format " + AdviceJson.FORMAT + ", nor in one before it.");
    }

    private static InputException problem(Path file, String message) {
        return new InputException(
                new Problem(file.toString(), 0, "", message, "a file from advise --format json, or from --keep."));
    }

    /** Each part by the names of its record; inputs and trail stay empty. */
    private static Advice advice(JsonNode opened) throws JsonProcessingException {
        ObjectNode node = opened.deepCopy();
        node.remove("trail");
        node.set("code-used", node.path("codes").path(0));
        return RECORDS.treeToValue(node, Advice.class);
    }

    static Confidence confidence(JsonNode node) {
        return Keyed.find(Confidence.class, node.path("confidence").asText()).orElse(Confidence.MEMORY);
    }

    private static <E extends Enum<E> & Keyed> Reading<E> word(Class<E> type, E lacking) {
        E last = type.getEnumConstants()[type.getEnumConstants().length - 1];
        return new Reading<>(lacking, n -> Keyed.find(type, n.asText()).orElse(last));
    }

    private static BigDecimal plain(JsonNode node) {
        BigDecimal value = node.decimalValue().stripTrailingZeros();
        return value.scale() < 0 ? value.setScale(0) : value;
    }

    private static ObjectMapper records() {
        SimpleModule words = new SimpleModule()
                .addDeserializer(String.class, new Reading<>("", JsonNode::asText))
                .addDeserializer(LocalDate.class, new Reading<>(null, n -> LocalDate.parse(n.asText())))
                .addDeserializer(BigDecimal.class, new Reading<>(null, AdviceReader::plain))
                .addDeserializer(Status.class, word(Status.class, null))
                .addDeserializer(Suitability.class, word(Suitability.class, null))
                .addDeserializer(Confidence.class, word(Confidence.class, Confidence.MEMORY))
                .addDeserializer(AccountLine.class, new Reading<>(null, AccountJson::read))
                .addDeserializer(Trail.class, new Reading<>(new Trail(List.of()), n -> new Trail(List.of())));
        JsonMapper.Builder builder = JsonMapper.builder()
                .addModule(new Jdk8Module())
                .addModule(words)
                .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .withConfigOverride(List.class, o -> o.setSetterInfo(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY)));
        AdviceJson.RENAMED.forEach(type -> builder.addMixIn(type, AdviceJson.Named.class));
        return builder.build();
    }

    /** Reads one kind of value; what is lacking is the given one. */
    private static final class Reading<T> extends StdDeserializer<T> {
        private static final long serialVersionUID = 1L;
        private final transient T lacking;
        private final transient Function<JsonNode, T> read;

        Reading(T lacking, Function<JsonNode, T> read) {
            super(Object.class);
            this.lacking = lacking;
            this.read = read;
        }

        @Override
        public T deserialize(JsonParser json, DeserializationContext context) throws IOException {
            return read.apply(json.readValueAsTree());
        }

        @Override
        public T getNullValue(DeserializationContext context) {
            return lacking;
        }

        @Override
        public Object getAbsentValue(DeserializationContext context) {
            return lacking;
        }
    }
}
