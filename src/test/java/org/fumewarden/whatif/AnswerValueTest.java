package org.fumewarden.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Suitability;
import org.junit.jupiter.api.Test;

class AnswerValueTest {
    @Test
    void aCompleteTaskHasNothingToAsk() {
        assertEquals(List.of(), new AnswerValue(Benches.of(Benches.BRACKETS)).rank());
    }

    @Test
    void theOnlyOpenQuestionSettlesEverythingWhateverTheAnswer() {
        Bench bench = Benches.of(Benches.BRACKETS, Map.of("wearer.facial-hair", "unknown"));
        List<AnswerValue.Worth> worths = new AnswerValue(bench).rank();
        int open = bench.advise().with(Suitability.UNDECIDED).size()
                + bench.advise().questions().size();
        assertEquals(1, worths.size());
        assertEquals("facial-hair", worths.get(0).question());
        assertEquals(open, worths.get(0).least());
        assertEquals(open, worths.get(0).most());
    }

    @Test
    void openQuestionsAreRankedByWhatTheLeastHelpfulAnswerSettles() {
        Bench bench =
                Benches.of(Benches.BRACKETS, Map.of("wearer.facial-hair", "unknown", "atmosphere.oxygen", "unknown"));
        List<AnswerValue.Worth> worths = new AnswerValue(bench).rank();
        assertEquals(2, worths.size());
        assertTrue(worths.get(0).least() >= worths.get(1).least());
    }
}
