package org.fumewarden.upkeep;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DatabindException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import org.fumewarden.model.Sha256;

/**
 * The one way to write an entry as bytes.
 *
 * <p>JSON in UTF-8 without white space, names in alphabetical order, what is empty left out, decimal numbers as text so that
 * 0.50 stays 0.50. The same entry gives the same bytes everywhere; the hash chain rests on it.
 */
final class Canon {
    static final int HASH_BYTES = 32;
    private static final ObjectMapper MAPPER = mapper();

    private Canon() {}

    static String write(LogEntry entry) {
        try {
            return MAPPER.writeValueAsString(entry);
        } catch (JsonProcessingException e) {
            throw new StoreException(
                    StoreException.Cause.FAULT, "the entry cannot be written: " + e.getOriginalMessage(), "report it.");
        }
    }

    /** Reads an entry; complains in words when the text is none. */
    static LogEntry entry(String text) {
        return read(text, LogEntry.class);
    }

    static <T> T read(String text, Class<T> type) {
        try {
            return MAPPER.readValue(text, type);
        } catch (JsonProcessingException e) {
            throw refusal(e);
        }
    }

    static ObjectMapper json() {
        return MAPPER;
    }

    private static StoreException refusal(JsonProcessingException e) {
        if (e.getCause() instanceof StoreException inner) {
            return inner;
        }
        String path = e instanceof JsonMappingException mapping ? path(mapping) : "";
        String what = e instanceof DatabindException ? e.getOriginalMessage() : "not JSON: " + e.getOriginalMessage();
        return StoreException.refused(
                (path.isEmpty() ? "the entry" : path) + " cannot be read: "
                        + what.lines().findFirst().orElse("no reason given"),
                "check the spelling of names and values.");
    }

    private static String path(JsonMappingException e) {
        StringBuilder path = new StringBuilder();
        e.getPath().forEach(r -> {
            String part = r.getFieldName() != null ? r.getFieldName() : String.valueOf(r.getIndex());
            path.append(path.isEmpty() ? "" : ".").append(part);
        });
        return path.toString();
    }

    /** The hash of an entry that follows on another. */
    static byte[] hash(byte[] previous, String body) {
        return Sha256.of(previous, body.getBytes(StandardCharsets.UTF_8));
    }

    /** What stands before the first entry. */
    static byte[] origin() {
        return new byte[HASH_BYTES];
    }

    private static ObjectMapper mapper() {
        SimpleModule plain = new SimpleModule();
        plain.addSerializer(BigDecimal.class, new PlainDecimal());
        return JsonMapper.builder()
                .addModule(new Jdk8Module())
                .addModule(new JavaTimeModule())
                .addModule(plain)
                .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
                .serializationInclusion(JsonInclude.Include.NON_EMPTY)
                .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .disable(MapperFeature.SORT_CREATOR_PROPERTIES_FIRST)
                .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
                .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .build();
    }

    /** Writes a decimal as text, digit for digit. */
    private static final class PlainDecimal extends StdSerializer<BigDecimal> {
        private static final long serialVersionUID = 1L;

        PlainDecimal() {
            super(BigDecimal.class);
        }

        @Override
        public void serialize(BigDecimal value, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeString(value.toPlainString());
        }
    }
}
