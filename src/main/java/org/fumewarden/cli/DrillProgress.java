package org.fumewarden.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.training.Round;
import org.fumewarden.training.RoundItem;

/** The answers given so far, kept in a file after each of them, so that a round can be stopped and taken up again. */
final class DrillProgress {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Path file;
    private final List<String> asked;
    private final List<String> answers = new ArrayList<>();

    /**
     * Progress of some rounds.
     *
     * @param file null when nothing is kept
     * @throws InputException when the file is no progress of these rounds
     */
    DrillProgress(Path file, List<Round> rounds) {
        this.file = file;
        this.asked = rounds.stream()
                .flatMap(r -> r.items().stream())
                .map(DrillProgress::words)
                .toList();
        if (file != null && Files.exists(file)) {
            read();
        }
    }

    private static String words(RoundItem item) {
        return item.ask()
                + item.choices().stream().map(RoundItem.Choice::says).collect(Collectors.joining("|", "|", ""));
    }

    private void read() {
        String name = file.toString();
        try {
            JsonNode root = JSON.readTree(YamlFiles.text(name, YamlFiles.bytes(file)));
            List<String> then = new ArrayList<>();
            root.path("asked").forEach(a -> then.add(a.asText()));
            if (!then.equals(asked)) {
                throw new InputException(new Problem(
                        name,
                        0,
                        "--progress",
                        "belongs to another round.",
                        "give the same tasks, --topic, --seed and --language as before, or name a new file."));
            }
            root.path("answers").forEach(a -> answers.add(a.asText()));
        } catch (JsonProcessingException e) {
            throw new InputException(new Problem(
                    name, 0, "--progress", "cannot be read as a round that was stopped.", "name a new file."));
        }
    }

    List<String> answers() {
        return List.copyOf(answers.subList(0, Math.min(answers.size(), asked.size())));
    }

    void add(String answer) {
        answers.add(answer);
        if (file != null) {
            ObjectNode root = JSON.createObjectNode();
            ArrayNode questions = root.putArray("asked");
            asked.forEach(questions::add);
            ArrayNode given = root.putArray("answers");
            answers.forEach(given::add);
            new OutputFile("--progress", file, true).write(root.toPrettyString().getBytes(StandardCharsets.UTF_8));
        }
    }
}
