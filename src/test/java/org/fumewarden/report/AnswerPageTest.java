package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fumewarden.Extent;
import org.fumewarden.advice.AccountLine;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.check.Scenario;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Settlement;
import org.fumewarden.report.answer.AdviceSheet;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.report.sheet.TextForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page of every tour: one page, plain words, nothing said twice. */
final class AnswerPageTest {
    private static final Path TOURS = Path.of("scenarios/tours");
    private static final Path PAGES = Path.of("src/test/resources/org/fumewarden/report/pages");
    private static final Map<Path, Advice> ADVICE = new ConcurrentHashMap<>();
    private static final Map<List<Object>, Sheet> SHEETS = new ConcurrentHashMap<>();
    /** "About 60", with room for the rows at or above a tenth of their limit and one line of when duties fall due. */
    private static final Map<String, Integer> LINES = Map.of("en", 62, "de", 64);
    /** A page full of agents in a language of long words. */
    private static final int LINES_FULL = 69;

    private static final int MANY = 7;
    private static final int LEAST_STORIES = 5;
    private static final Set<Settlement> BY_FIGURES = Set.of(
            Settlement.COMPARED, Settlement.BORROWED, Settlement.BENCHMARKED, Settlement.ESTIMATED, Settlement.JUDGED);
    private static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final Pattern DURATION = Pattern.compile("\\bPT?\\d+[YMDHW]");
    private static final Pattern RULE = Pattern.compile("\\b[A-Z-]+-(CAUTION|EXCLUSION|NEED|MEASURE)-\\d");

    static Stream<Path> tours() {
        try {
            return Files.list(TOURS).filter(p -> p.toString().endsWith(".yaml")).sorted();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Bench bench(Path tour) {
        return new Bench(tour, Map.of(), Optional.empty(), Optional.empty(), Advisor::shipped);
    }

    private static Sheet sheet(Path story, String language, boolean detail) {
        return SHEETS.computeIfAbsent(List.of(story, language, detail), s -> {
            Bench bench = bench(story);
            return AdviceSheet.of(bench, advice(story), Words.in(language), detail);
        });
    }

    private static Advice advice(Path story) {
        return ADVICE.computeIfAbsent(story, s -> bench(s).advise());
    }

    @ParameterizedTest
    @MethodSource("tours")
    void thePageIsAboutSixtyLinesOfNinetyCharacters(Path tour) {
        LINES.forEach((language, most) -> {
            List<String> lines =
                    TextForm.write(sheet(tour, language, false)).lines().toList();
            assertTrue(
                    lines.size() <= most,
                    tour + " " + language + " has " + lines.size() + " lines, at most " + most
                            + " fit the page: shorten a sentence of it in this language");
            lines.forEach(l -> assertTrue(l.length() <= TextForm.WIDTH, tour + ": " + l));
        });
    }

    /** The pages were read by a person; DEVELOPERS.md says how they are written anew. The hashes differ with every rule. */
    @ParameterizedTest
    @MethodSource("tours")
    void thePageIsAsItWasRead(Path tour) throws IOException {
        String page = TextForm.write(sheet(tour, "en", false));
        Path kept = PAGES.resolve(tour.getFileName().toString().replace(".yaml", ".txt"));
        assertEquals(withoutHashes(Files.readString(kept)), withoutHashes(page), tour.toString());
    }

    /** Ten minutes do not stand for a shift of eight hours: the page says so beside the level. */
    @Test
    void shortSamplesAreToldBesideTheLevel() {
        Path story = Path.of("scenarios/shared/SHARED-CAUTION-400-short-samples.yaml");
        String page = TextForm.write(sheet(story, "en", false)).replaceAll("\\s+", " ");
        assertTrue(page.contains("Sample again: manganese, respirable."), page);
    }

    private static String withoutHashes(String page) {
        return page.replace("\r\n", "\n").replaceAll("Rules and tables \\w+, advice \\w+", "Rules and tables, advice");
    }

    /** The stories with the most agents in the air beside the tours. */
    private static Stream<Path> full() throws IOException {
        List<Path> stories = new ArrayList<>();
        for (Path story : Scenario.files(Path.of("scenarios"))) {
            if (Files.readString(story).split("agent:").length > MANY) {
                stories.add(story);
            }
        }
        assertTrue(stories.size() >= LEAST_STORIES, "stories: " + stories.size());
        return Extent.sample(
                Stream.concat(tours(), stories.stream()).toList(),
                Path::toString,
                Extent.of(12, Extent.ALL, Extent.ALL))
                .stream();
    }

    /** Only what lies below a tenth of its limit may be counted, in whatever language. */
    @ParameterizedTest
    @MethodSource("full")
    void whatIsAtOrAboveATenthOfItsLimitStandsOnThePage(Path story) {
        Bench bench = bench(story);
        Advice advice = advice(story);
        for (String language : List.of("en", "de")) {
            Sheet sheet = sheet(story, language, false);
            assertTrue(TextForm.write(sheet).lines().count() <= LINES_FULL, story + " " + language);
            Vocabulary vocabulary = bench.book().vocabulary();
            Map<String, String> names = vocabulary.names();
            Speech speech = Speech.of(Words.in(language), vocabulary);
            String air = sheet.page().stream()
                    .filter(p -> p.key().equals("air"))
                    .map(p -> p.lines().toString().toLowerCase(Locale.ROOT))
                    .findFirst()
                    .orElse("");
            assertFalse(air.contains("at or above a tenth") || air.contains("ab einem zehntel"), air);
            for (AccountLine line : advice.accounts()) {
                if (BY_FIGURES.contains(line.account().kind())
                        && line.account()
                                .factor()
                                .filter(f -> f.compareTo(TENTH) >= 0)
                                .isPresent()) {
                    String name = line.account().agent();
                    String said =
                            speech.spelt(Words.in(language).names().getOrDefault(name, names.getOrDefault(name, name)));
                    assertTrue(air.contains(said.toLowerCase(Locale.ROOT)), story + " " + language + " " + said + air);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("tours")
    void whatMustNotBeCutIsThere(Path tour) {
        Sheet sheet = sheet(tour, "en", false);
        List<String> keys = sheet.page().stream().map(Part::key).toList();
        assertTrue(keys.containsAll(List.of("state", "wear", "issue")), tour + ": " + keys);
        assertTrue(keys.contains("do-now"), tour + ": " + keys);
        assertEquals(sheet.state().equals("incomplete"), keys.contains("open"), tour + ": " + keys);
        assertTrue(TextForm.write(sheet).replaceAll("\\s+", " ").endsWith(Advice.CLOSING + " "), tour.toString());
    }

    @ParameterizedTest
    @MethodSource("tours")
    void inGermanTheSheetSaysAtTheTopHowManySentencesAreNot(Path tour) {
        Sheet sheet = sheet(tour, "de", true);
        long foreign = Stream.concat(sheet.page().stream(), sheet.annex().stream())
                .flatMap(p -> p.lines().stream())
                .filter(l -> l instanceof Line.Says says && says.language().equals("en"))
                .count();
        assertEquals(foreign > 0, sheet.under().contains("englisch gedruckt: " + foreign + " "), sheet.under());
    }

    @Test
    void aTranslatedSentenceOfARuleIsPrintedInGerman() {
        String page = TextForm.write(sheet(TOURS.resolve("bearded-welder.yaml"), "de", false))
                .replaceAll("\\s+", " ");
        assertTrue(page.contains("Die Arbeit braucht ein weites Sichtfeld"), page);
        assertFalse(page.contains("wide field of view"), page);
    }

    @ParameterizedTest
    @MethodSource("tours")
    void noSentenceIsSaidTwice(Path tour) {
        Sheet sheet = sheet(tour, "en", true);
        Set<String> said = new HashSet<>();
        for (String sentence : sentences(sheet)) {
            assertTrue(said.add(sentence), tour + " says twice: " + sentence);
        }
    }

    @ParameterizedTest
    @MethodSource("tours")
    void noCodeOfADurationAndNoIdStandsInASentence(Path tour) {
        Bench bench = bench(tour);
        Map<String, Map<String, String>> catalogues = bench.book().vocabulary().catalogues();
        List<String> ids = Stream.of("agents", "equipment", "processes", "base-metals", "coatings")
                .flatMap(c -> catalogues.get(c).keySet().stream())
                .filter(id -> id.indexOf('-') > 0)
                .toList();
        assertTrue(ids.size() > 100);
        for (String sentence : sentences(sheet(tour, "en", true))) {
            assertFalse(DURATION.matcher(sentence).find(), tour + ": " + sentence);
            assertFalse(RULE.matcher(sentence).find(), tour + ": " + sentence);
            ids.forEach(id ->
                    assertFalse((" " + sentence + " ").contains(" " + id + " "), id + ", " + tour + ": " + sentence));
        }
    }

    /** Every sentence but those of the notes, which are references. */
    private static List<String> sentences(Sheet sheet) {
        List<String> sentences = new ArrayList<>();
        Stream.concat(sheet.page().stream(), sheet.annex().stream())
                .filter(p -> !p.key().equals("notes"))
                .flatMap(p -> p.lines().stream())
                .filter(Line.Says.class::isInstance)
                .map(l -> (Line.Says) l)
                .map(l -> l.lead() + " " + l.says())
                .forEach(sentences::add);
        return sentences;
    }
}
