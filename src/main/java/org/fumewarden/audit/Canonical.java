package org.fumewarden.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.erdtman.jcs.JsonCanonicalizer;

/** Canonical JSON after RFC 8785 and its SHA-256. */
final class Canonical {
    private Canonical() {}

    /** The canonical bytes of a JSON text. */
    static byte[] bytes(String json) {
        try {
            return new JsonCanonicalizer(json).getEncodedUTF8();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The canonical text of a JSON text. */
    static String text(String json) {
        return new String(bytes(json), StandardCharsets.UTF_8);
    }
}
