package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.exposure.OrderRegression.Mark;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Samples below detection against a second reckoning: mpmath 1.3.0 at 30 digits, scipy 1.17.1, numpy 2.4.6. */
class CensoredStatisticsTest {
    private static List<Sample> samples(double... values) {
        List<Sample> samples = new ArrayList<>();
        for (double value : values) {
            samples.add(value > 0 ? Sample.found(value) : Sample.below(-value));
        }
        return samples;
    }

    private static SampleSet set(double... values) {
        return need(SampleSet.of(samples(values)));
    }

    /** Five of eight not detected; covariances by differences of the likelihood, mpmath. */
    @Test
    void heavyCensoringHasItsErrorsFromTheObservedInformation() {
        CensoredLikelihood fit = need(CensoredLikelihood.of(set(9, 14, 31, -5, -5, -10, -20, -20)));
        assertEquals(1.80728330783189, fit.meanLog(), 1e-12);
        assertEquals(1.00979989431541, fit.sdLog(), 1e-12);
        assertEquals(1.32650922779, fit.varianceEta(), 1e-9);
        assertEquals(0.18924853485, fit.varianceTheta(), 1e-9);
        assertEquals(0.465483979721, fit.covariance(), 1e-9);
        assertEquals(0.762093397588, fit.errorOfDistance(Math.log(50)), 1e-9);
    }

    /** The same in a tenth of the unit: nothing but the mean moves. */
    @Test
    void unitDoesNotMatter() {
        CensoredLikelihood fit = need(CensoredLikelihood.of(set(0.9, 1.4, 3.1, -0.5, -0.5, -1, -2, -2)));
        assertEquals(-0.495301785162156, fit.meanLog(), 1e-12);
        assertEquals(0.186252731654, fit.varianceEta(), 1e-9);
        assertEquals(0.0297231245035, fit.covariance(), 1e-9);
        assertEquals(0.762093397588, fit.errorOfDistance(Math.log(5)), 1e-9);
    }

    @Test
    void likelihoodWithoutAMaximumIsNoFit() {
        // three equal results below a detection limit: the narrower, the likelier, without end
        assertEquals(
                Soundness.OUT_OF_RANGE,
                CensoredLikelihood.of(set(0.3, 0.3, 0.3, -0.5)).status());
        assertEquals(
                Soundness.DEGENERATE_VARIANCE,
                CensoredLikelihood.of(set(0.3, 0.3, -0.3)).status());
    }

    /** mpmath, 40 digits; the tail below -30 goes by its series. */
    @ParameterizedTest
    @CsvSource({
        "-29, 29.034401237736326",
        "-30.5, 30.532716770660158",
        "-40, 40.024968847207264",
        "-100, 100.00999800099926",
        "-10000, 10000.000099999998"
    })
    void densityOverShareKeepsItsDigitsInTheTail(double z, double expected) {
        assertEquals(expected, StandardNormal.densityOverBelow(z), 3e-8 * expected);
    }

    /**
     * Places after Hirsch and Stedinger 1987, reckoned again from the paper's formulas with numpy; three detection limits,
     * results at two of them. A detected result at a limit is above it.
     */
    @Test
    void placesOnTheProbabilityAxisAreThoseOfThePaper() {
        SampleSet set = set(-2, -2, -5, -5, 5, -8, -8, 1, 3.3, 5.3, 7.7, 8, 9.5, 20, 2);
        List<Mark> expected = List.of(
                new Mark(2, 0.09333333333333332, false),
                new Mark(5, 0.15555555555555556, false),
                new Mark(1, 0.168, true),
                new Mark(8, 0.2222222222222222, false),
                new Mark(2, 0.24266666666666664, false),
                new Mark(2, 0.3982222222222222, true),
                new Mark(5, 0.4044444444444445, false),
                new Mark(3.3, 0.49777777777777776, true),
                new Mark(8, 0.5777777777777778, false),
                new Mark(5, 0.6061538461538462, true),
                new Mark(5.3, 0.68, true),
                new Mark(7.7, 0.7538461538461538, true),
                new Mark(8, 0.8384615384615385, true),
                new Mark(9.5, 0.9, true),
                new Mark(20, 0.9615384615384616, true));
        List<Mark> found = OrderRegression.marks(set);
        assertEquals(expected.size(), found.size());
        for (int i = 0; i < expected.size(); i++) {
            assertEquals(expected.get(i).concentration(), found.get(i).concentration(), "place " + i);
            assertEquals(expected.get(i).share(), found.get(i).share(), 1e-12, "place " + i);
            assertEquals(expected.get(i).detected(), found.get(i).detected(), "place " + i);
        }
        OrderRegression line = OrderRegression.of(set, OrderRegression.BLOM);
        assertEquals(1.1166129856869627, line.line().mean(), 1e-12);
        assertEquals(1.0580240223497461, line.line().deviation(), 1e-12);
    }

    /** Regression fills in by the line or takes the line itself; the two differ, and each says which it is. */
    @Test
    void eachTreatmentOfNonDetectsIsItsOwn() {
        SampleSet set = set(9, 14, 31, -5, 22, -10, 40, 12);
        OrderRegression line = OrderRegression.of(set, OrderRegression.BLOM);
        LognormalFit regression = need(LognormalFits.of(set, NonDetects.REGRESSION_ON_ORDER));
        LognormalFit robust = need(LognormalFits.of(set, NonDetects.ROBUST_REGRESSION));
        assertEquals(line.line().mean(), regression.meanLog(), 1e-12);
        assertEquals(line.filled().mean(), robust.meanLog(), 1e-12);
        assertTrue(Math.abs(regression.sdLog() - robust.sdLog()) > 1e-3);
        for (NonDetects each : NonDetects.values()) {
            LognormalFit fit = need(LognormalFits.of(set, each));
            assertEquals(each.words(), fit.method());
            assertEquals(6, fit.evidence());
            assertEquals(8, fit.samples());
        }
        assertEquals("maximum likelihood", NonDetects.MAXIMUM_LIKELIHOOD.words());
        assertEquals(2, NonDetects.HALF_LIMIT.standIn(4));
        assertEquals(Math.sqrt(8), NonDetects.LIMIT_OVER_ROOT_TWO.standIn(4), 1e-12);
        assertEquals(4, NonDetects.AT_LIMIT.standIn(4));
    }

    @Test
    void onlyNonDetectsCountForTheDetectionLimit() {
        assertEquals(0.2, set(0.5, -0.1, -0.2, 0.3).highestDetectionLimit());
        assertEquals(0, set(0.5, 0.3).highestDetectionLimit());
    }

    @Test
    void faultySampleIsCountedFromOne() {
        assertTrue(SampleSet.of(samples(1, 2, -0.0)).sentence().startsWith("Sample 3 is "));
        List<Sample> times = List.of(Sample.found(1), new Sample(2, true, OptionalDouble.of(-5), Optional.empty()));
        assertEquals(
                "Sample 2 ran for -5.0 minutes. Leave the time out.",
                SampleSet.of(times).sentence());
    }

    @Test
    void estimateSaysWhatItRestsOn() {
        Appraisal found = need(Appraisal.of(samples(9, 14, 31, -5, 22, -10, 40, 12), Appraisal.Question.against(100)));
        assertEquals("The highest of 8 samples is 40.", found.estimates().get(0).sentence());
        LognormalFit fit = need(found.fit());
        assertEquals(
                "The 95th percentile is " + ResultWords.number(need(fit.percentile(0.95)))
                        + ", from 8 samples (2 not detected, maximum likelihood) with geometric mean "
                        + ResultWords.number(fit.geometricMean()) + " and geometric standard deviation "
                        + ResultWords.number(fit.geometricDeviation()) + ".",
                found.estimates().get(Statistic.PERCENTILE_95.ordinal()).sentence());
        Appraisal one = need(Appraisal.of(samples(-3), Appraisal.Question.against(100)));
        assertEquals(
                "The highest of 1 sample is a detection limit of 3.",
                one.estimates().get(0).sentence());
        Appraisal both = need(Appraisal.of(samples(-3, 2), Appraisal.Question.against(100)));
        assertEquals(
                "The highest of 2 samples is a detection limit of 3.",
                both.estimates().get(0).sentence());
        Appraisal complete = need(Appraisal.of(samples(1, 1.1, 1.2, 1.1, 1, 1.2), Appraisal.Question.against(100)));
        assertTrue(complete.estimates()
                .get(Statistic.PERCENTILE_95.ordinal())
                .sentence()
                .contains(", from 6 samples with geometric mean"));
        assertTrue(complete.estimates()
                .get(Statistic.PERCENTILE_95.ordinal())
                .sentence()
                .endsWith(". " + complete.fit().sentence()));
        assertTrue(complete.fit().sentence().startsWith("A geometric standard deviation of 1.1 is not plausible"));
    }
}
