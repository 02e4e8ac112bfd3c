package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;

/** The lognormal arithmetic of an estimate, by the textbook formulas of that distribution. */
class ScreeningTest {
    private static Screening of(OptionalDouble floor) {
        // median 2, doubt ln 1.5, between shifts ln 2: together sqrt(0.405465^2 + 0.693147^2) = 0.803028
        return new Screening(
                Math.log(2),
                Math.log(1.5),
                Math.log(2),
                floor,
                Optional.empty(),
                "mg/m3",
                "From 2 published studies.",
                List.of("one"));
    }

    @Test
    void percentilesMeanAndShareBelowAreThoseOfTheLognormalDistribution() {
        Screening found = of(OptionalDouble.empty());
        assertEquals(2, need(found.percentile(0.5)), 1e-12);
        // 2 exp(1.644854 x 0.803028) = 7.4933
        assertEquals(7.4933, need(found.percentile(0.95)), 5e-4);
        assertEquals(2 * Math.exp(0.803028 * 0.803028 / 2), need(found.mean()), 1e-5);
        assertEquals(0.5, found.below(2), 1e-12);
        assertEquals(0, found.below(0));
        assertEquals(Soundness.INVALID_VALUE, found.percentile(1).status());
    }

    @Test
    void theFloorCountsOnlyWhereItIsHigher() {
        assertEquals(7.4933, need(of(OptionalDouble.of(5)).governing()), 5e-4);
        assertEquals(50, need(of(OptionalDouble.of(50)).governing()), 1e-12);
    }

    @Test
    void theSentenceStatesSpreadAndThatNothingWasMeasured() {
        String sentence = of(OptionalDouble.empty()).sentence();
        assertTrue(sentence.startsWith("Estimated, not measured: median 2 mg/m3, 95th percentile 7.5 mg/m3"), sentence);
        assertTrue(sentence.endsWith("From 2 published studies."), sentence);
    }

    @Test
    void aPartIsNowhereAboveItsWhole() {
        // A part of median 1 and deviation ln 4: its 95th percentile, 4^1.644854 = 9.78, lies above that of the whole,
        // 7.49.
        Screening part = new Screening(
                0, Math.log(4), 1e-9, OptionalDouble.of(40), Optional.empty(), "mg/m3", "From 1 study.", List.of());
        assertEquals(9.78, need(part.percentile(0.95)), 5e-3);
        Screening within = part.within(of(OptionalDouble.of(20)));
        assertEquals(1, need(within.percentile(0.5)), 1e-9);
        assertEquals(7.4933, need(within.percentile(0.95)), 5e-4);
        assertEquals(20, need(within.governing()), 1e-9);
        assertEquals(of(OptionalDouble.empty()).below(8), within.below(8), 1e-12);
        assertTrue(within.assumptions().get(0).startsWith("A part weighs no more"), within.toString());
    }
}
