package org.fumewarden.upkeep;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.TreeMap;

/** Searches raw bytes for entries: 32 bytes of the hash before, the words, 32 bytes of the hash. */
final class Carving {
    private static final byte[] BEGIN = "{\"by\":".getBytes(StandardCharsets.US_ASCII);

    private Carving() {}

    static void search(Path file, TreeMap<Long, String> found) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        for (int at = Canon.HASH_BYTES; at + BEGIN.length <= bytes.length; at++) {
            if (startsAt(bytes, at)) {
                carve(bytes, at, found);
            }
        }
    }

    private static boolean startsAt(byte[] bytes, int at) {
        return Arrays.equals(bytes, at, at + BEGIN.length, BEGIN, 0, BEGIN.length);
    }

    private static void carve(byte[] bytes, int at, TreeMap<Long, String> found) {
        int end = end(bytes, at);
        if (end < 0 || end + Canon.HASH_BYTES > bytes.length) {
            return;
        }
        String body = new String(bytes, at, end - at, StandardCharsets.UTF_8);
        byte[] previous = Arrays.copyOfRange(bytes, at - Canon.HASH_BYTES, at);
        byte[] hash = Arrays.copyOfRange(bytes, end, end + Canon.HASH_BYTES);
        if (Arrays.equals(hash, Canon.hash(previous, body))) {
            entry(body).ifPresent(e -> found.putIfAbsent(e.sequence(), JsonLines.line(body, hash)));
        }
    }

    private static Optional<LogEntry> entry(String body) {
        try {
            return Optional.of(Canon.entry(body));
        } catch (StoreException e) {
            return Optional.empty();
        }
    }

    /** The place after the brace that closes the object, or -1 when it does not close within a page. */
    private static int end(byte[] bytes, int from) {
        int depth = 0;
        boolean quoted = false;
        int last = Math.min(bytes.length, from + Sqlite.PAGE_BYTES);
        for (int i = from; i < last; i++) {
            byte b = bytes[i];
            if (quoted && b == '\\') {
                i++;
            } else if (b == '"') {
                quoted = !quoted;
            } else if (!quoted && b == '{') {
                depth++;
            } else if (!quoted && b == '}' && --depth == 0) {
                return i + 1;
            }
        }
        return -1;
    }
}
