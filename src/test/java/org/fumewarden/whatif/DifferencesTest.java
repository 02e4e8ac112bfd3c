package org.fumewarden.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.fumewarden.Extent;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Reason;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.report.MovedText;
import org.fumewarden.report.WhatIfText;
import org.fumewarden.report.html.Speech;
import org.junit.jupiter.api.Test;

class DifferencesTest {
    @Test
    void aVariantThatChangesNothingShowsNoDifferenceByteForByte() throws IOException {
        for (Path tour : Extent.sample(Benches.tours(), Path::toString, Extent.of(4, Extent.ALL, Extent.ALL))) {
            Bench bench = Benches.of(tour);
            assertEquals(List.of(), Differences.between(bench.advise(), bench.advise()), tour.toString());
            assertEquals(AdviceJson.write(bench.advise()), AdviceJson.write(bench.advise(Map.of())), tour.toString());
        }
    }

    @Test
    void settingAnAnswerToWhatItAlreadyIsMovesNothing() {
        Bench bench = Benches.of(Benches.BRACKETS);
        assertEquals(
                AdviceJson.write(bench.advise()),
                AdviceJson.write(bench.advise(Map.of("wearer.facial-hair", "false"))));
    }

    @Test
    void aBeardBarsTightMasksAndNamesTheRuleThatBegan() {
        Bench bench = Benches.of(Benches.BRACKETS);
        List<Difference> moved =
                Differences.between(bench.advise(), bench.advise(Map.of("wearer.facial-hair", "true")));
        Difference mask = moved.stream()
                .filter(d -> d.what().equals("respirator tm3"))
                .findFirst()
                .orElseThrow();
        assertTrue(mask.before().startsWith("suitable"));
        assertTrue(mask.after().startsWith("barred"));
        assertEquals(
                List.of("SHARED-EXCLUSION-110"),
                mask.began().stream().map(Reason::rule).toList());
        assertTrue(moved.stream().noneMatch(d -> d.what().equals("respirator th3")));
    }

    @Test
    void aDifferenceThatIsReversedIsTheSameDifferenceBackwards() {
        Bench bench = Benches.of(Benches.BRACKETS);
        var plain = bench.advise();
        var verified = bench.advise(Map.of("task.extraction", "verified"));
        assertEquals(
                Differences.between(plain, verified).size(),
                Differences.between(verified, plain).size());
    }

    @Test
    void nothingMovesIsSaidInWords() {
        var same = Benches.of(Benches.BRACKETS).advise();
        assertEquals("Nothing moves.\n", MovedText.write(same, same, id -> id, new WhatIfText(Speech.ENGLISH)));
    }
}
