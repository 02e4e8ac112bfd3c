package org.fumewarden.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The product limit of five samples by hand, after Kaplan and Meier 1958 on the turned scale: below 1, 1, 2, below 3, 4. From
 * above: 4 has 5 at risk and 4/5 below; 2 has 3 at risk and 4/5 x 2/3 below; 1 has 2 at risk and 4/5 x 2/3 x 1/2 below.
 */
final class ProductLimitTest {
    private static final KaplanMeier FIVE =
            of(Sample.below(1), Sample.found(1), Sample.found(2), Sample.below(3), Sample.found(4));

    private static KaplanMeier of(Sample... samples) {
        return KaplanMeier.of(SampleSet.of(List.of(samples)).value().orElseThrow())
                .value()
                .orElseThrow();
    }

    @Test
    void stepsFallByTheSharesAtRisk() {
        assertEquals(3, FIVE.steps().size());
        step(FIVE.steps().get(0), 1, 4 / 15.0, 8 / 15.0);
        step(FIVE.steps().get(1), 2, 8 / 15.0, 12 / 15.0);
        step(FIVE.steps().get(2), 4, 12 / 15.0, 1);
    }

    private static void step(KaplanMeier.Step step, double concentration, double below, double upTo) {
        assertEquals(concentration, step.concentration());
        assertEquals(below, step.below(), 1e-12);
        assertEquals(upTo, step.upTo(), 1e-12);
    }

    /** 4 x 3/15 + 2 x 4/15 + 1 x 4/15 + 1 x 4/15 for those below the lowest result. */
    @Test
    void meanCountsTheUndetectedAtTheLowestResult() {
        Reckoning<Double> mean = FIVE.mean();
        assertEquals(28 / 15.0, mean.value().orElseThrow(), 1e-12);
        assertEquals(Soundness.TOO_CENSORED, mean.status());
        assertEquals(
                "The lowest samples were not detected; the mean counts them at the lowest result, 1, and is an upper bound.",
                mean.sentence());
    }

    @Test
    void meanOfDetectedSamplesIsTheirMean() {
        Reckoning<Double> mean =
                of(Sample.found(1), Sample.found(2), Sample.found(4)).mean();
        assertEquals(7 / 3.0, mean.value().orElseThrow(), 1e-12);
        assertEquals(Soundness.SOUND, mean.status());
    }

    @ParameterizedTest(name = "share {0}: {1}")
    @CsvSource({"0.27, 1", "0.53, 1", "0.54, 2", "0.8, 2", "0.81, 4", "0.999, 4"})
    void percentileIsTheFirstValueUpToWhichTheShareLies(double share, double expected) {
        assertEquals(expected, FIVE.percentile(share).value().orElseThrow());
    }

    @Test
    void percentileAmongTheUndetectedIsRefused() {
        double lowest = FIVE.steps().get(0).below();
        assertEquals(Soundness.TOO_CENSORED, FIVE.percentile(lowest).status());
        assertEquals(Soundness.TOO_CENSORED, FIVE.percentile(0.1).status());
        assertEquals(1, FIVE.percentile(Math.nextUp(lowest)).value().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.1, Double.NaN})
    void percentileNeedsAShare(double share) {
        assertEquals(Soundness.INVALID_VALUE, FIVE.percentile(share).status());
    }

    @Test
    void withoutADetectedSampleThereIsNoDistribution() {
        SampleSet none =
                SampleSet.of(List.of(Sample.below(1), Sample.below(2))).value().orElseThrow();
        assertEquals(Soundness.ALL_CENSORED, KaplanMeier.of(none).status());
    }
}
