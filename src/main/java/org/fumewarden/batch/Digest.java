package org.fumewarden.batch;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.fumewarden.model.Sha256;

/** The first half of a SHA-256 as 32 digits: it tells whether bytes changed by accident or by an editor, no more. */
final class Digest {
    private static final int BYTES = 16;
    private static final String FIELD = ",\"digest\":\"";

    /** How many characters the end of a sealed line has. */
    private static final int SEAL = FIELD.length() + 2 * BYTES + 2;

    private Digest() {}

    static String of(byte[] bytes) {
        return Sha256.hex(bytes).substring(0, 2 * BYTES);
    }

    /** A JSON object with a digest of all that stands before it as its last field. */
    static String sealed(String object) {
        String open = object.substring(0, object.length() - 1);
        return open + FIELD + of(open.getBytes(StandardCharsets.UTF_8)) + "\"}";
    }

    /** Whether a line still is as it was sealed. */
    static boolean intact(byte[] line) {
        int open = line.length - SEAL;
        return open > 0
                && new String(line, open, SEAL, StandardCharsets.US_ASCII)
                        .equals(FIELD + of(Arrays.copyOf(line, open)) + "\"}");
    }
}
