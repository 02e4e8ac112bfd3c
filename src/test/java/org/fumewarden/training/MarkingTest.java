package org.fumewarden.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers are marked by what they mean, and each wrong one names the mistake behind it. */
class MarkingTest {
    private static final Path BRACKETS = Path.of("scenarios/tours/stainless-brackets.yaml");
    private static final Pattern RULE = Pattern.compile("rule \"([A-Z-]+-\\d+) [^\"]*\"(.*?)\\nend", Pattern.DOTALL);

    private static String mistake(Item item, String answer) {
        Mark mark = item.mark(answer);
        assertEquals(Verdict.WRONG, mark.verdict(), answer);
        return mark.mistake().orElseThrow().id();
    }

    /** HSG53 factors (from memory): FFP3 and TH2 20, TH3 40; the programme for welders asks 20 of this work. */
    @ParameterizedTest
    @CsvSource({
        "wearer.facial-hair, true, full-mask-p3, forgets-the-beard",
        "wearer.fit-tested, false, ffp3, forgets-the-fit-test",
        "wearer.spectacles, true, full-mask-p3, forgets-the-spectacles",
        "wearer.medically-cleared, powered-only, ffp3, forgets-the-medical",
        "task.wear-time, PT61M, ffp3, tight-mask-too-long",
        "task.extraction, none, ffp2, factor-too-low",
        "atmosphere.eye-irritation, true, ffp3, forgets-the-eyes",
        "atmosphere.explosive, true, th3, starts-what-must-not-start"
    })
    void aClosedClassNamesTheMistakeBehindIt(String path, String value, String answer, String mistake) {
        Told told = Room.told(Room.BENCH, Map.of(path, value));
        assertEquals(mistake, mistake(Room.item("class", told), answer));
    }

    /** Carbon monoxide 40 / 20 = 2 (EH40/2005); no filter of EN 14387 holds it. */
    @Test
    void aFilterForWhatNoFilterHoldsIsNamed() {
        Told told = Room.told(Path.of("scenarios/drills/06-carbon-monoxide.yaml"), Map.of());
        assertEquals("filter-for-what-no-filter-holds", mistake(Room.item("class", told), "TH3"));
        assertEquals("filter-on-supplied-air", mistake(Room.filter(told, "airline-hood-4"), "P3"));
    }

    @Test
    void aWrongClassComesWithSentenceClauseAndTheChangeThatWouldHaveMadeItRight() {
        Mark mark = Room.item("class", Room.told(Room.BENCH, Map.of("wearer.facial-hair", "true")))
                .mark("full mask P3");
        assertTrue(mark.mistake().orElseThrow().says().contains("beard"), mark.toString());
        assertTrue(mark.because().contains("Facial hair"), mark.because());
        assertTrue(mark.clause().contains("hsg53"), mark.clause());
        assertTrue(mark.instead().contains("shave"), mark.instead());
    }

    /** Average 0.04 / 0.2 = 0.2 with EH40/2005 manganese; the peak of carbon monoxide 250 / 100 = 2.5 decides (EH40 Table 1). */
    @Test
    void theAverageForThePeakIsNamed() {
        Told told = Room.told(
                Room.BENCH,
                Map.of("exposures.carbon-monoxide.twa", "24 ppm", "exposures.carbon-monoxide.stel", "500 ppm"));
        assertEquals("average-for-peak", mistake(Room.item("factor", told), "1.2"));
    }

    @Test
    void theFloorThatAppliesInAnyCaseIsNamed() {
        Item factor = Room.item("factor", Room.told(BRACKETS, Map.of()));
        assertTrue(factor.mark("APF 20").right());
        assertTrue(factor.mark("20,0").right());
        assertEquals("forgets-the-floor", mistake(factor, "2.4"));
        assertEquals("more-than-needed", mistake(factor, "40"));
    }

    @Test
    void whenTheWorkMustNotStartNoneIsRight() {
        Told told = Room.told(Room.BENCH, Map.of("atmosphere.explosive", "true"));
        assertTrue(Room.item("factor", told).mark("0").right());
        assertTrue(Room.item("class", told).mark("none").right());
        assertEquals("gives-up-too-early", mistake(Room.item("class", Room.told(Room.BENCH, Map.of())), "none"));
    }

    @Test
    void wordsAndClassesAreRightOnlyWhenEveryMeaningIsSuitable() {
        Item item = Room.item("class", Room.told(BRACKETS, Map.of()));
        assertEquals(Verdict.UNREAD, item.mark("powered hood").verdict(), "TH1 among them is not enough");
        assertTrue(item.mark("powered hood TH2").right());
        assertTrue(
                Room.item("class", Room.told(Room.BENCH, Map.of()))
                        .mark("powered hood")
                        .right(),
                "each of them is enough");
        assertEquals(Verdict.UNREAD, item.mark("banana mask").verdict());
    }

    @Test
    void dutiesAreRightByMeaningAlone() {
        Item item = Room.item("duty", Room.told(BRACKETS, Map.of()));
        assertTrue(item.mark("train the wearer").right());
        assertTrue(item.mark("health surveillance").right());
        for (String answer : List.of("banana test", "go home after work", "no training", "blow the filter out")) {
            assertFalse(item.mark(answer).right(), answer);
        }
        assertEquals("another-duty", mistake(item, "blood lead"));
    }

    @Test
    void randomWordsScoreNothing() {
        Random random = new Random(20260302);
        List<Item> items = Stream.of(Topic.values())
                .flatMap(t -> Room.maker("en").made("gb", Room.DAY, t, 1, 7).items().stream())
                .toList();
        for (int i = 0; i < 20_000; i++) {
            StringBuilder words = new StringBuilder();
            for (int word = 0; word <= random.nextInt(3); word++) {
                random.ints(3 + random.nextInt(7), 'a', 'z' + 1).forEach(c -> words.append((char) c));
                words.append(' ');
            }
            Item item = items.get(random.nextInt(items.size()));
            assertFalse(item.mark(words.toString()).right(), item.kind() + ": " + words);
        }
    }

    @Test
    void eachRightAnswerInTenSpellingsScores() {
        List<UnaryOperator<String>> spellings = List.of(
                s -> s,
                s -> s.toUpperCase(Locale.ROOT),
                s -> s.toLowerCase(Locale.ROOT),
                s -> "  " + s + " ",
                s -> s + ".",
                s -> s.replace(" ", "  "),
                s -> s.replace(" ", "-"),
                s -> s.replace("-", " "),
                s -> "\"" + s + "\"",
                s -> "(" + s + ")");
        for (Topic topic : Topic.values()) {
            for (Item item : Room.maker("en").made("gb", Room.DAY, topic, 2, 3).items()) {
                Item.Choice right = item.rightChoice();
                boolean byMark = Set.of("filter", "factor").contains(item.kind())
                        || right.id().equals("none");
                for (UnaryOperator<String> spelling : spellings) {
                    String given = spelling.apply(byMark ? right.id() : right.says());
                    assertTrue(item.mark(given).right(), item.kind() + ": " + given);
                }
                assertTrue(item.mark(right.id()).right());
            }
        }
    }

    @Test
    void everyRuleThatClosesAClassHasItsMistake() throws IOException {
        Set<String> closing = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".drl")).toList()) {
                Matcher rule = RULE.matcher(Files.readString(file));
                while (rule.find()) {
                    if (rule.group(2).contains("new Bar(") || rule.group(2).contains("new Doubt(")) {
                        closing.add(rule.group(1));
                    }
                }
            }
        }
        List<String> explained = WordTable.rows("mistakes").stream()
                .flatMap(r -> r.words("rules").stream())
                .toList();
        Set<String> unexplained = new TreeSet<>(closing);
        unexplained.removeAll(explained);
        assertEquals(Set.of(), unexplained);
        Set<String> gone = new HashSet<>(explained);
        gone.removeAll(closing);
        assertEquals(Set.of(), gone, "rules that are no more");
    }
}
