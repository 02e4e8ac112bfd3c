package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Fields that come again in one advice after another, kept as the text that they make on one line. Safe to share between
 * threads.
 */
final class KeptFields {
    private static final int MOST = 20_000;

    private final Map<Object, String> kept = new ConcurrentHashMap<>();

    /**
     * Writes fields into the object that the writer is in, after its first field.
     *
     * @param key equal only where the fields are
     */
    void write(Object key, AdviceJson.Writing fields, JsonGenerator json) throws IOException {
        String text = kept.get(key);
        if (text == null) {
            text = text(fields);
            if (kept.size() >= MOST) {
                kept.clear();
            }
            kept.put(key, text);
        }
        json.writeRaw(',');
        json.writeRaw(text);
    }

    private static String text(AdviceJson.Writing fields) {
        String object = AdviceJson.text(json -> {
            json.writeStartObject();
            fields.to(json);
            json.writeEndObject();
        });
        return object.substring(1, object.length() - 1);
    }
}
