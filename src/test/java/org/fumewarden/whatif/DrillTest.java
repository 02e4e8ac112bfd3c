package org.fumewarden.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DrillTest {
    private static List<Boolean> right(Map<String, String> changes, String... answers) {
        return new Drill(Benches.of(Benches.BRACKETS, changes).advise())
                .mark(List.of(answers)).stream().map(Drill.Mark::right).toList();
    }

    @Test
    void theRightAnswersScoreInFull() {
        assertEquals(
                List.of(true, true, true, true, true),
                right(
                        Map.of(),
                        "20",
                        "th2",
                        "TH2 P",
                        "monthly thorough visual examination",
                        "training and instruction"));
    }

    @Test
    void aFactorTooLowAFarTooHighOneAndNoNumberAreWrong() {
        for (String factor : List.of("19", "40", "about twenty", "")) {
            assertEquals(false, right(Map.of(), factor).get(0), factor);
        }
    }

    @Test
    void theSameDutyTwiceCountsOnce() {
        assertEquals(
                List.of(true, false),
                right(Map.of(), "20", "th3", "TH3 P", "thorough visual examination", "visual examination thorough")
                        .subList(3, 5));
    }

    @Test
    void whenTheWorkMustNotStartNoneIsTheRightClass() {
        Map<String, String> gas = Map.of("atmosphere.explosive", "true");
        assertEquals(List.of(true, true, true), right(gas, "0", "none", "none").subList(0, 3));
        assertEquals(List.of(false, false), right(gas, "20", "th3", "none").subList(0, 2));
    }

    @Test
    void aWrongMarkSaysWhyWithTheClause() {
        Drill.Mark mark = new Drill(Benches.of(Benches.BRACKETS).advise())
                .mark(List.of("20", "ffp3"))
                .get(1);
        assertTrue(mark.because().contains("hsg53"), mark.because());
    }
}
