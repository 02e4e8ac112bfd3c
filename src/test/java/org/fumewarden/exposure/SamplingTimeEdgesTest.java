package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.exposure.Appraisal.Question;
import org.fumewarden.exposure.TimeWeightedAverage.Unsampled;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the times of samples, rooms and figures turn. */
final class SamplingTimeEdgesTest {
    @ParameterizedTest(name = "{0} min of {1}: {2}")
    @CsvSource({
        "15, 15, false",
        "15.1, 15, true",
        "5, 15, false",
        "119.9, 480, true",
        "120, 480, false",
        "600, 480, false",
        "3.9, 16, true",
        "4, 16, false",
        "17, 16, false"
    })
    void timeOfASampleFitsItsLimit(double minutes, double averaging, boolean warned) {
        Question question =
                new Question(1, OptionalDouble.of(averaging), Optional.empty(), NonDetects.MAXIMUM_LIKELIHOOD);
        List<Sample> samples =
                List.of(Sample.found(0.2), new Sample(0.3, true, OptionalDouble.of(minutes), Optional.empty()));
        assertEquals(warned, EdgesTest.warns(need(Appraisal.of(samples, question)), Soundness.WARN_SAMPLE_TIME));
    }

    /** By hand, window of 15 min: 10 min at 3 and 5 at 6 give 4 in the middle of zeros. */
    @Test
    void highestWindowMayBeginOrEndOnAnEdge() {
        List<Period> rising = List.of(new Period(0, 60), new Period(3, 60), new Period(6, 5), new Period(0, 60));
        assertEquals(4, need(ShortTerm.highest(rising, 15)), 1e-12, "ends with the peak");
        List<Period> falling = List.of(new Period(0, 60), new Period(6, 5), new Period(3, 60), new Period(0, 60));
        assertEquals(4, need(ShortTerm.highest(falling, 15)), 1e-12, "begins with the peak");
    }

    @ParameterizedTest(name = "{0} over {1} min against {2}: {3}")
    @CsvSource({
        "2, 10, 1, SOUND",
        "2, 15, 1, SOUND",
        "2, 16, 2, TOO_FEW",
        "2.1, 16, 2, INFERRED_EXCEEDANCE",
        "2, -1, 1, INVALID_VALUE"
    })
    void longSampleGivesNoShortTermValue(double mean, double minutes, double limit, Soundness status) {
        assertEquals(status, ShortTerm.fromSample(mean, minutes, 15, limit).status());
    }

    /** By hand: 2 mg/m3 for 10 of 15 min. */
    @Test
    void shortEventIsAveragedOverTheWindow() {
        assertEquals(4 / 3.0, need(ShortTerm.fromSample(2, 10, 15, 1)), 1e-12);
        assertEquals(2, need(ShortTerm.fromSample(2, 15, 15, 1)), 1e-12);
    }

    @Test
    void shiftMayBeSampledWholly() {
        List<Period> whole = List.of(new Period(2, 480));
        assertEquals(2, need(TimeWeightedAverage.ofShift(whole, 480, Unsampled.AS_HIGHEST, 480)));
        assertEquals(
                Soundness.INVALID_VALUE,
                TimeWeightedAverage.ofShift(List.of(), 480, Unsampled.AS_HIGHEST, 480)
                        .status());
        assertEquals(
                Soundness.INVALID_VALUE,
                TimeWeightedAverage.ofShift(whole, 479, Unsampled.AS_HIGHEST, 480)
                        .status());
    }

    @Test
    void nothingAtAllIsALevelToo() {
        assertEquals(0, need(Ratios.of(0, 1)));
    }

    @ParameterizedTest(name = "factor {0}, worn {1}: {2}")
    @CsvSource({
        "1, 0, true",
        "20, 1, true",
        "0.99, 1, false",
        "20, -0.01, false",
        "20, 1.01, false",
        "Infinity, 1, false"
    })
    void factorIsOneOrMoreAndTheShareAShare(double factor, double worn, boolean possible) {
        assertEquals(possible, Wearing.effectiveFactor(factor, worn).value().isPresent());
    }

    @Test
    void roomsAndPlacesThatCannotBeAreRefused() {
        WellMixedRoom room = new WellMixedRoom(100, 20, 100, 0, 0);
        assertEquals(0, need(room.after(0, 0)), "at once");
        assertEquals(Soundness.INVALID_VALUE, room.after(-1, 0).status());
        assertEquals(Soundness.INVALID_VALUE, room.after(1, -1).status());
    }

    @Test
    void promiseIsKeptAtItsFigure() {
        assertTrue(new NumericsSelfCheck.Line("any", 1, 1e-9, 1e-9, "none").kept());
    }

    @Test
    void valueThatLeavesTheNumbersKeepsNoWarning() {
        Reckoning<Double> warned =
                Reckoning.of(2.0, Soundness.WARN_UNSTABLE, "careful").map(x -> x / 0);
        assertEquals(Soundness.OUT_OF_RANGE, warned.status());
        assertTrue(warned.value().isEmpty());
    }
}
