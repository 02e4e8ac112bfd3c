package org.fumewarden.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.cli.CommandRun;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.report.AdviceJson;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class BatchTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @TempDir
    Path folder;

    private Path input;
    private Path out;
    private Path rejects;

    @BeforeEach
    void name() {
        input = folder.resolve("tasks.jsonl");
        out = folder.resolve("advice.jsonl");
        rejects = folder.resolve("advice.jsonl.rejects");
    }

    /** The lines after the marker. */
    private static List<String> results(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        assertTrue(lines.get(0).startsWith("{\"line\":0,\"batch\":"), lines.get(0));
        return lines.subList(1, lines.size());
    }

    private CommandRun batch(String... more) {
        List<String> arguments = new ArrayList<>(List.of("batch", input.toString(), "--out", out.toString()));
        arguments.addAll(List.of(more));
        return CommandRun.of(arguments.toArray(String[]::new));
    }

    @Test
    void everyLineIsAdvisedAsItWouldBeAlone() throws IOException {
        List<String> lines = BatchTasks.mixed(60);
        Files.write(input, lines);
        assertEquals(2, batch("--threads", "3").exit(), "bad lines are told by the exit code");
        List<Integer> seen = new ArrayList<>();
        for (String line : results(out)) {
            JsonNode node = MAPPER.readTree(line);
            int number = node.get("line").intValue();
            seen.add(number);
            Bench alone = Bench.ofText("task", lines.get(number - 1), Advisor::shipped);
            String advice = AdviceJson.text(json -> AdviceJson.writeUntried(alone.advise(), json));
            assertEquals(MAPPER.readTree(advice), node.get("advice"), "line " + number);
        }
        List<Integer> good = new ArrayList<>();
        for (int i = 1; i <= 60; i++) {
            if (!List.of(5, 11, 17, 23).contains(i % 29)) {
                good.add(i);
            }
        }
        assertEquals(good, seen, "in the order of the input, each once");
    }

    @Test
    void theBriefFormIsTheSameAnswerWithoutSentencesAndTrail() throws IOException {
        Files.write(input, BatchTasks.mixed(60));
        batch();
        List<String> full = results(out);
        Files.delete(out);
        Files.delete(rejects);
        assertEquals(2, batch("--brief").exit());
        List<String> brief = results(out);
        assertEquals(full.size(), brief.size());
        for (int i = 0; i < full.size(); i++) {
            JsonNode written = MAPPER.readTree(brief.get(i)).get("advice");
            assertEquals(answer(MAPPER.readTree(full.get(i)).get("advice"), false), answer(written, true), "line " + i);
            assertFalse(written.has("trail"), "line " + i);
            assertFalse(brief.get(i).contains("\"says\""), "line " + i);
        }
    }

    /** What the brief form says of the answer, taken from the full one. */
    private static JsonNode answer(JsonNode advice, boolean brief) {
        ObjectNode said = MAPPER.createObjectNode();
        for (String part : List.of("title", "code", "on", "status", "revision")) {
            said.set(part, advice.get(part));
        }
        said.set("factor", advice.at("/required-factor/value"));
        said.set("agent", advice.at("/required-factor/agent"));
        ArrayNode respirators = said.putArray("respirators");
        for (JsonNode respirator : advice.get("respirators")) {
            respirators
                    .addObject()
                    .<ObjectNode>set("class", respirator.get("class"))
                    .<ObjectNode>set("verdict", respirator.get("verdict"))
                    .put("filter", respirator.path("filter").asText());
        }
        ArrayNode checks = said.putArray("checks");
        advice.get("checks").forEach(c -> checks.add(brief ? c : c.get("id")));
        ArrayNode questions = said.putArray("questions");
        advice.get("questions").forEach(q -> questions.add(brief ? q : q.get("question")));
        return said;
    }

    @Test
    void badLinesGoToTheRejectsWithLineAndReason() throws IOException {
        Files.write(input, BatchTasks.mixed(29));
        CommandRun run = batch();
        List<JsonNode> refused = new ArrayList<>();
        for (String line : results(rejects)) {
            refused.add(MAPPER.readTree(line));
        }
        assertEquals(
                List.of(11, 17, 23),
                refused.stream().map(n -> n.get("line").intValue()).toList());
        assertEquals("task.place", refused.get(1).at("/problems/0/field").textValue());
        assertTrue(refused.get(1).at("/problems/0/message").textValue().contains("on the moon"));
        assertEquals(
                "is not a JSON object.",
                refused.get(2).at("/problems/0/message").textValue());
        assertTrue(run.err().contains("Advised on 25 tasks, rejected 3."), run.err());
    }

    @Test
    void aLineLongerThanATaskIsRejectedAndTheNextIsRead() throws IOException {
        String endless = "{\"title\":\"" + "x".repeat((int) YamlFiles.MAX_BYTES) + "\"}";
        Files.write(input, List.of(BatchTasks.task(1), endless, BatchTasks.task(2)));
        assertEquals(2, batch().exit());
        assertEquals(2, results(out).size());
        assertTrue(results(rejects).get(0).startsWith("{\"line\":2,"), "the second line");
    }

    @Test
    @Tag("ci")
    void aBatchCutAnywhereAndResumedEqualsAnUninterruptedOne() throws IOException {
        Files.write(input, BatchTasks.mixed(40));
        batch();
        byte[] whole = Files.readAllBytes(out);
        byte[] wholeRejects = Files.readAllBytes(rejects);
        Random random = new Random(20260302);
        for (int i = 0; i < 25; i++) {
            // A kill may leave either file behind the other, each cut in the middle of a line.
            int cut = random.nextInt(whole.length + 1);
            int cutRejects = random.nextInt(wholeRejects.length + 1);
            Files.write(out, Arrays.copyOf(whole, cut));
            Files.write(rejects, Arrays.copyOf(wholeRejects, cutRejects));
            CommandRun run = batch("--resume");
            assertTrue(run.exit() != 1, run.err());
            String where = "cut at " + cut + " and " + cutRejects;
            assertArrayEquals(whole, Files.readAllBytes(out), where);
            assertArrayEquals(wholeRejects, Files.readAllBytes(rejects), where);
        }
    }

    @Test
    void aBatchIsNotResumedUnderAnotherDay() throws IOException {
        Files.write(input, List.of(BatchTasks.task(1), BatchTasks.task(2)));
        batch();
        byte[] before = Files.readAllBytes(out);
        CommandRun run = batch("--resume", "--on", "2026-03-03");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("was written from another input, other rules or other options."), run.err());
        assertArrayEquals(before, Files.readAllBytes(out));
    }

    @Test
    void whatIsThereIsNotOverwritten() throws IOException {
        Files.write(input, List.of(BatchTasks.task(1)));
        Files.writeString(out, "the work of hours\n");
        CommandRun run = batch();
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("is there already and is not overwritten.\nAdd --resume"), run.err());
        assertEquals("the work of hours\n", Files.readString(out));
    }

    @Test
    void aFolderIsReadInTheOrderOfNames() throws IOException {
        Path tasks = Files.createDirectory(folder.resolve("tasks"));
        Files.writeString(tasks.resolve("b.json"), BatchTasks.task(2));
        Files.writeString(tasks.resolve("a.yaml"), "extends: b.json\ntitle: First\n");
        Files.writeString(tasks.resolve("c.yaml"), "title: [\n");
        Files.writeString(tasks.resolve("note.txt"), "no task");
        input = tasks;
        assertEquals(2, batch().exit());
        List<String> lines = results(out);
        assertEquals(2, lines.size());
        assertTrue(lines.get(0).contains(",\"file\":\"a.yaml\",\"advice\":"), lines.get(0));
        assertTrue(lines.get(0).contains("\"title\":\"First\""));
        assertTrue(results(rejects).get(0).contains(",\"file\":\"c.yaml\",\"problems\":"));
    }

    @Test
    void aLineAboutAUnitThatMustNotBeUsedSaysSo() throws IOException {
        String sound = BatchTasks.task(1);
        String barred =
                MAPPER.writeValueAsString(((com.fasterxml.jackson.databind.node.ObjectNode) MAPPER.readTree(sound))
                        .set("kit", MAPPER.readTree("{\"unit-withdrawn\": true}")));
        Files.writeString(input, sound + "\n" + barred, StandardCharsets.UTF_8);
        for (String form : List.of("--brief", "--on=2026-11-30")) {
            CommandRun run = CommandRun.of("batch", input.toString(), form);
            List<String> lines = run.out().lines().toList();
            assertFalse(MAPPER.readTree(lines.get(0)).has("do-not-use-this-unit"), lines.get(0));
            assertTrue(
                    MAPPER.readTree(lines.get(1)).path("do-not-use-this-unit").asBoolean(), lines.get(1));
            assertEquals(
                    "not-for-use",
                    MAPPER.readTree(lines.get(1)).at("/advice/unit/condition").asText());
        }
    }

    @Test
    void withoutAFileTheLinesGoToStandardOutput() throws IOException {
        Files.writeString(input, BatchTasks.task(1) + "\n" + BatchTasks.task(2), StandardCharsets.UTF_8);
        CommandRun run = CommandRun.of("batch", input.toString());
        assertEquals(0, run.exit());
        assertEquals(2, run.out().lines().count(), "the last line needs no line end");
    }
}
