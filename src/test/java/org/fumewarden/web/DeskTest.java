package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.ToCompare;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.task.TaskTree;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The answers of the server are those of the library and the command line. */
class DeskTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Library LIBRARY = Library.shipped(() -> LocalDate.of(2026, 3, 2));
    private static final Desk DESK = new Desk(LIBRARY, new UpkeepDesk(LIBRARY, Optional.empty()));

    static Iterable<String> starts() {
        return Starts.NAMES;
    }

    private static JsonNode ask(String path, ObjectNode asked) throws IOException {
        return MAPPER.readTree(told(path, asked));
    }

    private static String told(String path, ObjectNode asked) {
        return new String(DESK.find(path).orElseThrow().answer(asked).body(), StandardCharsets.UTF_8);
    }

    private static ObjectNode task(String text) {
        return MAPPER.createObjectNode().put("task", text);
    }

    @ParameterizedTest
    @MethodSource("starts")
    void adviceIsByteForByteThatOfTheLibrary(String name) {
        String text = Starts.text(name);
        String own =
                AdviceJson.write(Bench.ofText("task", text, LIBRARY::advisor).advise());
        assertEquals(own, told("/api/advise", task(text)));
    }

    /** Trying each value with its neighbours takes far longer than deciding, so it waits until somebody reads it. */
    @Test
    void whileSomebodyTypesNoValueIsTriedAndTheAdviceReplaysTheSame() throws IOException {
        ObjectNode asked = task(Starts.text("bench-stainless"));
        String typing = told("/api/advise", asked.deepCopy().put("typing", true));
        String whole = told("/api/advise", asked);
        assertTrue(typing.contains(ToCompare.UNTRIED), typing);
        assertFalse(whole.contains(ToCompare.UNTRIED), whole);
        for (String kept : List.of(typing, whole)) {
            assertTrue(ask("/api/replay", asked.deepCopy().put("advice", kept))
                    .path("same")
                    .asBoolean());
        }
    }

    @ParameterizedTest
    @MethodSource("starts")
    void openingAndSavingATaskChangesNoAdvice(String name) throws IOException {
        String text = Starts.text(name);
        JsonNode tree =
                ask("/api/open", MAPPER.createObjectNode().put("text", text)).path("task");
        ObjectNode asked = MAPPER.createObjectNode();
        asked.set("task", tree);
        String saved = told("/api/save", asked);
        assertEquals(tree, TaskText.tree(TaskTree.parse("saved", saved)), saved);
        assertEquals(told("/api/advise", task(text)), told("/api/advise", task(saved)));
    }

    @Test
    void savedTextNeverBecomesYamlOfItsOwn() throws IOException {
        for (String hostile : new String[] {
            "a: b",
            "- x",
            "yes",
            "null",
            "~",
            "2026-03-02",
            "\"quoted\"",
            "line\nbreak",
            "#none",
            "<script>alert(1)</script>",
            "",
            "  ",
            "!!java.lang.Object {}",
            "*a",
            "&a b",
            "1e3",
            "0x1F",
            "äöü ₂"
        }) {
            ObjectNode asked = MAPPER.createObjectNode();
            asked.putObject("task").put("title", hostile);
            String saved = told("/api/save", asked);
            JsonNode read = TaskText.tree(TaskTree.parse("saved", saved));
            assertEquals(hostile.strip(), read.path("title").asText(), saved);
            assertEquals(1, read.size(), saved);
        }
    }

    @Test
    void aWrongFieldIsNamedByItsPath() {
        String text =
                Starts.text("bench-stainless").replace("0.12 mg/m3", "twelve").replace("mag-solid-wire", "magg");
        org.fumewarden.codes.InputException fault = org.junit.jupiter.api.Assertions.assertThrows(
                org.fumewarden.codes.InputException.class,
                () -> DESK.find("/api/advise").orElseThrow().answer(task(text)));
        Set<String> fields = new HashSet<>();
        fault.problems().forEach(p -> fields.add(p.field()));
        assertEquals(Set.of("task.process", "exposures.2.twa"), fields);
    }

    @Test
    @Tag("ci")
    void aQuestionThatNoAnswerCouldMakeMatterIsNotAsked() throws IOException {
        Set<String> bare = matters(Starts.text("bench-stainless"));
        Set<String> zinc = matters(Starts.text("bench-stainless").replace("coating: none", "coating: zinc-galvanised"));
        assertFalse(bare.contains("coating-stripped"), "nothing to strip from bare metal: " + bare);
        assertTrue(zinc.contains("coating-stripped") || zinc.size() >= bare.size(), zinc.toString());
        assertTrue(bare.contains("facial-hair"), "an answered question stays: " + bare);
    }

    private static Set<String> matters(String text) throws IOException {
        Set<String> ids = new HashSet<>();
        ask("/api/matters", task(text)).path("questions").forEach(q -> ids.add(q.asText()));
        return ids;
    }

    @Test
    void aReplayOfTheSameAdviceIsUnchangedAndOfAnotherNamesThePlace() throws IOException {
        String text = Starts.text("bench-stainless");
        String advice = told("/api/advise", task(text));
        assertTrue(ask("/api/replay", task(text).put("advice", advice))
                .path("same")
                .asBoolean());
        String changed = advice.replaceFirst("\"value\":20", "\"value\":2");
        JsonNode other = ask("/api/replay", task(text).put("advice", changed));
        assertFalse(other.path("same").asBoolean());
        assertEquals("/required-factor/value", other.path("place").asText());
        assertEquals("2", other.path("then").asText());
        assertEquals("20", other.path("now").asText());
        JsonNode files =
                ask("/api/kept", MAPPER.createObjectNode().put("first", advice).put("second", changed));
        assertEquals("/required-factor/value", files.path("place").asText());
        assertThrows(
                org.fumewarden.codes.InputException.class,
                () -> ask(
                        "/api/kept",
                        MAPPER.createObjectNode().put("first", advice).put("second", "{}")));
    }

    /** Advice in which every question is open is the largest; it comes back through the page as well. */
    @Test
    void theLargestAdviceIsReplayedToo() throws IOException {
        String text = "title: nothing known\ncode: us\non: 2026-03-02\ntask: {}\n";
        String advice = told("/api/advise", task(text));
        ObjectNode asked = task(text).put("advice", advice);
        assertTrue(MAPPER.writeValueAsBytes(asked).length < WebServer.MAX_BYTES / 2);
        assertTrue(ask("/api/replay", asked).path("same").asBoolean());
    }

    /** Everyday words and a decimal comma become the words of the tables; a word of two meanings stays. */
    @Test
    void everydayWordsAreWrittenBackInTheWordsOfTheTables() throws IOException {
        String text = """
                title: t
                code: uk
                on: 2026-03-02
                task: {process: stick, base-metal: Stahl, coating: galv, place: draußen, wear-time: "1,5 hours"}
                atmosphere: {explosive: nein}
                exposures: [{agent: CrVI, twa: "<0,01 mg/m³"}, {agent: Mn, twa: 0.1 mg/m3}]
                """;
        JsonNode tree =
                ask("/api/open", MAPPER.createObjectNode().put("text", text)).path("task");
        assertEquals("gb", tree.path("code").asText());
        assertEquals("manual-metal-arc", tree.at("/task/process").asText());
        assertEquals("Stahl", tree.at("/task/base-metal").asText());
        assertEquals("zinc-galvanised", tree.at("/task/coating").asText());
        assertEquals("outdoors", tree.at("/task/place").asText());
        assertEquals("1.5 h", tree.at("/task/wear-time").asText());
        assertEquals("false", tree.at("/atmosphere/explosive").asText());
        assertEquals("chromium-vi", tree.at("/exposures/0/agent").asText());
        assertEquals("<0.01 mg/m3", tree.at("/exposures/0/twa").asText());
        assertEquals("Mn", tree.at("/exposures/1/agent").asText());
    }

    @Test
    void theLargestChangeStandsFirstAndEachMovesSomething() throws IOException {
        ObjectNode asked = task(Starts.text("bench-stainless"));
        asked.putArray("questions")
                .add("extraction")
                .add("place")
                .add("purpose")
                .add("facial-hair")
                .add("title");
        JsonNode turns = ask("/api/turns", asked).path("turns");
        assertTrue(turns.size() >= 3, turns.toString());
        int last = Integer.MAX_VALUE;
        for (JsonNode turn : turns) {
            assertTrue(
                    turn.path("classes").asInt() <= last && turn.path("moved").asInt() > 0, turn.toString());
            last = turn.path("classes").asInt();
        }
    }

    @Test
    void sentencesOfRulesComeInGermanWhereTheyAreTranslatedAndNoneInEnglish() throws IOException {
        JsonNode german = ask("/api/said", task(Starts.text("bench-stainless")).put("language", "de"));
        assertTrue(german.path("steps").size() > 3, "translated sentences");
        assertEquals(
                0,
                ask("/api/said", task(Starts.text("bench-stainless")))
                        .path("steps")
                        .size());
    }

    @Test
    void comparingATaskWithItselfMovesNothing() throws IOException {
        ObjectNode asked = MAPPER.createObjectNode();
        asked.put("before", Starts.text("double-bottom")).put("after", Starts.text("double-bottom"));
        assertEquals(0, ask("/api/compare", asked).path("differences").size());
    }

    @Test
    void everyUnitThatTheFormOffersIsReadByTheTaskReader() {
        var vocabulary = LIBRARY.advisor("gb").base().book().vocabulary();
        for (var question : vocabulary.questions()) {
            for (String unit : VocabularyJson.UNITS
                    .getOrDefault(question.kind(), java.util.Map.of())
                    .keySet()) {
                String text = "title: t\ncode: gb\non: 2026-03-02\n"
                        + question.path().replace(".", ": {") + ": \"1 " + unit + "\"}\n";
                Bench.ofText("task", text, LIBRARY::advisor).task("gb", java.util.Map.of());
            }
        }
    }

    @Test
    void theFirstStartingTaskIsTheTourThatTheReadmeShows() throws IOException {
        Path tour = Path.of("scenarios/tours/stainless-brackets.yaml");
        JsonNode shown = TaskText.tree(TaskTree.parse("start", Starts.text("bench-stainless")));
        ObjectNode told = (ObjectNode) TaskText.tree(YamlFiles.parse("tour", Files.readString(tour)));
        told.remove("expect");
        told.remove("variants");
        assertEquals(told, shown);
    }

    /** The older question waits here until it is stopped, so that no clock decides. */
    @Test
    @Tag("ci")
    void aNewerQuestionOfAPageEndsTheOlderOneAndAnotherPageDoesNot() throws Exception {
        Matters matters = new Matters();
        String text = Starts.text("bench-stainless");
        CountDownLatch started = new CountDownLatch(1);
        Bench waiting = Bench.ofText("task", text, id -> {
            started.countDown();
            try {
                Thread.sleep(60_000);
            } catch (InterruptedException e) {
                throw new CancellationException("stopped");
            }
            return LIBRARY.advisor(id);
        });
        Bench ready = Bench.ofText("task", text, LIBRARY::advisor);
        var older = CompletableFuture.supplyAsync(() -> matters.of("one", "older", waiting));
        started.await();
        List<String> other = matters.of("two", "newest", ready);
        assertFalse(older.isDone(), "another page stops nothing");
        assertEquals(other, matters.of("one", "newer", ready));
        assertThrows(CompletionException.class, older::join);
        assertEquals(other, new Relevance(ready).questions());
        assertTrue(other.contains("extraction"), other.toString());
    }
}
