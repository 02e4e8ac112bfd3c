package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Prior and samples together, against closed forms and properties. */
class PosteriorTest {
    private static SampleSet set(double... values) {
        return need(SampleSet.found(values));
    }

    /**
     * Normal mean with a normal prior (Gelman and others, Bayesian Data Analysis, 2.5, textbook formula): precision-weighted
     * mean. The deviation is all but known since the samples are many and the prior is narrow about it.
     */
    @Test
    void theMeanIsWeightedByPrecisionAsInTheTextbook() {
        double[] values = new double[400];
        Random random = new Random(7);
        Arrays.setAll(values, i -> Math.exp(0.8 * random.nextGaussian()));
        SampleSet set = set(values);
        Moments moments = Moments.of(set.logs());
        Prior prior = new Prior(0.1, 0.05, 0.8);
        double precision = 1 / 0.0025 + 400 / (moments.deviation() * moments.deviation());
        double expected =
                (0.1 / 0.0025 + moments.mean() * 400 / (moments.deviation() * moments.deviation())) / precision;
        assertEquals(expected, Math.log(Posterior.of(prior, set).geometricMean()), 0.01);
    }

    /**
     * Six welding fume results of a published worked example (0.84, 0.98, 0.42, 1.16, 1.36, 2.66 mg/m3: geometric mean 1.06,
     * geometric standard deviation 1.83, read in a transcription of course notes on small data sets). A wide prior gives
     * the classical bound: 1.064 exp(2.186745 x 0.6056) = 4.00.
     */
    @Test
    void aPriorThatSaysLittleGivesAboutTheClassicalToleranceLimit() {
        SampleSet set = set(0.84, 0.98, 0.42, 1.16, 1.36, 2.66);
        LognormalFit fit = need(LognormalFits.of(set));
        assertEquals(1.06, fit.geometricMean(), 0.005);
        assertEquals(1.83, fit.geometricDeviation(), 0.005);
        assertEquals(4.00, need(fit.tolerance(0.95, 0.70)), 0.01);
        double bound = Posterior.of(new Prior(0, 50, 0.65), set).percentileBound(0.70);
        assertEquals(4.00, bound, 0.6);
    }

    @Test
    void manySamplesOutweighThePrior() {
        Random random = new Random(3);
        double[] values = random.doubles(300)
                .map(u -> Math.exp(0.7 * random.nextGaussian()))
                .toArray();
        SampleSet set = set(values);
        double classical = need(need(LognormalFits.of(set)).tolerance(0.95, 0.70));
        for (double prior : new double[] {-3, 3}) {
            assertEquals(
                    classical, Posterior.of(new Prior(prior, 1, 0.8), set).percentileBound(0.70), 0.06 * classical);
        }
    }

    @Test
    void aResultBelowItsDetectionLimitSaysLessThanOneAtIt() {
        Prior prior = new Prior(0, 1, 0.8);
        SampleSet below = need(SampleSet.of(List.of(Sample.below(0.1), Sample.below(0.1))));
        double hidden = Posterior.of(prior, below).percentileBound(0.7);
        assertTrue(hidden < Posterior.of(prior, set(0.1, 0.1)).percentileBound(0.7));
        assertTrue(hidden < Posterior.of(prior, set(1, 1)).percentileBound(0.7));
    }

    /** A result of 1 % of the limit must not ask for more than published studies alone, nor a lower one for more than a higher. */
    @Test
    void lowerResultsNeverGiveMore() {
        Prior prior = new Prior(Math.log(0.1), 0.9, 0.8);
        for (int n = 1; n < FewSamples.ENOUGH; n += 2) {
            double higher = Double.POSITIVE_INFINITY;
            for (double level = 0.1; level > 1e-4; level /= 10) {
                double here = level;
                double bound = Posterior.bound(
                        prior,
                        set(java.util.stream.DoubleStream.generate(() -> here)
                                .limit(n)
                                .toArray()));
                assertTrue(bound <= higher * 1.25, n + " of " + level + " give " + bound + ", above " + higher);
                higher = bound;
            }
        }
    }

    @Test
    void withAPriorFewerResultsOfTheSameMeanAndSpreadNeverGiveLessFromTwoToTwenty() {
        Random random = new Random(20261128);
        for (int i = 0; i < 3; i++) {
            Prior prior = new Prior(3 * random.nextGaussian(), 0.4 + random.nextDouble(), 0.4 + random.nextDouble());
            double mean = random.nextGaussian();
            double deviation = 1.5 * random.nextDouble();
            double fewer = Double.POSITIVE_INFINITY;
            for (int n = 2; n <= 20; n = n < 8 ? n + 1 : n + 6) {
                double[] logs =
                        random.doubles(n).map(u -> random.nextGaussian()).toArray();
                Moments moments = Moments.of(logs);
                double[] values = Arrays.stream(logs)
                        .map(l -> Math.exp(mean + deviation * (l - moments.mean()) / moments.deviation()))
                        .toArray();
                List<Sample> samples =
                        Arrays.stream(values).mapToObj(Sample::found).toList();
                double figure = need(Appraisal.of(
                                samples,
                                new Appraisal.Question(
                                        1,
                                        OptionalDouble.empty(),
                                        Optional.empty(),
                                        NonDetects.MAXIMUM_LIKELIHOOD,
                                        Optional.of(prior))))
                        .governing()
                        .value();
                double highest = Arrays.stream(values).max().orElseThrow();
                assertTrue(figure <= fewer * (1 + 1e-6) || figure == highest, n + " results: " + figure);
                fewer = Math.min(fewer, figure);
            }
        }
    }

    @Test
    void aPriorThatDisagreesIsSaid() {
        Appraisal.Question question = new Appraisal.Question(
                1,
                OptionalDouble.empty(),
                Optional.empty(),
                NonDetects.MAXIMUM_LIKELIHOOD,
                Optional.of(new Prior(Math.log(2), 0.5, 0.8)));
        List<Governing.Caution> cautions = need(Appraisal.of(List.of(Sample.found(0.1)), question))
                .governing()
                .cautions();
        assertTrue(cautions.stream().anyMatch(c -> c.sentence().startsWith("The samples lie far below")));
    }

    /** Results that are all alike, found or not: the figure falls step by step, nowhere to less than 0.4 of the one before. */
    @Test
    void noStepFromOneNumberOfResultsToTheNextIsSteep() {
        for (boolean detected : new boolean[] {true, false}) {
            double before = Double.POSITIVE_INFINITY;
            for (int n = 1; n <= 24; n++) {
                Sample one = detected ? Sample.found(0.1) : Sample.below(0.1);
                double figure = need(Appraisal.of(java.util.Collections.nCopies(n, one), Appraisal.Question.against(5)))
                        .governing()
                        .value();
                assertTrue(figure <= before && (n == 1 || figure > 0.4 * before), n + " results: " + figure);
                before = figure;
            }
            // Nineteen and more: 0.1 x 1.2^k with k below 2 when found; the detection limit when not.
            assertTrue(before < (detected ? 0.15 : 0.1 + 1e-12), "24 results: " + before);
        }
    }
}
