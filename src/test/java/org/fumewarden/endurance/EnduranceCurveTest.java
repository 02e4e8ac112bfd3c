package org.fumewarden.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A run time read from the curve of a pack: exact at its points, never beyond them, never milder than any curve through them. */
final class EnduranceCurveTest {
    private static final PackRules RULES = Tables.packRules();

    @Test
    void curveWithAPointThatCannotBeIsRefused() {
        for (double[] bad : List.of(
                new double[] {0, 5, 1, -0.1}, new double[] {0, 5, Double.NaN, 4}, new double[] {0, Double.NaN, 1, 4})) {
            assertEquals(
                    Soundness.INVALID_VALUE,
                    EnduranceCurve.of("pack", points(bad), EnduranceCurve.Scale.OWN, true)
                            .status());
        }
        assertEquals(
                Span.exactly(0), curve(0, 5, 1, 0).hours(1).value().orElseThrow(), "a filter that stops it at once");
    }

    @Test
    void runTimeIsRefusedBeyondTheCurve() {
        assertEquals(
                Soundness.OUTSIDE_TABLE,
                curve(0, 10, 1, 8).runTime(2, 1, Span.exactly(1), RULES).status());
    }

    @Test
    void curveIsExactAtItsPointsAndBetweenNeighboursElsewhere() {
        EnduranceCurve curve = curve(0, 10, 1, 9, 3, 4);
        assertEquals(Span.exactly(9), curve.hours(1).value().orElseThrow());
        assertEquals(new Span(4, 6.5, 9), curve.hours(2).value().orElseThrow());
        assertEquals(Span.exactly(4), curve.hours(3).value().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"-0.01", "3.01", "NaN"})
    void curveIsNeverReadBeyondItsTable(double stage) {
        assertEquals(Soundness.OUTSIDE_TABLE, curve(0, 10, 3, 4).hours(stage).status());
    }

    @Test
    void curveThatRisesIsRefused() {
        assertEquals(
                Soundness.NOT_MONOTONE,
                EnduranceCurve.of("pack", points(0, 5, 1, 6), EnduranceCurve.Scale.OWN, true)
                        .status());
        assertEquals(
                Soundness.NOT_MONOTONE,
                EnduranceCurve.of("pack", points(1, 6, 1, 5), EnduranceCurve.Scale.OWN, true)
                        .status());
        assertEquals(
                Soundness.OUTSIDE_TABLE,
                EnduranceCurve.of("pack", points(0, 5), EnduranceCurve.Scale.OWN, true)
                        .status());
        assertThrows(
                IllegalArgumentException.class,
                () -> new EnduranceCurve("pack", points(0, 5, 1, 6), EnduranceCurve.Scale.OWN, true));
    }

    @Test
    void anyFallingCurveThroughTheSamePointsLiesInTheRange() {
        Random random = new Random(5);
        for (int i = 0; i < 2000; i++) {
            double power = 0.2 + 4 * random.nextDouble();
            double stage = 4 * random.nextDouble();
            EnduranceCurve coarse = curve(0, truth(0, power), 1, truth(1, power), 4, truth(4, power));
            Span hours = coarse.hours(stage).value().orElseThrow();
            double real = truth(stage, power);
            assertTrue(hours.low() <= real + 1e-9 && real <= hours.high() + 1e-9, () -> stage + " " + hours);
        }
    }

    @Test
    void chargeAndReserveScaleTheCurve() {
        EnduranceCurve toReserve = curve(0, 10, 1, 8);
        double half = toReserve
                .runTime(0, 0.525, Span.exactly(1), RULES)
                .value()
                .orElseThrow()
                .minutes()
                .low();
        assertEquals(300, half, 1e-9, "half way between reserve and full is half the run");
        EnduranceCurve toEmpty = new EnduranceCurve("pack", points(0, 10, 1, 8), EnduranceCurve.Scale.OWN, false);
        assertEquals(
                570,
                toEmpty.runTime(0, 1, Span.exactly(1), RULES)
                        .value()
                        .orElseThrow()
                        .minutes()
                        .low(),
                1e-9);
        assertEquals(
                Soundness.BELOW_RESERVE,
                toEmpty.runTime(0, 0.05, Span.exactly(1), RULES).status());
    }

    @Test
    void curvesOfTwoPacksAreNeverMixed() {
        EnduranceTable table = new EnduranceTable(List.of(curve(0, 10, 1, 8)));
        assertTrue(table.curve("pack").value().isPresent());
        Refused<EnduranceCurve> refused = (Refused<EnduranceCurve>) table.curve("other");
        assertTrue(refused.sentence().contains("Name a pack that has one: pack."));
    }

    private static double truth(double stage, double power) {
        return 10 - 9 * Math.pow(stage / 4, power);
    }

    private static EnduranceCurve curve(double... numbers) {
        return EnduranceCurve.of("pack", points(numbers), EnduranceCurve.Scale.OWN, true)
                .value()
                .orElseThrow();
    }

    private static List<EnduranceCurve.Point> points(double... numbers) {
        return java.util.stream.IntStream.range(0, numbers.length / 2)
                .mapToObj(i -> new EnduranceCurve.Point(numbers[2 * i], numbers[2 * i + 1]))
                .toList();
    }
}
