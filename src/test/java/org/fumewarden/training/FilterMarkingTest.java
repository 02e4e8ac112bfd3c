package org.fumewarden.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Marking table for filters. EN 14387: A organic vapours above 65 C, brown; B inorganic gases, grey; E acid gases, yellow; K ammonia, green;
 * classes 1 to 3. EN 143: P1 to P3. EN 12941: TH1 to TH3 with their gas part and P. 42 CFR 84.170: N, R and P at 95, 99, 100; HE and
 * PAPR100 for powered units, 84.175; cartridges by name, 84.190. Letters, colours and classes from memory, as far as the tables do not hold them.
 */
class FilterMarkingTest {
    private static final Told SOLVENT = Room.told(Path.of("scenarios/tours/shift-with-solvent.yaml"), Map.of());
    private static final Told BENCH = Room.told(Room.BENCH, Map.of());
    private static final Told LEAD =
            Room.told(Path.of("scenarios/tours/us-painted-bridge-lead-assessed.yaml"), Map.of());

    @ParameterizedTest
    @CsvSource({
        "TH3 A1 P, RIGHT",
        "th3 a1 p, RIGHT",
        "A1 TH3 P, RIGHT",
        "P A1 TH3, RIGHT",
        "TH3A1P, RIGHT",
        "TH3-A1-P, RIGHT",
        "th3/a1/p, RIGHT",
        "TH 3 A 1 P, RIGHT",
        "TH3 A1 P R SL, RIGHT",
        "filter TH3 A1 P, RIGHT",
        "TH3 A2 P, RIGHT",
        "TH3 P, WRONG",
        "TH3 B1 P, WRONG",
        "TH3 A1, WRONG",
        "TM3 A1 P, WRONG",
        "TH2 A1 P, WRONG",
        "P3, WRONG",
        "none, WRONG",
        "TH3 A1B1E1K1 P, RIGHT",
        "TH3 ABEK1 P, RIGHT",
        "TH3 SL P, WRONG",
        "P100, WRONG",
        "N95, WRONG",
        "OV/P100, WRONG",
        "ammonia, WRONG",
        "brown and white TH3 P, UNREAD",
        "A1 P, UNREAD",
        "TH3 brown P, UNREAD",
        "banana, UNREAD",
        "'', UNREAD"
    })
    void aPoweredHoodAgainstTolueneAndFume(String answer, Verdict verdict) {
        assertEquals(verdict, Room.filter(SOLVENT, "th3").mark(answer).verdict(), answer);
    }

    @Test
    void aMissingGasPartSaysWhichGasGetsThrough() {
        Mark mark = Room.filter(SOLVENT, "th3").mark("TH3 P");
        assertEquals("particle-filter-for-gas", mark.mistake().orElseThrow().id());
        assertTrue(mark.says().contains("toluene"), mark.says());
        assertEquals("TH3 A1 P", mark.instead());
    }

    @ParameterizedTest
    @CsvSource({
        "TH3 E1 P, wrong-gas-type, Type E is for sulphur dioxide",
        "TH3 K1 P, wrong-gas-type, Type K is for ammonia",
        "TH3 B1 P, wrong-gas-type, Type B is for inorganic gases",
        "TH3 SL P, particle-filter-for-gas, It takes type A (organic vapours",
        "P3, particle-filter-for-gas, It takes type A (organic vapours",
        "TH3 B1, wrong-gas-type, This gets through: toluene",
        "TH3 A1, no-particle-part, ''",
        "P100, class-of-other-rules, ''",
        "A1P3, filter-of-another-device, ''"
    })
    void theMistakeBehindAWrongFilterIsTheFirstThatCounts(String answer, String mistake, String says) {
        Mark mark = Room.filter(SOLVENT, "th3").mark(answer);
        assertEquals(mistake, mark.mistake().orElseThrow().id(), answer);
        assertTrue(mark.says().contains(says), mark.says());
    }

    @Test
    void whatProtectsIsRightAndMoreThanNeededIsSaidBeside() {
        assertTrue(Room.filter(SOLVENT, "th3").mark("TH3 A1B1E1K1 P").says().contains("simpler filter"));
        assertTrue(Room.filter(SOLVENT, "th3").mark("TH3 A2 P").says().contains("simpler filter"));
        assertEquals("", Room.filter(SOLVENT, "th3").mark("TH3 A1 P").says());
    }

    @ParameterizedTest
    @CsvSource({
        "half-mask-p3, A1-P3, RIGHT",
        "half-mask-p3, p3 a1, RIGHT",
        "half-mask-p3, ABEK1-P3, RIGHT",
        "half-mask-p3, A1B1E1K1-P3, RIGHT",
        "half-mask-p3, ABEK1 P3, RIGHT",
        "half-mask-p3, A2 P3, RIGHT",
        "half-mask-p3, E1-P3, WRONG",
        "half-mask-p3, P100, WRONG",
        "half-mask-p3, A1-P2, WRONG",
        "half-mask-p3, P3, WRONG",
        "half-mask-p3, A1, WRONG"
    })
    void aHalfMaskAgainstTolueneAndFume(String device, String answer, Verdict verdict) {
        assertEquals(verdict, Room.filter(SOLVENT, device).mark(answer).verdict(), answer);
    }

    @ParameterizedTest
    @CsvSource({
        "ffp3, FFP3, RIGHT",
        "ffp3, ffp 3 nr, RIGHT",
        "ffp3, FFP2, WRONG",
        "full-mask-p3, P3, RIGHT",
        "full-mask-p3, p 3, RIGHT",
        "full-mask-p3, P2, WRONG",
        "airline-hood-4, none, RIGHT",
        "airline-hood-4, no filter, RIGHT",
        "airline-hood-4, P3, WRONG"
    })
    void devicesAgainstFumeAlone(String device, String answer, Verdict verdict) {
        assertEquals(verdict, Room.filter(BENCH, device).mark(answer).verdict(), answer);
    }

    @ParameterizedTest
    @CsvSource({
        "purifying-half-mask, P100, RIGHT",
        "purifying-half-mask, p 100, RIGHT",
        "purifying-half-mask, n100, RIGHT",
        "purifying-half-mask, R100, RIGHT",
        "purifying-half-mask, N95, WRONG",
        "purifying-half-mask, P95, WRONG",
        "purifying-half-mask, HE, WRONG",
        "papr-hood, HE, RIGHT",
        "papr-hood, hepa, RIGHT",
        "papr-hood, PAPR100-P, RIGHT",
        "papr-hood, papr100 n, RIGHT",
        "papr-hood, P100, WRONG",
        "papr-hood, organic vapor and HE, RIGHT"
    })
    void classesOf42Cfr84(String device, String answer, Verdict verdict) {
        assertEquals(verdict, Room.filter(LEAD, device).mark(answer).verdict(), answer);
    }

    @Test
    void cartridgesAreReadByName() {
        FilterParts parts =
                FilterParts.read("Organic Vapor cartridge with P100", "niosh").orElseThrow();
        assertEquals(Map.of("organic vapour", 0), parts.gases());
        assertEquals(
                parts, FilterParts.read("p100 and OV", "niosh").orElseThrow(), "order and short forms do not matter");
        assertEquals(
                Map.of("sulfur dioxide", 0, "ammonia", 0),
                FilterParts.read("sulphur dioxide, ammonia", "niosh")
                        .orElseThrow()
                        .gases());
    }

    @ParameterizedTest
    @CsvSource({"brown, A", "grey, B", "yellow, E", "green, K"})
    void coloursStandForLetters(String colour, String letter) {
        assertEquals(
                Map.of(letter, 0),
                FilterParts.read(colour + " P3", "en").orElseThrow().gases());
    }

    @Test
    void oneClassStandsForTheLettersBeforeIt() {
        assertEquals(
                Map.of("A", 2, "B", 2, "E", 2, "K", 2),
                FilterParts.read("ABEK2-P3", "en").orElseThrow().gases());
    }
}
