package org.fumewarden.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.fumewarden.Extent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers are marked by what they mean, and each wrong one names the mistake behind it. */
class MarkingTest {
    private static final Path BRACKETS = Path.of("scenarios/tours/stainless-brackets.yaml");

    private static String mistake(RoundItem item, String answer) {
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
        RoundItem factor = Room.item("factor", Room.told(BRACKETS, Map.of()));
        assertTrue(factor.mark("APF 20").right());
        assertTrue(factor.mark("20,0").right());
        assertEquals("number-too-low-for-the-sum", mistake(factor, "2.4"), "carcinogens alone need 9.6");
        assertEquals("forgets-the-floor", mistake(factor, "10"));
        assertEquals("not-the-least", mistake(factor, "40"));
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
        RoundItem item = Room.item("class", Room.told(BRACKETS, Map.of()));
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
        RoundItem item = Room.item("duty", Room.told(BRACKETS, Map.of()));
        assertTrue(item.mark("train the wearer").right());
        assertTrue(item.mark("health surveillance").right());
        for (String answer : List.of("banana test", "go home after work", "no training", "blow the filter out")) {
            assertFalse(item.mark(answer).right(), answer);
        }
        assertEquals("another-duty", mistake(item, "blood lead"));
    }

    @Test
    void randomWordsScoreNothing() {
        Random random = new Random(Extent.SEED);
        List<RoundItem> items =
                Room.orders().stream().flatMap(o -> o.round().items().stream()).toList();
        for (int i = 0; i < Extent.of(1_500, 20_000, 200_000); i++) {
            StringBuilder words = new StringBuilder();
            for (int word = 0; word <= random.nextInt(3); word++) {
                random.ints(3 + random.nextInt(7), 'a', 'z' + 1).forEach(c -> words.append((char) c));
                words.append(' ');
            }
            RoundItem item = items.get(random.nextInt(items.size()));
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
        for (Room.Order order : Room.orders()) {
            for (RoundItem item : order.round().items()) {
                RoundItem.Choice right = item.rightChoice();
                boolean byMark = item.kind().equals("filter") && !right.id().equals("none");
                for (UnaryOperator<String> spelling : spellings) {
                    String given = spelling.apply(byMark ? right.id() : right.says());
                    assertTrue(item.mark(given).right(), order + " " + item.kind() + ": " + given);
                }
                assertTrue(item.mark(right.id()).right());
            }
        }
    }

    /** What cannot be read says what kind of answer is wanted: a number, a mark, a class, a duty or a time. */
    @Test
    void whatIsNotUnderstoodSaysWhatIsWanted() {
        for (Room.Order order : Room.orders()) {
            for (RoundItem item : order.round().items()) {
                Mark mark = item.mark("banana");
                assertEquals(Verdict.UNREAD, mark.verdict(), item.kind());
                assertTrue(mark.says().matches(".*(Answer with|[Aa]ntworten).*"), item.kind() + ": " + mark.says());
            }
        }
    }

    /** Air, factor, gas and particle, seal, time of wear: of several mistakes the first is told. */
    @ParameterizedTest
    @CsvSource({
        "atmosphere.explosive, true, ffp1, starts-what-must-not-start",
        "atmosphere.immediately-dangerous, true, ffp1, filter-in-deadly-air",
        "task.extraction, none, ffp2, factor-too-low",
        "wearer.facial-hair, true, ffp3, forgets-the-beard",
        "wearer.facial-hair, false, ffp3, tight-mask-too-long"
    })
    void ofSeveralMistakesTheFirstOfTheTableIsTold(String path, String value, String answer, String mistake) {
        Map<String, String> all = new HashMap<>(Map.of("wearer.facial-hair", "true", "task.wear-time", "PT3H"));
        all.put(path, value);
        assertEquals(mistake, mistake(Room.item("class", Room.told(Room.BENCH, all)), answer));
    }

    /** Toluene needs A (EN 14387): the letter counts before the beard, and after the factor. */
    @Test
    void theGasTypeCountsBeforeTheSeal() {
        Path solvent = Path.of("scenarios/tours/shift-with-solvent.yaml");
        RoundItem bearded = Room.item("class", Room.told(solvent, Map.of("wearer.facial-hair", "true")));
        assertEquals("wrong-gas-type", mistake(bearded, "full mask E1-P3"));
        assertEquals("particle-filter-for-gas", mistake(bearded, "TH3 SL P"));
        assertEquals("forgets-the-beard", mistake(bearded, "full mask A1-P3"));
        assertTrue(bearded.mark("TH3 A1 P").right());
        Mark open = bearded.mark("TH3");
        assertTrue(open.right() && open.says().contains("TH3 A1 P"), open.toString());
    }

    @Test
    void theAirCountsBeforeAMarkOfOtherRules() {
        Told deadly = Room.told(Room.BENCH, Map.of("atmosphere.immediately-dangerous", "true"));
        assertEquals("filter-in-deadly-air", mistake(Room.item("class", deadly), "N95"));
        Told closed = Room.told(Room.BENCH, Map.of("atmosphere.explosive", "true"));
        assertEquals("starts-what-must-not-start", mistake(Room.item("class", closed), "N95"));
    }

    /** 29 CFR 1910.134(d)(2)(iii), oxygen below 19.5 %: nobody goes in; an airline with own air for escape where entry cannot be avoided. */
    @Test
    void stayingOutIsRightWhereTheRulesSayStayOut() {
        RoundItem item = new Room.Order("us", "en", Topic.OXYGEN, 3, 2)
                .round().items().stream()
                        .filter(i -> i.kind().equals("class"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(item.ask().contains("stay out"), item.ask());
        Mark mark = item.mark("none");
        assertTrue(mark.right() && mark.says().contains("cannot be avoided"), mark.toString());
        assertTrue(item.choices().stream().noneMatch(c -> c.id().equals("none")));
    }

    /** Assigned factor 5 of 29 CFR 1910.134 Table 1 belongs to quarter masks: it is no answer where supplied air is required. */
    @Test
    void noFactorOfAFilterIsAskedForWhereTheAirIsSupplied() {
        for (long seed = 1; seed <= 3; seed++) {
            for (RoundItem item : new Room.Order("us", "en", Topic.CONFINED_SPACE, 1, seed)
                    .round()
                    .items()) {
                assertTrue(
                        !item.kind().equals("factor")
                                || !item.rightChoice().id().equals("5"),
                        item.ask());
            }
        }
    }

    @Test
    void aMarkOfOtherRulesIsNoClassHere() {
        RoundItem item = Room.item("class", Room.told(Room.BENCH, Map.of()));
        assertEquals("class-of-other-rules", mistake(item, "N95"));
        assertTrue(item.mark("FFP3 NR D").right());
    }

    /** DGUV Regel 112-190 (2021) 8.2 Table 21 gives hoods and apparatus wear times as well; the lungs draw through neither. */
    @Test
    void onlyAMaskThatTheLungsDrawThroughIsCalledSo() {
        for (Room.Order order : List.of(
                new Room.Order("de", "en", Topic.FIT, 2, 1), new Room.Order("de", "en", Topic.PARTICLE, 2, 1))) {
            for (RoundItem item : order.round().items()) {
                for (String device : List.of("SCBA positive pressure", "TM3", "airline suit")) {
                    String said = item.mark(device).mistake().map(Mistake::says).orElse("");
                    assertFalse(said.contains("lungs"), device + ": " + said);
                }
            }
        }
    }

    /** A factor below what was measured is told as such, whatever least factor applies besides: 0.8 / 0.05 = 16 (EH40, respirable manganese). */
    @Test
    void aFactorBelowTheMeasurementIsNoCountingOnTheMeasurement() {
        RoundItem item = Room.item(
                "factor",
                Room.told(
                        Room.BENCH,
                        Map.of("exposures.manganese-respirable.twa", "0.8 mg/m3", "task.extraction", "none")));
        assertTrue(item.mark("20").right());
        assertEquals("number-too-low", mistake(item, "10"));
        assertTrue(item.mark("10").because().contains("16"), item.mark("10").because());
        assertEquals("forgets-the-floor", mistake(item, "18"));
        assertEquals("not-the-least", mistake(item, "40"));
        assertEquals("gives-up-too-early", mistake(item, "do not start"));
    }
}
