package org.fumewarden.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Term;
import org.fumewarden.report.ExposureSheet;
import org.fumewarden.report.answer.AdviceSheet;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.task.Task;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No English sentence is left on a German paper. Common practice of plain language, no source. */
final class GermanPapersTest {
    private static final Words GERMAN = Words.in("de");
    /** Parts that cite the law of a country in its own words. */
    private static final Set<String> CITING = Set.of("notes", "compare");

    static List<Path> tours() {
        return Written.tours(2);
    }

    @ParameterizedTest
    @MethodSource("tours")
    void theSheetAndItsAnnexAreGerman(Path tour) {
        for (String code : List.of("gb", "de", "us", "au", "nz", "fi", "it", "se")) {
            Bench bench = bench(tour, code);
            Advice advice = bench.advise();
            var sheet = AdviceSheet.of(bench, advice, GERMAN, true);
            List<Sentence> said = new ArrayList<>();
            Stream.concat(sheet.page().stream(), sheet.annex().stream())
                    .filter(p -> !CITING.contains(p.key()))
                    .forEach(p -> told(p, code + " " + tour.getFileName(), said));
            assertEquals("", LanguageTest.faults(own(said, bench)), () -> "of " + said.size());
        }
    }

    @ParameterizedTest
    @MethodSource("tours")
    void theExposureSheetIsGerman(Path tour) {
        Bench bench = bench(tour, "gb");
        Advisor advisor = bench.advisor("gb");
        Task task = bench.task("gb", Map.of());
        CodeBook book = advisor.base().book();
        String text = new ExposureSheet(
                        task,
                        advisor.advise(task),
                        advisor.assess(task),
                        new ExposureTables(advisor.base().rowsOn(task.on())),
                        book.vocabulary())
                .text(true, Speech.of(GERMAN, book.vocabulary()));
        List<Sentence> said = text.lines()
                .skip(2)
                .filter(l -> !l.contains("|"))
                .map(l -> new Sentence(tour.getFileName().toString(), "german", l))
                .toList();
        assertEquals("", LanguageTest.faults(said));
    }

    /** Whatever a duty orders, a card tells or a record asks has its German; a changed English sentence loses it and fails here. */
    @Test
    void everyDutyCardAndFieldHasItsGerman() {
        Speech speech = Speech.of(GERMAN, Map.of());
        List<String> missing = new ArrayList<>();
        int seen = 0;
        for (String code : List.of("gb", "de", "us", "au", "nz", "fi")) {
            RuleBase base = RuleBase.shipped(code);
            DutyBook book = DutyBook.of(base.book(), java.time.LocalDate.of(2026, 3, 2));
            List<String> said = new ArrayList<>();
            book.duties().forEach(d -> {
                said.add(d.what());
                said.addAll(d.fields());
            });
            Stream.of("before-use-powered", "before-use-airline", "alarm-action", "never", "circumstances", "unless")
                    .flatMap(c -> book.catalogue(c).stream())
                    .map(Term::name)
                    .forEach(said::add);
            seen += said.size();
            said.stream().filter(s -> speech.told(s).equals(s)).forEach(s -> missing.add(code + ": " + s));
        }
        assertTrue(seen > 500, "few sentences: " + seen);
        assertEquals(List.of(), missing.stream().distinct().toList());
    }

    /** A unit that failed, a class in hand and an untested container bring words that no tour brings. */
    @Test
    void aFailedUnitAClassInHandAndAContainerAreToldInGerman() {
        Map<String, String> changes = Map.of(
                "kit.class-in-hand", "th2",
                "kit.measured-flow", "150 L/min",
                "kit.minimum-design-flow", "170 L/min",
                "kit.unit-withdrawn", "true",
                "kit.spark-arrestor", "false",
                "wearer.headgear", "hearing-protectors",
                "task.place", "confined-space",
                "task.vessel", "inside",
                "task.vessel-held", "flammable");
        for (String code : List.of("gb", "de")) {
            Bench bench = new Bench(
                    Path.of("scenarios/tours/stainless-brackets.yaml"),
                    changes,
                    Optional.of(code),
                    Optional.empty(),
                    Advisor::shipped);
            List<Sentence> said = new ArrayList<>();
            AdviceSheet.of(bench, bench.advise(), GERMAN, true).page().forEach(p -> told(p, code, said));
            String all = said.stream().map(Sentence::text).collect(Collectors.joining("\n"));
            assertTrue(all.contains(", TH2 (EN 12941)"), all);
            assertEquals("", LanguageTest.faults(own(said, bench)));
        }
    }

    @Test
    void everyQuestionAndChoiceHasItsGerman() {
        List<String> missing = new ArrayList<>();
        for (String code : List.of("gb", "de", "us", "au", "nz", "fi")) {
            Vocabulary vocabulary = RuleBase.shipped(code).book().vocabulary();
            for (Question question : vocabulary.questions()) {
                if (GERMAN.sayOr("ask." + question.id(), "").isEmpty()) {
                    missing.add("ask." + question.id());
                }
                vocabulary.choices(question).keySet().stream()
                        .filter(c -> !Set.of("state", "consumable").contains(question.id()))
                        .filter(c -> GERMAN.sayOr("choice." + question.id() + "." + c, "")
                                .isEmpty())
                        .filter(c -> GERMAN.sayOr("device." + c, "").isEmpty())
                        .forEach(c -> missing.add("choice." + question.id() + "." + c));
            }
        }
        assertEquals(List.of(), missing.stream().distinct().toList());
    }

    @Test
    void aSentenceFilledByTheProgramIsSaidInGermanWithItsFigures() {
        Speech speech = Speech.of(GERMAN, Map.of());
        assertEquals(
                "Bei 3 Proben ist die Streuung wenig bekannt: angenommen wird eine geometrische Standardabweichung von 2,7"
                        + " (Buringh und Lanting 1991). 6 oder mehr nehmen.",
                speech.told(
                        "With 3 samples the spread is poorly known: a geometric standard deviation of 2.7 is assumed"
                                + " (Buringh and Lanting 1991). Take 6 or more."));
        assertEquals("What nobody translated stays.", speech.told("What nobody translated stays."));
    }

    private static Bench bench(Path tour, String code) {
        return new Bench(tour, Map.of(), Optional.of(code), Optional.empty(), Advisor::shipped);
    }

    /** What a person wrote in the task stays in the language of that person. */
    private static List<Sentence> own(List<Sentence> said, Bench bench) {
        List<String> written = new ArrayList<>();
        bench.tree(Map.of()).plain().toString();
        texts(bench.tree(Map.of()).plain(), written);
        return said.stream()
                .map(s -> {
                    String text = s.text();
                    for (String own : written) {
                        text = text.replace(own, "");
                    }
                    return new Sentence(s.where(), s.kind(), text);
                })
                .toList();
    }

    private static void texts(Object node, List<String> into) {
        if (node instanceof Map<?, ?> map) {
            map.values().forEach(v -> texts(v, into));
        } else if (node instanceof List<?> list) {
            list.forEach(v -> texts(v, into));
        } else if (node instanceof String text && text.indexOf(' ') > 0) {
            into.add(text);
        }
    }

    private static void told(Part part, String where, List<Sentence> into) {
        into.add(new Sentence(where, "german", part.title()));
        for (Line line : part.lines()) {
            if (line instanceof Line.Says says) {
                into.add(new Sentence(where, "german", says.lead() + " " + says.says()));
                assertEquals("", says.language(), says.says());
            } else if (line instanceof Line.State state) {
                into.add(new Sentence(where, "german", state.word() + " " + state.says()));
            } else if (line instanceof Line.Head head) {
                into.add(new Sentence(where, "german", head.text()));
            } else if (line instanceof Line.Drawing drawing) {
                into.add(new Sentence(where, "german", drawing.words()));
            } else if (line instanceof Line.Table table) {
                table.heads().forEach(h -> into.add(new Sentence(where, "german", h)));
                table.rows().forEach(r -> r.forEach(c -> into.add(new Sentence(where, "german", c))));
            }
        }
    }
}
