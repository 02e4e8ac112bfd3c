package org.fumewarden.upkeep;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** Lines of JSON objects with their numbers; blank lines are passed over. */
final class Numbered {
    private final BufferedReader in;
    private int number;

    /** Lines of a file whose first line may have been read already. */
    Numbered(BufferedReader in) {
        this.in = in;
        this.number = 1;
    }

    int number() {
        return number;
    }

    Optional<JsonNode> next() {
        try {
            for (String text = in.readLine(); text != null; text = in.readLine()) {
                number++;
                if (!text.isBlank()) {
                    return Optional.of(object(text, number));
                }
            }
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static JsonNode object(String text, int number) {
        try {
            JsonNode node = Canon.json().readTree(text);
            if (node != null && node.isObject()) {
                return node;
            }
        } catch (JsonProcessingException e) {
            // Falls through to the complaint: the parser's own words name columns, not lines.
        }
        throw StoreException.refused(
                "line " + number + " is not a JSON object.", "the file was cut off; export again.");
    }
}
