package org.fumewarden.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The JSON Schema of advice. */
public final class AdviceSchema {
    private AdviceSchema() {}

    /** The text of the schema. */
    public static String text() {
        try (InputStream in = AdviceSchema.class.getResourceAsStream("advice.schema.json")) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its advice schema");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
