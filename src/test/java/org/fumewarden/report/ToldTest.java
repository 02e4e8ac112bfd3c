package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.check.Scenario;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.report.answer.AdviceSheet;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.TextForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever the file tells stands on the page or in its annex, so that a sheet cannot hang beside another job unseen. */
final class ToldTest {
    private static final Set<String> ANSWERED = Set.of("task", "atmosphere", "wearer", "kit", "estimate");

    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("percent", "%"),
            Map.entry("length", "m"),
            Map.entry("volume", "m3"),
            Map.entry("flow", "L/min"),
            Map.entry("mass-flow", "kg/h"),
            Map.entry("duration", "min"),
            Map.entry("temperature", "C"),
            Map.entry("mass", "g"),
            Map.entry("pressure", "Pa"),
            Map.entry("energy", "Wh"),
            Map.entry("area", "cm2"),
            Map.entry("density", "g/cm3"),
            Map.entry("age", "years"),
            Map.entry("current", "A"));

    /** What stands there in other words: that nobody knows it is said with the open questions. */
    private static final String NOT_KNOWN = "unknown";

    private static List<Path> tours() throws IOException {
        List<Path> tours = new ArrayList<>();
        for (Path tour : Scenario.files(Path.of("scenarios/tours"))) {
            // What another tour tells is read there.
            if (!new YAMLMapper().readTree(tour.toFile()).has("extends")) {
                tours.add(tour);
            }
        }
        return tours;
    }

    @ParameterizedTest
    @MethodSource("tours")
    void everyAnswerIsOnTheSheet(Path tour) throws IOException {
        Bench bench = new Bench(tour, Map.of(), Optional.empty(), Optional.empty(), Advisor::shipped);
        Words words = Words.in("en");
        Vocabulary vocabulary = bench.book().vocabulary();
        String sheet = TextForm.write(AdviceSheet.of(bench, bench.advise(), words, true))
                .replaceAll("\\s+", " ");
        List<String> missing = new ArrayList<>();
        JsonNode file = new YAMLMapper().readTree(tour.toFile());
        int told = 0;
        for (String group : ANSWERED) {
            for (Map.Entry<String, JsonNode> answer : file.path(group).properties()) {
                String path = group + "." + answer.getKey();
                String value = answer.getValue().asText();
                Optional<Question> question = vocabulary.questions().stream()
                        .filter(q -> q.path().equals(path))
                        .findFirst();
                if (question.isEmpty() || value.equals(NOT_KNOWN)) {
                    continue;
                }
                told++;
                if (said(question.get(), value, words, vocabulary).stream().noneMatch(sheet::contains)) {
                    missing.add(path + ": " + value);
                }
            }
        }
        assertEquals(List.of(), missing, tour + " of " + told);
        assertEquals(true, told > 9, tour + " tells " + told);
    }

    /** Every question of the form is told at once, in whatever group, so that a new one cannot slip. */
    @Test
    void everyFieldOfTheFormIsOnTheSheet() {
        Function<String, Advisor> advisors = Advisor::shipped;
        Vocabulary vocabulary = advisors.apply("us").base().book().vocabulary();
        Map<String, String> told = new TreeMap<>();
        vocabulary.questions().forEach(q -> told.put(q.path(), value(q, vocabulary)));
        told.put("task.shift", "8 h");
        Bench bench = Bench.ofText("all", "{title: all, code: us, on: 2026-11-30}", advisors)
                .with(told);
        Words words = Words.in("en");
        String sheet = TextForm.write(AdviceSheet.of(bench, bench.advise(), words, true))
                .replaceAll("\\s+", " ");
        assertEquals(
                List.of(),
                vocabulary.questions().stream()
                        .filter(q -> said(q, told.get(q.path()), words, vocabulary).stream()
                                .noneMatch(sheet::contains))
                        .map(Question::id)
                        .toList());
    }

    private static String value(Question question, Vocabulary vocabulary) {
        return switch (question.kind()) {
            case "choice" -> List.copyOf(vocabulary.choices(question).keySet()).get(0);
            case "flag" -> "true";
            case "day" -> question.id().equals("filter-opened") ? "2026-11-30" : "2026-12-31";
            case "text" -> question.id().equals("gas-test-time") ? "2026-11-30T08:00" : "no 7";
            case "count" -> "1";
            default -> "1 " + UNITS.get(question.kind());
        };
    }

    /** The ways in which a sheet may say an answer: by the question itself, or by the phrase of the page. */
    private static List<String> said(Question question, String value, Words words, Vocabulary vocabulary) {
        Speech speech = Speech.of(words, vocabulary);
        List<String> ways = new ArrayList<>(List.of(words.sayOr("ask." + question.id(), question.ask())));
        String key = "told." + question.id();
        if (words.all().containsKey(key + "." + value)) {
            ways.add(words.say(key + "." + value));
        } else if (question.kind().equals("day") && words.all().containsKey(key)) {
            ways.add(words.say(key, "").strip());
        } else if (words.all().containsKey(key)) {
            String name = vocabulary.choices(question).getOrDefault(value, value.replaceFirst("^PT(\\d+)H$", "$1 h"));
            ways.add(words.say(key, name));
        }
        if (UNITS.containsKey(question.kind()) && words.all().containsKey(key)) {
            // The sheet has the amount in the unit that the rules read.
            ways.add(words.say(key, "").strip());
        }
        return ways.stream().map(speech::spelt).toList();
    }
}
