package org.fumewarden.audit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.codes.Hidden;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.model.Sha256;

/** A piece of advice as it was kept: task, revision, advice and trail, in canonical JSON under a hash. */
public final class KeptAdvice {
    /** Name and number of the format. */
    public static final String FORMAT = "fumewarden-kept/2";

    /** The format before the program and reviews were kept too. */
    private static final String BEFORE = "fumewarden-kept/1";

    /** Name of the entry's part that says which key signs it. */
    static final String SIGNED_BY = "signed-by";

    /** Name of the entry's part that says in which folder the rules lay, when they were not those of the program. */
    static final String FOREIGN = "rules-not-of-the-program";

    private static final Set<String> OF_EVERY_ENTRY =
            Set.of("format", "sequence", "previous", "kept-at", "hash", SIGNED_BY);
    private static final Set<String> OF_ADVICE = Set.of("program", FOREIGN, "task", "advice");

    /** What the first entry of a chain names as its predecessor. */
    public static final String GENESIS = "0".repeat(64);

    /** Largest file that is read, in bytes. */
    private static final long LARGEST = 20_000_000;

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final Path file;
    private final byte[] raw;
    private final ObjectNode content;

    private KeptAdvice(Path file, byte[] raw, ObjectNode content) {
        this.file = file;
        this.raw = raw;
        this.content = content;
    }

    /** Reads a kept file; it may still turn out to be damaged. */
    public static KeptAdvice read(Path file) {
        byte[] raw = YamlFiles.bytes(file, LARGEST);
        try {
            JsonNode node = MAPPER.readTree(raw);
            if (node instanceof ObjectNode object
                    && List.of(FORMAT, BEFORE).contains(object.path("format").asText())) {
                return new KeptAdvice(file, raw, object);
            }
        } catch (java.io.IOException e) {
            if (file.toString().endsWith(Chain.ENDING)) {
                throw damaged(file, "is not JSON any more.");
            }
        }
        throw new InputException(new Problem(
                file.toString(),
                0,
                "",
                "is no kept advice.",
                "a file that advise --keep wrote; a task file goes to advise."));
    }

    /** True for a file in a form in which advice is kept. */
    public static boolean isKept(Path file) {
        try {
            read(file);
            return true;
        } catch (InputException e) {
            return false;
        }
    }

    private static InputException damaged(Path file, String message) {
        return new InputException(new Problem(
                file.toString(), 0, "", message, "take it from a copy, and find out how it came to differ."));
    }

    /** The text of a new kept file: canonical JSON with its hash, and a line feed. */
    static String seal(ObjectNode content) {
        content.remove("hash");
        content.put("hash", Sha256.hex(Canonical.bytes(content.toString())));
        return Canonical.text(content.toString()) + "\n";
    }

    /** True when not one byte differs from what was kept. */
    public boolean intact() {
        ObjectNode copy = content.deepCopy();
        byte[] sealed = seal(copy).getBytes(StandardCharsets.UTF_8);
        return copy.path("hash").asText().equals(hash()) && Arrays.equals(sealed, raw);
    }

    public Path file() {
        return file;
    }

    public String hash() {
        return content.path("hash").asText();
    }

    public String previous() {
        return content.path("previous").asText();
    }

    public long sequence() {
        return content.path("sequence").asLong();
    }

    public String revision() {
        return content.path("advice").path("revision").asText();
    }

    public String code() {
        return content.path("advice").path("code").asText();
    }

    public String on() {
        return content.path("advice").path("on").asText();
    }

    /** When it was kept; empty when it names no instant. */
    public Optional<Instant> keptAt() {
        try {
            return Optional.of(Instant.parse(content.path("kept-at").asText()));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** The program that advised; empty for entries that did not keep it. */
    public String program() {
        return content.path("program").asText();
    }

    /** What a person said of an earlier entry, when this is a review. */
    public Optional<Review> review() {
        return content.has("review") ? Optional.of(Review.of(content.path("review"))) : Optional.empty();
    }

    /** What an entry never holds, or lacks, in words; empty when it has the form of an entry. */
    public Optional<String> oddity() {
        boolean review = content.has("review");
        Set<String> names = new TreeSet<>();
        content.fieldNames().forEachRemaining(names::add);
        names.removeAll(OF_EVERY_ENTRY);
        if (review) {
            names.remove("review");
        } else {
            names.removeAll(OF_ADVICE);
        }
        if (!names.isEmpty()) {
            return Optional.of("it holds " + Hidden.quoted(names.iterator().next()) + ", which no entry has");
        }
        if (review) {
            return Review.fault(content.path("review"));
        }
        return content.path("task").isObject() && content.path("advice").isObject()
                ? Optional.empty()
                : Optional.of("it holds neither a task with its advice nor a review");
    }

    /** The key that signs it, by its short name; empty when it names none. */
    public Optional<String> signedBy() {
        return Optional.of(content.path(SIGNED_BY).asText()).filter(k -> !k.isEmpty());
    }

    /** The folder of the rules, when the entry says that they were not those of the program. */
    public Optional<String> foreignRules() {
        return Optional.of(content.path(FOREIGN).asText()).filter(f -> !f.isEmpty());
    }

    /** The task file as JSON text. */
    public String task() {
        return content.path("task").toString();
    }

    /** The advice, with its trail. */
    public JsonNode advice() {
        return content.path("advice");
    }

    static ObjectNode empty() {
        return MAPPER.createObjectNode();
    }

    /** The task as it was told. */
    public JsonNode told() {
        return content.path("task");
    }

    static JsonNode tree(Object plain) {
        return MAPPER.valueToTree(plain);
    }

    static JsonNode parse(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
