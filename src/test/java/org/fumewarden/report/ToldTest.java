package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.check.Scenario;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.answer.AdviceSheet;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.TextForm;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever the file tells stands on the page or in its annex, so that a sheet cannot hang beside another job unseen. */
final class ToldTest {
    private static final Map<String, Advisor> ADVISORS = new HashMap<>();
    private static final Set<String> ANSWERED = Set.of("task", "atmosphere", "wearer", "kit", "estimate");

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
        Bench bench = new Bench(
                tour,
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                id -> ADVISORS.computeIfAbsent(id, i -> new Advisor(RuleBase.shipped(i))));
        Words words = Words.in("en");
        Vocabulary vocabulary = bench.advisor(bench.code()).base().book().vocabulary();
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

    /** The ways in which a sheet may say an answer: by the question itself, or by the phrase of the page. */
    private static List<String> said(Question question, String value, Words words, Vocabulary vocabulary) {
        Speech speech = Speech.of(words, vocabulary);
        List<String> ways = new ArrayList<>(List.of(question.ask()));
        String key = "told." + question.id();
        if (words.all().containsKey(key + "." + value)) {
            ways.add(words.say(key + "." + value));
        } else if (words.all().containsKey(key)) {
            String name = vocabulary.choices(question).getOrDefault(value, value.replaceFirst("^PT(\\d+)H$", "$1 h"));
            ways.add(words.say(key, name));
        }
        return ways.stream().map(speech::spelt).toList();
    }
}
