package org.fumewarden.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fumewarden.Extent;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.check.Scenario;
import org.fumewarden.report.html.Words;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Rounds made by a seed are solvable, have one right answer each, and are spread over the topics. */
class RoundMakerTest {
    static void oneRightAnswer(Round round) {
        for (RoundItem item : round.items()) {
            String about = round.title() + ", " + item.kind() + ": " + item.ask();
            long right =
                    item.choices().stream().filter(c -> item.pick(c).right()).count();
            assertEquals(1, right, about);
            assertTrue(item.choices().size() >= 2 && item.choices().size() <= Distractors.COUNT, about);
            assertEquals(
                    item.choices().size(),
                    item.choices().stream()
                            .map(RoundItem.Choice::says)
                            .distinct()
                            .count(),
                    about);
            for (RoundItem.Choice choice : item.choices()) {
                Mark mark = item.pick(choice);
                assertNotEquals(Verdict.UNREAD, mark.verdict(), about + " does not read its own " + choice);
                if (!mark.right()) {
                    assertTrue(mark.mistake().isPresent(), about + " has no mistake behind " + choice);
                    assertTrue(!mark.instead().isEmpty(), about + " does not say what would be right");
                }
            }
        }
    }

    @Test
    void everyTopicHasSolvableRoundsOfFiveQuestions() {
        for (Room.Order order : Room.orders()) {
            assertEquals(Round.QUESTIONS, order.round().items().size(), order.toString());
            oneRightAnswer(order.round());
        }
    }

    @Test
    @Tag("ci")
    void theQuestionsOfATopicAreManyAndNotOfOneKind() {
        for (Topic topic : Topic.values()) {
            List<RoundItem> items = Room.orders().stream()
                    .filter(o -> o.topic() == topic)
                    .flatMap(o -> o.round().items().stream())
                    .toList();
            Map<String, Long> kinds =
                    items.stream().collect(Collectors.groupingBy(RoundItem::kind, TreeMap::new, Collectors.counting()));
            long different =
                    items.stream().map(i -> i.ask() + i.choices()).distinct().count();
            System.out.println(topic + ": " + items.size() + " questions, " + different + " different, " + kinds);
            assertTrue(different * 4 >= items.size(), topic + " has but " + different + " different questions");
            assertTrue(topic == Topic.ALARMS || kinds.size() >= 3, topic + " asks only " + kinds);
        }
    }

    @Test
    void theTasksAreSpreadOverTheTopics() {
        Map<String, Long> tasks = WordTable.rows("tasks").stream()
                .flatMap(r -> r.list("twists").stream()
                        .flatMap(t -> (t.optional("topic").map(List::of).orElseGet(() -> r.words("topics"))).stream()))
                .collect(Collectors.groupingBy(t -> t, Collectors.counting()));
        for (Topic topic : Topic.values()) {
            assertTrue(tasks.getOrDefault(topic.key(), 0L) >= 3, topic + " has " + tasks.get(topic.key()));
            long habits = WordTable.rows("practices").stream()
                    .filter(r -> r.words("topics").contains(topic.key()))
                    .count();
            assertTrue(
                    habits >= 3 || topic == Topic.LEAD || topic == Topic.STAINLESS,
                    topic + " has " + habits + " habits");
        }
    }

    @Test
    void theSameSeedMakesTheSameRoundAndAnotherMakesAnother() {
        Round one = Room.maker("en").made("gb", Room.DAY, Topic.PARTICLE, 1, 4);
        assertEquals(words(one), words(Room.maker("en").made("gb", Room.DAY, Topic.PARTICLE, 1, 4)));
        assertNotEquals(words(one), words(Room.maker("en").made("gb", Room.DAY, Topic.PARTICLE, 1, 5)));
    }

    private static String words(Round round) {
        return round.title()
                + round.facts()
                + round.items().stream().map(i -> i.ask() + i.choices()).toList();
    }

    @Test
    void theRoomSpeaksGerman() {
        Round round = Room.maker("de").made("de", Room.DAY, Topic.FIT, 1, 2);
        assertTrue(
                round.items().stream().anyMatch(i -> i.ask().equals("Welches Atemschutzgerät darf benutzt werden?")));
        assertTrue(
                round.facts().stream().anyMatch(f -> f.contains("20,9 %")),
                round.facts().toString());
        oneRightAnswer(round);
    }

    @Test
    void everyDrillFileMakesARound() throws IOException {
        List<Path> files = Extent.sample(
                Scenario.files(Path.of("scenarios/drills")), Path::toString, Extent.of(3, Extent.ALL, Extent.ALL));
        for (Path file : files) {
            Round round = Room.maker("en").of(file, RoundMakerTest::bench, 1);
            assertEquals(Round.QUESTIONS, round.items().size());
            oneRightAnswer(round);
        }
    }

    private static Bench bench(Path file) {
        return new Bench(file, Map.of(), Optional.empty(), Optional.empty(), Advisor::shipped);
    }

    @Test
    void theCounterExampleOfARuleAsksForItsChange() {
        Path file = Path.of("scenarios/gb/GB-EXCLUSION-020-wear-61-below.yaml");
        Round round = Room.maker("en").of(file, RoundMakerTest::bench, 1);
        RoundItem item = round.items().get(round.items().size() - 1);
        assertEquals("counter-example", item.kind());
        assertTrue(
                item.rightChoice().says().contains("59 min"), item.rightChoice().says());
        oneRightAnswer(round);
    }

    /** Counter-examples that cannot be asked change the day, a list or a level in a way that no line of facts shows. */
    @Test
    @Tag("long")
    void mostCounterExamplesOfTheRuleBaseCanBeAsked() {
        List<String> silent = new ArrayList<>();
        int pairs = 0;
        for (Path file : Scenario.files(Path.of("scenarios/gb"))) {
            Optional<CounterExample.Pair> pair = CounterExample.Pair.of(file);
            if (pair.isPresent() && !pair.get().changes().containsKey("on")) {
                pairs++;
                Told told = Told.of(bench(pair.get().base()), Words.in("en"));
                Optional<RoundItem> item = CounterExample.about(told, pair.get(), new Random(1));
                if (item.isEmpty()) {
                    silent.add(file.getFileName().toString());
                } else {
                    long right = item.get().choices().stream()
                            .filter(c -> item.get().pick(c).right())
                            .count();
                    assertEquals(1, right, file.toString());
                }
            }
        }
        System.out.println(pairs + " counter-examples, " + silent.size() + " without a question: " + silent);
        assertTrue(pairs > 30 && silent.size() * 3 < pairs, silent.toString());
    }
}
