package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The test of shape and the limits of the mean against scipy 1.17.1 and mpmath 1.3.0. */
class ShapeAndMeanTest {
    /** scipy.stats.shapiro of the logarithms; each size that the algorithm treats in its own way. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1 1.2 2.9, 0.8740414905349387, 0.3070765258240331",
        "0.3 0.5 0.55 2.4, 0.8706486192086311, 0.30023280971385113",
        "0.1 0.32 0.35 0.41 1.9, 0.9217674560419923, 0.5414054740573035",
        "0.21 0.34 0.12 0.55 0.18 0.29, 0.9937001985213127, 0.99625320683024",
        "0.1 0.12 0.13 0.2 0.22 0.25 0.3 0.33 0.4 0.9 6, 0.8251067458832897, 0.020132010331150727",
        "0.1 0.12 0.13 0.2 0.22 0.25 0.3 0.33 0.4 0.9 6 0.15, 0.8096003378546801, 0.012071085663241377",
        "1 1 8, 0.75, 0"
    })
    void shapeAgreesAtEverySize(String samples, double statistic, double probability) {
        double[] values = Arrays.stream(samples.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        ShapiroWilk found = need(SampleSet.found(values).then(ShapiroWilk::ofLogs));
        assertEquals(statistic, found.statistic(), 1e-9);
        assertEquals(probability, found.probability(), 1e-8);
    }

    @ParameterizedTest(name = "{0} samples: {1}")
    @CsvSource({"2, TOO_FEW", "3, SOUND", "5000, SOUND", "5001, TOO_FEW"})
    void shapeIsTestedFrom3To5000Samples(int n, Soundness status) {
        double[] values = new double[n];
        Arrays.setAll(values, i -> 1 + i);
        assertEquals(status, SampleSet.found(values).then(ShapiroWilk::ofLogs).status());
    }

    @Test
    void twoSamplesAlreadyHaveASpread() {
        assertEquals(new Moments(2, 2, Math.sqrt(2)), Moments.of(new double[] {1, 3}));
        assertEquals(new Moments(1, 7, 0), Moments.of(new double[] {7}));
    }

    /** mpmath, 30 digits, as in the self-check; here without the table of factors already reckoned. */
    @ParameterizedTest(name = "n {0}, {1}, {2}: {3}")
    @CsvSource({
        "6, 0.95, 0.70, 2.186745",
        "50, 0.95, 0.95, 2.064993",
        "3, 0.95, 0.95, 7.6559",
        "3, 0.95, 0.70, 2.809138",
        "50, 0.95, 0.70, 1.774838"
    })
    void toleranceFactorIsReckonedAnew(int n, double coverage, double confidence, double expected) {
        assertEquals(expected, need(ToleranceFactor.solve(n, coverage, confidence)), 5.1e-7);
        assertEquals(expected, need(ToleranceFactor.of(n, coverage, confidence)), 5.1e-7);
        assertEquals(expected, need(ToleranceFactor.of(n, coverage, confidence)), 5.1e-7, "and remembered");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.1, Double.NaN})
    void shareLiesBetweenZeroAndOneWithoutTheEnds(double share) {
        LognormalFit fit = new LognormalFit(0, 1, 10, 10, "given");
        assertEquals(Soundness.INVALID_VALUE, ToleranceFactor.of(6, share, 0.7).status());
        assertEquals(Soundness.INVALID_VALUE, ToleranceFactor.of(6, 0.95, share).status());
        assertEquals(Soundness.INVALID_VALUE, fit.percentile(share).status());
        assertEquals(Soundness.INVALID_VALUE, LandMean.upper(10, 0, 1, share).status());
        assertEquals(Soundness.TOO_FEW, Exceedance.aboveHighest(6, share).status());
    }

    @ParameterizedTest(name = "{0} samples, deviation {1}: {2}")
    @CsvSource({"2, 1, TOO_FEW", "3, 1, SOUND", "3, 0, DEGENERATE_VARIANCE"})
    void limitAfterLandNeedsThreeSamplesAndASpread(int n, double s, Soundness status) {
        assertEquals(status, LandMean.upper(n, 0, s, 0.95).status());
    }

    /** A thousand samples of little spread; mpmath, 30 digits, by integration of the same conditional density. */
    @Test
    void limitsAfterLandOfManySamples() {
        assertEquals(1.0102855078499438, need(LandMean.upper(1000, 0, 0.1, 0.95)), 1e-12);
    }

    /** The start of the search lies outside the window of the density here. */
    @Test
    void limitsAfterLandOfVeryManySamples() {
        assertEquals(1.0073621025171601, need(LandMean.upper(5000, 0, 0.1, 0.95)), 1e-12);
    }

    /** x^2 over 0 to 1 is a third; ten points are exact for it. */
    @Test
    void quadratureIsExactForSquares() {
        assertEquals(1 / 3.0, Quadrature.integral(x -> x * x, 0, 1, 2), 1e-15);
    }

    @ParameterizedTest(name = "{0} results, geometric deviation {1}: {2}")
    @CsvSource({"7, 3.99, SOUND", "6, 3.99, WARN_UNSTABLE", "7, 4.01, WARN_UNSTABLE", "6, 4.01, WARN_UNSTABLE"})
    void limitOfTheMeanWarnsWhereItRunsAway(int n, double deviation, Soundness status) {
        LognormalFit fit = new LognormalFit(0, Math.log(deviation), n, n, "given");
        assertEquals(status, fit.meanUpper(0.95).status());
    }

    @Test
    void distanceNeedsALimit() {
        LognormalFit fit = new LognormalFit(0, 1, 10, 10, "given");
        assertEquals(Soundness.INVALID_LIMIT, fit.distance(0).status());
        assertEquals(2, need(fit.distance(Math.exp(2))), 1e-12);
    }

    /** One-sided limits of the share above: at half the confidence a limit is the estimate and no limit. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 0.05, Double.NaN})
    void shareAboveNeedsAConfidenceAboveOneHalf(double confidence) {
        assertEquals(
                Soundness.INVALID_VALUE,
                SampleSet.found(1, 2, 3)
                        .then(set -> Exceedance.of(set, 5, confidence))
                        .status());
    }

    /** 1 - 0.05 = 0.95: one sample bounds next to nothing. */
    @Test
    void oneSampleBoundsTheShareAboveItAtNinetyFivePercent() {
        assertEquals(0.95, need(Exceedance.aboveHighest(1, 0.95)), 1e-12);
        assertEquals(Soundness.TOO_FEW, Exceedance.aboveHighest(0, 0.95).status());
    }

    /** Two digits, rounded up; whole numbers as they are; powers of ten only where a plain number would have more than seven places. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "0.012345, 0.013", "1234.5, 1300", "9999999, 9999999", "1234567, 1234567", "12345678, 12345678",
        "0.00000012, 1.2E-7", "0.0000012, 0.0000012", "0.0000001, 0.0000001", "0, 0", "NaN, no number",
        "Infinity, no number"
    })
    void numbersAreReadEasily(double value, String words) {
        assertEquals(words, ResultWords.number(value));
    }

    @Test
    void rootIsFoundOrNamedMissing() {
        assertEquals(3, Roots.ofIncreasing(x -> x - 3, 3, 1).getAsDouble(), "the start itself");
        assertEquals(4, Roots.ofIncreasing(x -> x - 4, 3, 1).getAsDouble(), 1e-12, "one step up");
        assertEquals(2, Roots.ofIncreasing(x -> x - 2, 3, 1).getAsDouble(), 1e-12, "one step down");
        assertEquals(-1000, Roots.ofIncreasing(x -> x + 1000, 3, 1).getAsDouble(), 1e-9);
        assertTrue(Roots.ofIncreasing(x -> -1, 0, 1).isEmpty());
        assertTrue(Roots.ofIncreasing(x -> Double.NaN, 0, 1).isEmpty());
    }

    /** Six terms of the series: 1/2 - x/6 + x^2/24 - ..., mpmath at 30 digits. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"0.009, 0.4985033689341008", "0.011, 0.4981716972619695", "0, 0.5", "-0.009, 0.5015033810841242"})
    void averageOfAverageKeepsItsDigitsNearZero(double x, double expected) {
        assertEquals(expected, Phi.second(x), 2e-14);
    }
}
