package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.exposure.AnalyticalError.Band;
import org.fumewarden.exposure.AnalyticalError.Finding;
import org.fumewarden.exposure.Appraisal.Question;
import org.fumewarden.exposure.Compliance.Decision;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Decisions just below, at and just above the figure that turns them; figures of EN 689:2018 from memory. */
class EdgesTest {
    private static final List<Sample> THREE_WORKERS = List.of(
            Sample.found(Math.exp(1)).by("a"),
            Sample.found(Math.exp(2)).by("a"),
            Sample.found(Math.exp(3)).by("b"),
            Sample.found(Math.exp(6)).by("b"),
            Sample.found(Math.exp(5)).by("c"));

    private static SampleSet set(double... values) {
        List<Sample> samples = new ArrayList<>();
        for (double value : values) {
            samples.add(value > 0 ? Sample.found(value) : Sample.below(-value));
        }
        return need(SampleSet.of(samples));
    }

    /** EN 689:2018 5.5.2: below 0.1, 0.15 or 0.2 of the limit for 3, 4 or 5 samples; above the limit is over it. */
    @ParameterizedTest(name = "{0} against {1}: {2} {3}")
    @CsvSource({
        "9.9 9.9 9.9, 100, COMPLIANT, SOUND",
        "9.9 9.9 10, 100, NO_DECISION, TOO_FEW",
        "9.9 9.9 100, 100, NO_DECISION, TOO_FEW",
        "9.9 9.9 100.1, 100, NON_COMPLIANT, SOUND",
        "9.9 -9.9 9.9, 100, COMPLIANT, SOUND",
        "9.9 -99 9.9, 100, NO_DECISION, TOO_FEW",
        "9.9 -100 9.9, 100, NO_DECISION, LIMIT_BELOW_DETECTION",
        "9.9 -101 9.9, 100, NO_DECISION, LIMIT_BELOW_DETECTION",
        "14.9 14.9 14.9 14.9, 100, COMPLIANT, SOUND",
        "14.9 14.9 14.9 15, 100, NO_DECISION, TOO_FEW",
        "19.9 19.9 19.9 19.9 19.9, 100, COMPLIANT, SOUND",
        "19.9 19.9 19.9 19.9 20, 100, NO_DECISION, TOO_FEW",
        "1 1, 100, NOT_APPLICABLE, TOO_FEW",
        "1 101, 100, NON_COMPLIANT, SOUND",
        "1 1 1 1 1 1, 100, NOT_APPLICABLE, SOUND",
        "1 1 1, 0, NOT_APPLICABLE, INVALID_LIMIT"
    })
    void preliminaryTestTurnsAtItsShares(String samples, double limit, Decision decision, Soundness status) {
        double[] values = java.util.Arrays.stream(samples.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        Compliance.Verdict verdict = Compliance.preliminary(set(values), limit);
        assertEquals(decision, verdict.decision());
        assertEquals(status, verdict.status());
        assertFalse(verdict.sentence().isBlank());
    }

    @Test
    void toleranceTestTurnsAtItsFactorAndItsDetectionLimit() {
        assertTrue(new Compliance.Tolerance(2.187, 2.187, 1).compliant());
        assertFalse(new Compliance.Tolerance(2.186, 2.187, 1).compliant());
        assertEquals(
                Soundness.TOO_FEW,
                Compliance.tolerance(new LognormalFit(0, 1, 5, 5, "given"), 10).status());
        assertTrue(Compliance.tolerance(new LognormalFit(0, 1, 6, 6, "given"), 10)
                .value()
                .isPresent());
        double[] low = {1, 2, 1.5, 2.5, 1.2, 1.9, -100};
        assertEquals(
                Soundness.LIMIT_BELOW_DETECTION, Compliance.test(set(low), 100).status());
        assertFalse(Compliance.test(set(low), 100.1).status() == Soundness.LIMIT_BELOW_DETECTION);
    }

    /** OSHA Technical Manual, section II chapter 1: above 1 with the error taken off, or up to 1 with it added. */
    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource({
        "1.01, 1.5, VIOLATION",
        "1, 1.5, POSSIBLE",
        "0.8, 1.01, POSSIBLE",
        "0.5, 1, NO_VIOLATION",
        "0.5, 0.9, NO_VIOLATION"
    })
    void findingTurnsAtTheLimit(double lower, double upper, Finding finding) {
        assertEquals(finding, new Band(1, lower, upper).finding());
    }

    /** By hand: 1.2 of 1 with 0.25 of error; two samples of 60 min at 1 and 2 of a limit of 2. */
    @Test
    void errorStandsOnBothSides() {
        Band single = need(AnalyticalError.single(1.2, 1, 0.25));
        assertEquals(0.95, single.lower(), 1e-12);
        assertEquals(1.45, single.upper(), 1e-12);
        assertEquals(0, need(AnalyticalError.single(0.1, 1, 0.25)).lower());
        assertEquals(1, need(AnalyticalError.single(1, 1, 0)).upper(), "no error at all is possible");
        List<Period> two = List.of(new Period(1, 60), new Period(2, 60));
        Band band = need(AnalyticalError.consecutive(two, 2, 0.2));
        double half = 0.2 * Math.sqrt(60 * 60 + 120 * 120) / (2 * 120);
        assertEquals(0.75 - half, band.lower(), 1e-12);
        assertEquals(0.75 + half, band.upper(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"-0.01", "NaN", "Infinity"})
    void errorThatCannotBeIsRefused(double error) {
        assertEquals(
                Soundness.INVALID_VALUE, AnalyticalError.single(1, 1, error).status());
    }

    @Test
    void fitNeedsASpreadThatIsNotNegativeAndASample() {
        assertEquals(1, new LognormalFit(0, 0, 1, 1, "given").geometricDeviation());
        assertThrows(IllegalArgumentException.class, () -> new LognormalFit(0, -0.1, 5, 5, "given"));
        assertThrows(IllegalArgumentException.class, () -> new LognormalFit(0, 1, 0, 0, "given"));
        assertThrows(IllegalArgumentException.class, () -> new LognormalFit(Double.NaN, 1, 5, 5, "given"));
    }

    /** BOHS and NVvA 2011, from memory: more than a fifth of the variance, fewer than a fifth of the workers. */
    @Test
    void workersAreJudgedAtOneFifth() {
        assertFalse(new WorkerVariance(0, 1, 1, 0.2, 0.8).individualTestNeeded());
        assertTrue(new WorkerVariance(0, 1, 1, 0.21, 0.79).individualTestNeeded());
        assertEquals(Optional.empty(), new WorkerVariance(0, 0, 0, 0, 0).betweenShare());
        assertEquals(Optional.of(1.0), new WorkerVariance(0, 1, 0, 0.5, 0).betweenShare());
        assertEquals(
                Soundness.INVALID_LIMIT,
                new WorkerVariance(0, 1, 1, 0.2, 0.8).individual(0).status());
    }

    @Test
    void oneNamelessSampleLeavesTheWorkersOut() {
        List<Sample> samples = List.of(
                Sample.found(1).by("a"),
                Sample.found(2).by("a"),
                Sample.found(3).by("b"),
                Sample.found(4));
        assertEquals(
                "Spread between workers needs the worker of each sample. Name them.",
                SampleSet.of(samples).then(WorkerVariance::of).sentence());
    }

    /** By hand: logarithms 1, 2 | 3, 6 | 5; mean 3.4, within 0.5 + 4.5 over 2 degrees of freedom. */
    @Test
    void variancesOfUnequalGroupsAreThoseOfTheTextbook() {
        WorkerVariance found = need(SampleSet.of(THREE_WORKERS).then(WorkerVariance::of));
        // between: 2 (1.5 - 3.4)^2 + 2 (4.5 - 3.4)^2 + (5 - 3.4)^2 = 12.2, over 2; samples per worker (5 - 9/5) / 2 =
        // 1.6
        assertEquals(3.4, found.meanLog(), 1e-12);
        assertEquals(6.1, found.meanSquareBetween(), 1e-12);
        assertEquals(2.5, found.meanSquareWithin(), 1e-12);
        assertEquals(2.25, found.between(), 1e-12);
    }

    @Test
    void governingValueSaysWhatIsMissing() {
        Governing one = need(Appraisal.of(List.of(Sample.found(0.4)), Question.against(1)))
                .governing();
        assertEquals(
                List.of("With 1 sample the spread is poorly known: a geometric standard deviation of 2.7 is assumed"
                        + " (Buringh and Lanting 1991). Take 6 or more."),
                one.cautions().stream().map(Governing.Caution::sentence).toList());
        // 0.4 exp((1.644854 + 0.524401) ln 2.7) = 3.44983
        assertEquals(3.44983, one.value(), 1e-5);
        Governing two = need(Appraisal.of(List.of(Sample.found(0.4), Sample.found(0.3)), Question.against(1)))
                .governing();
        assertEquals(
                List.of("With 2 samples the spread is poorly known: a geometric standard deviation of 2.7 is assumed"
                        + " (Buringh and Lanting 1991). Take 6 or more."),
                two.cautions().stream().map(Governing.Caution::sentence).toList());
        List<Sample> hidden = List.of(Sample.below(0.1), Sample.below(0.1), Sample.below(0.1));
        Governing three = need(Appraisal.of(hidden, Question.against(1))).governing();
        assertEquals(2, three.cautions().size());
        assertTrue(three.cautions().get(1).sentence().startsWith("All 3 samples are below"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Governing(Statistic.HIGHEST_SAMPLE, 0, "x", List.of(), false));
    }

    @Test
    void askingForTheHighestSampleOrTheUsualStatisticChangesNothing() {
        List<Sample> six = java.util.stream.DoubleStream.of(0.21, 0.34, 0.12, 0.55, 0.18, 0.29)
                .mapToObj(Sample::found)
                .toList();
        Governing usual = need(Appraisal.of(six, Question.against(1))).governing();
        for (Statistic same : List.of(Statistic.HIGHEST_SAMPLE, Statistic.UPPER_TOLERANCE_70)) {
            Question question =
                    new Question(1, OptionalDouble.empty(), Optional.of(same), NonDetects.MAXIMUM_LIKELIHOOD);
            assertEquals(usual, need(Appraisal.of(six, question)).governing());
        }
    }

    @Test
    void workersWhoDifferAreToldInPercent() {
        Governing governing =
                need(Appraisal.of(THREE_WORKERS, Question.against(1))).governing();
        // 2.25 of 2.25 + 2.5
        assertTrue(governing.cautions().stream()
                .anyMatch(c -> c.sentence().startsWith("The workers differ (48 % of the variance")));
    }

    /** The test of shape counts from 6 samples on: five with the same odd shape draw no caution. */
    @Test
    void shapeCountsFromSixSamplesOn() {
        double[] five = {1, 1.001, 1.002, 1.003, 50};
        double[] six = {1, 1.001, 1.002, 1.003, 1.004, 50};
        assertTrue(need(ShapiroWilk.ofLogs(set(five))).probability() < 0.05);
        assertFalse(warns(need(Appraisal.of(set(five).samples(), Question.against(1))), Soundness.WARN_POOR_FIT));
        assertTrue(warns(need(Appraisal.of(set(six).samples(), Question.against(1))), Soundness.WARN_POOR_FIT));
    }

    static boolean warns(Appraisal found, Soundness status) {
        return found.governing().cautions().stream().anyMatch(c -> c.status() == status);
    }
}
