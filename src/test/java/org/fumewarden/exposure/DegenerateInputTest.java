package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fumewarden.exposure.Compliance.Decision;
import org.fumewarden.exposure.TimeWeightedAverage.Unsampled;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Input that proves nothing gets a status and a sentence, and never passes. The rules are our own design. */
class DegenerateInputTest {
    private record Case(String name, List<Sample> samples, double limit, Soundness fit) {}

    private static List<Sample> found(double... values) {
        return java.util.Arrays.stream(values).mapToObj(Sample::found).toList();
    }

    private static List<Sample> below(int n, double limit) {
        return java.util.Collections.nCopies(n, Sample.below(limit));
    }

    private static List<Sample> both(List<Sample> a, List<Sample> b) {
        List<Sample> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }

    private static Stream<Case> cases() {
        return Stream.of(
                new Case("one sample", found(0.01), 1, Soundness.TOO_FEW),
                new Case("two samples", found(0.01, 0.02), 1, Soundness.TOO_FEW),
                new Case("all equal", found(0.1, 0.1, 0.1, 0.1, 0.1, 0.1), 1, Soundness.DEGENERATE_VARIANCE),
                new Case("all below detection", below(6, 0.01), 1, Soundness.ALL_CENSORED),
                new Case("two of eight detected", both(below(6, 0.01), found(0.02, 0.03)), 1, Soundness.TOO_CENSORED),
                new Case(
                        "three of twenty detected",
                        both(below(17, 0.01), found(0.02, 0.03, 0.05)),
                        1,
                        Soundness.TOO_CENSORED),
                new Case(
                        "limit below detection",
                        both(below(1, 2), found(0.1, 0.2, 0.15, 0.3, 0.12, 0.2)),
                        1,
                        Soundness.SOUND),
                new Case(
                        "spread near one",
                        found(0.1, 0.1001, 0.0999, 0.1, 0.1001, 0.0999),
                        1,
                        Soundness.WARN_GSD_TOO_SMALL),
                new Case(
                        "spread over ten",
                        found(1e-6, 1e-4, 1e-2, 1e-5, 1e-3, 1e-1),
                        1e9,
                        Soundness.WARN_GSD_TOO_LARGE),
                new Case("zero", found(0, 0.1, 0.1, 0.2, 0.1, 0.2), 1, Soundness.INVALID_VALUE),
                new Case("negative", found(-0.1, 0.1, 0.1, 0.2, 0.1, 0.2), 1, Soundness.INVALID_VALUE));
    }

    @TestFactory
    Stream<DynamicTest> noDegenerateSamplesEverPass() {
        return cases().map(c -> DynamicTest.dynamicTest(c.name(), () -> {
            Reckoning<SampleSet> set = SampleSet.of(c.samples());
            Reckoning<LognormalFit> fit = set.then(LognormalFits::of);
            assertEquals(c.fit(), fit.status());
            assertTrue(fit.status() == Soundness.SOUND || fit.sentence().contains("."), "a sentence");
            set.value().ifPresent(samples -> {
                Compliance.Verdict verdict = Compliance.test(samples, c.limit());
                assertFalse(verdict.decision() == Decision.COMPLIANT, verdict.toString());
                assertFalse(verdict.sentence().isBlank());
            });
        }));
    }

    @Test
    void allBelowDetectionIsBoundedWithoutAnyDistribution() {
        // 1 - 0.05^(1/6) = 0.393
        assertEquals(0.393, need(Exceedance.aboveHighest(6, 0.95)), 5e-4);
        String sentence = SampleSet.of(below(6, 0.01)).then(LognormalFits::of).sentence();
        assertTrue(sentence.contains("no more than 40 % of exposures"), sentence);
    }

    @Test
    void theLimitsOfFitAndNoFitLieWhereTheyAreSaidToLie() {
        // Exactly 80 % not detected and 3 detected is still fitted; one more non-detect is not.
        List<Sample> edge = both(below(12, 0.01), found(0.02, 0.03, 0.05));
        assertTrue(SampleSet.of(edge).then(LognormalFits::of).value().isPresent());
        List<Sample> beyond = both(below(13, 0.01), found(0.02, 0.03, 0.05));
        assertEquals(
                Soundness.TOO_CENSORED,
                SampleSet.of(beyond).then(LognormalFits::of).status());
    }

    @Test
    void equalDetectedSamplesWithNonDetectsBelowGiveAStatusNotACrash() {
        for (NonDetects method : NonDetects.values()) {
            Reckoning<LognormalFit> fit = SampleSet.of(both(below(2, 0.1), found(0.3, 0.3, 0.3, 0.3)))
                    .then(set -> LognormalFits.of(set, method));
            fit.value().ifPresent(f -> assertTrue(Double.isFinite(f.sdLog())));
            assertTrue(fit.value().isPresent() || !fit.sentence().isBlank());
        }
    }

    @Test
    void averagesRefuseTimesAndConcentrationsThatCannotBe() {
        assertEquals(
                Soundness.INVALID_VALUE, TimeWeightedAverage.of(List.of(), 480).status());
        assertEquals(
                Soundness.INVALID_VALUE,
                TimeWeightedAverage.of(List.of(new Period(-1, 60)), 480).status());
        assertEquals(
                Soundness.INVALID_VALUE,
                TimeWeightedAverage.of(List.of(new Period(1, 0)), 480).status());
        assertEquals(
                Soundness.INVALID_VALUE,
                TimeWeightedAverage.of(List.of(new Period(1, 60)), 0).status());
        assertEquals(
                Soundness.INVALID_VALUE,
                ShortTerm.highest(List.of(new Period(1, Double.NaN)), 15).status());
        assertEquals(Soundness.INVALID_LIMIT, ShortTerm.fromSample(1, 30, 15, 0).status());
        assertEquals(Soundness.INVALID_VALUE, Ceiling.highest(List.of()).status());
    }

    @Test
    void unsampledTimeCountsAsTheWorstUnlessSomebodyKnowsBetter() {
        List<Period> sampled = List.of(new Period(2, 120), new Period(6, 120));
        // (2 x 2 h + 6 x 2 h = 16) + 4 h at 6, at the mean 4, or at 0; over 8 h
        assertEquals(5, need(TimeWeightedAverage.ofShift(sampled, 480, Unsampled.AS_HIGHEST, 480)), 1e-12);
        assertEquals(4, need(TimeWeightedAverage.ofShift(sampled, 480, Unsampled.AS_SAMPLED, 480)), 1e-12);
        assertEquals(2, need(TimeWeightedAverage.ofShift(sampled, 480, Unsampled.AS_UNEXPOSED, 480)), 1e-12);
        assertEquals(
                Soundness.INVALID_VALUE,
                TimeWeightedAverage.ofShift(sampled, 200, Unsampled.AS_SAMPLED, 480)
                        .status());
    }

    @Test
    void shiftsRatiosAndFactorsThatCannotBeAreRefused() {
        assertEquals(Soundness.INVALID_VALUE, ShiftAdjustment.daily(0).status());
        assertEquals(Soundness.INVALID_VALUE, ShiftAdjustment.daily(24).status());
        assertEquals(Soundness.INVALID_VALUE, ShiftAdjustment.weekly(168).status());
        assertEquals(Soundness.INVALID_LIMIT, ShiftAdjustment.equalDose(0, 10).status());
        // 29 CFR 1910.1025 Appendix B: 10 hours, 40 ug/m3
        assertEquals(40, need(ShiftAdjustment.equalDose(50, 10)), 1e-12);
        assertEquals(Soundness.INVALID_VALUE, Ratios.of(Double.NaN, 1).status());
        assertEquals(Soundness.INVALID_VALUE, Wearing.effectiveFactor(0.5, 1).status());
        assertEquals(Soundness.INVALID_VALUE, Wearing.effectiveFactor(20, 1.1).status());
        assertEquals(1, need(Wearing.effectiveFactor(1000, 0)), 1e-12);
    }

    @Test
    void workersNeedNamesRepeatsAndDetectedSamples() {
        assertEquals(
                Soundness.TOO_FEW,
                SampleSet.of(found(1, 2)).then(WorkerVariance::of).status());
        List<Sample> once = List.of(Sample.found(1).by("a"), Sample.found(2).by("b"));
        assertEquals(
                Soundness.TOO_FEW, SampleSet.of(once).then(WorkerVariance::of).status());
        List<Sample> hidden = List.of(
                Sample.found(1).by("a"),
                Sample.found(2).by("a"),
                Sample.below(2).by("b"));
        assertEquals(
                Soundness.TOO_CENSORED,
                SampleSet.of(hidden).then(WorkerVariance::of).status());
        List<Sample> alike = List.of(
                Sample.found(1).by("a"),
                Sample.found(2).by("a"),
                Sample.found(1).by("b"),
                Sample.found(2).by("b"));
        WorkerVariance same = need(SampleSet.of(alike).then(WorkerVariance::of));
        assertEquals(Soundness.DEGENERATE_VARIANCE, same.individual(5).status());
        assertFalse(same.individualTestNeeded());
    }

    @Test
    void anOutcomeNeverHoldsNoNumberAndKeepsItsWarning() {
        assertThrows(IllegalArgumentException.class, () -> Reckoning.of(Double.NaN, Soundness.SOUND, ""));
        assertThrows(IllegalArgumentException.class, () -> Reckoning.<Double>none(Soundness.SOUND, "x"));
        assertEquals(Soundness.OUT_OF_RANGE, Reckoning.of(1.0).map(x -> x / 0).status());
        Reckoning<Double> warned =
                Reckoning.of(2.0, Soundness.WARN_UNSTABLE, "careful").map(x -> x * 2);
        assertEquals(Soundness.WARN_UNSTABLE, warned.status());
        assertEquals(4.0, need(warned));
        assertEquals(
                Soundness.TOO_FEW,
                Reckoning.<Double>none(Soundness.TOO_FEW, "few").map(x -> x).status());
    }
}
