package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Sentence;
import org.fumewarden.trail.Step;
import org.fumewarden.whatif.Differences;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The trail names each fact once, loses none, and says in words what was looked for and not there. */
final class TrailByReferenceTest {
    /** A typical advice is at most this. */
    private static final int AIM = 60_000;

    /** Tours that miss the aim; the largest has twelve readings of nine agents. */
    private static final int ABOVE_AIM = 9;

    private static final int LARGEST = 72_000;
    private static final int LARGEST_INCOMPLETE = 200_000;
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Map<Path, Advice> TOURS = new TreeMap<>();

    @TempDir
    private Path folder;

    @BeforeAll
    static void advise() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios/tours"))) {
            files.forEach(file -> TOURS.put(file, bench(file).advise()));
        }
    }

    private static Bench bench(Path file) {
        return new Bench(file, Map.of(), Optional.empty(), Optional.empty(), Advisor::shipped);
    }

    @Test
    void halfOfTheToursAreTypicalAndNoneIsLarge() {
        List<Integer> sizes =
                TOURS.values().stream().map(TrailByReferenceTest::size).sorted().toList();
        assertTrue(sizes.stream().filter(s -> s > AIM).count() <= ABOVE_AIM, "sizes: " + sizes);
        assertTrue(sizes.get(sizes.size() - 1) <= LARGEST, "sizes: " + sizes);
    }

    @Test
    void adviceOnATaskOfWhichOnlyTheProcessIsKnownIsNotLarge() throws IOException {
        for (String code : List.of("gb", "us", "de", "au")) {
            Path file = Files.writeString(
                    folder.resolve(code + ".yaml"),
                    "title: little known\ncode: " + code + "\non: 2026-03-02\ntask: {process: mag-solid-wire}\n");
            assertTrue(size(bench(file).advise()) <= LARGEST_INCOMPLETE, code);
        }
    }

    private static int size(Advice advice) {
        return AdviceJson.write(advice).getBytes(StandardCharsets.UTF_8).length;
    }

    /** What is written is what the engine found: every step with every premise, and no fact twice. */
    @Test
    void openedAgainEveryStepHasThePremisesItHad() throws JsonProcessingException {
        for (Advice advice : TOURS.values()) {
            JsonNode written = MAPPER.readTree(AdviceJson.write(advice));
            JsonNode steps = AdviceTree.opened(written).path("trail").path("steps");
            List<Step> had = advice.trail().steps();
            assertEquals(had.size(), steps.size());
            for (int i = 0; i < had.size(); i++) {
                Step step = had.get(i);
                JsonNode opened = steps.get(i);
                assertEquals(step.id(), opened.path("id").asText());
                assertEquals(step.says(), opened.path("says").asText());
                assertEquals(step.phase(), opened.path("phase").asText());
                assertEquals(
                        step.confidence().key(),
                        opened.path("overall-confidence").asText(),
                        step.id());
                assertEquals(step.citation().edition(), opened.path("edition").asText());
                assertEquals(
                        step.premises().stream()
                                .map(TrailByReferenceTest::spelled)
                                .toList(),
                        addresses(opened));
            }
            Set<String> facts = new HashSet<>();
            for (JsonNode group : written.path("trail").path("facts")) {
                group.path("facts")
                        .forEach(f -> assertTrue(
                                facts.add(group.path("kind") + " " + group.path("table") + group.path("words") + f),
                                f.toString()));
            }
        }
    }

    private static String spelled(Premise premise) {
        return premise.kind() + " " + premise.address()
                + (premise.kind().equals("step") ? "" : " " + premise.words())
                + premise.citation()
                        .map(c -> " " + c.source() + c.clause() + c.edition()
                                + c.confidence().key())
                        .orElse("");
    }

    private static List<String> addresses(JsonNode step) {
        List<String> addresses = new ArrayList<>();
        step.path("premises").forEach(p -> {
            StringBuilder all = new StringBuilder(
                    p.path("kind").asText() + " " + p.path("address").asText());
            all.append(p.has("words") ? " " + p.path("words").asText() : "");
            if (p.has("source")) {
                all.append(' ');
                for (String part : List.of("source", "clause", "edition", "confidence")) {
                    all.append(p.path(part).asText());
                }
            }
            addresses.add(all.toString());
        });
        return addresses;
    }

    @Test
    void adviceReadBackSaysTheSame() throws IOException {
        for (Map.Entry<Path, Advice> tour : TOURS.entrySet()) {
            Path file = Files.writeString(folder.resolve("advice.json"), AdviceJson.write(tour.getValue()));
            Advice read = AdviceReader.read(file);
            assertEquals(tour.getValue().respirators(), read.respirators());
            assertEquals(
                    tour.getValue().requiredFactor().reasons(),
                    read.requiredFactor().reasons());
            assertEquals(tour.getValue().cautions(), read.cautions());
            assertEquals(tour.getValue().checks(), read.checks());
        }
    }

    /** Written by the program as it was before format 2. */
    @Test
    void adviceOfFormatOneIsStillRead() throws IOException {
        Path file = folder.resolve("old.json");
        try (InputStream in = new GZIPInputStream(getClass().getResourceAsStream("format-1.json.gz"))) {
            Files.copy(in, file);
        }
        Advice old = AdviceReader.read(file);
        assertEquals("th3", old.respirators().get(0).deviceClass());
        assertEquals("GB-NEED-010", old.requiredFactor().reasons().get(0).rule());
        assertEquals(List.of(), Differences.between(old, old));
    }

    @Test
    void wordsThatLookLikePlacesStayWords() {
        Sentence braces = new Sentence(List.of("", " says {1} and {of}"), List.of("{2}"));
        Sentence other = new Sentence(List.of("", " says {1} and {of}"), List.of("nobody"));
        Alike alike = Alike.of(List.of(braces, other), List.of("of"), (i, word) -> "nobody");
        for (int i = 0; i < 2; i++) {
            assertEquals(
                    List.of(braces, other).get(i).text(),
                    Alike.filled(alike.form(), alike.fillings().get(i), Map.of("of", "nobody")));
        }
    }

    @Test
    void sentencesOfOneFormAreToldByWhatDiffers() {
        List<Sentence> said = List.of(
                new Sentence(List.of("", ": ", " ", ", ", ""), List.of("Lead", "20", "ppm", "8 h average")),
                new Sentence(List.of("", ": ", " ", ", ", ""), List.of("Nickel", "3", "ppm", "8 h average")));
        Alike alike = Alike.of(
                said, List.of("of"), (i, word) -> List.of("lead", "nickel").get(i));
        assertEquals("{Of}: {1} ppm, 8 h average", alike.form());
        assertEquals(List.of(List.of("20"), List.of("3")), alike.fillings());
    }

    /** GB-NEED-010 sets the factor for welding fume unless extraction is verified. */
    @Test
    void whatARuleFoundMissingIsAPremiseWithItsAddress() {
        Step floor = TOURS.get(Path.of("scenarios/tours/stainless-brackets.yaml")).trail().steps().stream()
                .filter(s -> s.rule().equals("GB-NEED-010"))
                .findFirst()
                .orElseThrow();
        Premise absent = floor.premises().stream()
                .filter(p -> p.kind().equals("absent"))
                .findFirst()
                .orElseThrow();
        assertEquals("task.extraction", absent.address());
        assertEquals("extraction: not verified", absent.words());
    }

    @Test
    void premisesAreWordsAndEditionsAreEditions() {
        for (Advice advice : TOURS.values()) {
            for (Step step : advice.trail().steps()) {
                assertFalse(step.citation().edition().startsWith("see "), step.rule());
                assertFalse(step.citation().edition().isEmpty(), step.rule());
                for (Premise premise : step.premises()) {
                    assertFalse(
                            premise.words().matches(".*\\b[a-z]+[A-Z].*=.*|[A-Z][a-z]+[A-Z]\\w*: .*"), premise.words());
                    assertFalse(
                            !premise.kind().equals("step") && premise.words().contains("{"), premise.words());
                }
            }
        }
    }
}
