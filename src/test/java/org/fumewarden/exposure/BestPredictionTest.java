package org.fumewarden.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Small cases of the conditional normal distribution, reckoned by hand. */
class BestPredictionTest {
    @Test
    void oneValueShrinksByItsReliability() {
        // Wanted and seen share variance 4; the seen one has 1 of its own: weight 4/5, left 4 - 16/5 = 0.8.
        BestPrediction found = BestPrediction.of(new double[] {10}, new double[][] {{5}}, new double[] {4}, 4);
        assertEquals(8, found.off(), 1e-12);
        assertEquals(0.8, found.variance(), 1e-12);
    }

    @Test
    void twoValuesOfOneStudyCountForLessThanTwoOfTwo() {
        // Shared 4, own 1 each. Apart: weight 4/9 each, left 4 - 2 x 4/9 x 4 = 4/9. Together they share 1 more: 4/11
        // each, left 4 - 8 x 4/11.
        double[] seen = {3, 6};
        double[] with = {4, 4};
        BestPrediction apart = BestPrediction.of(seen, new double[][] {{5, 4}, {4, 5}}, with, 4);
        assertEquals(4, apart.off(), 1e-12);
        assertEquals(4.0 / 9, apart.variance(), 1e-12);
        BestPrediction together = BestPrediction.of(seen, new double[][] {{6, 5}, {5, 6}}, with, 4);
        assertEquals(9 * 4.0 / 11, together.off(), 1e-12);
        assertEquals(4 - 8 * 4.0 / 11, together.variance(), 1e-12);
    }

    @Test
    void nothingSeenLeavesWhatWasExpected() {
        BestPrediction found = BestPrediction.of(new double[0], new double[0][0], new double[0], 2);
        assertEquals(0, found.off());
        assertEquals(2, found.variance());
    }

    @Test
    void theSameValueTwiceIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> BestPrediction.of(new double[] {1, 1}, new double[][] {{1, 1}, {1, 1}}, new double[] {1, 1}, 1));
    }
}
