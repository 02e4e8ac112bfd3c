package org.fumewarden.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SweepTest {
    private static final String MANGANESE = "exposures.manganese-respirable.twa";

    private static List<Sweep.TippingPoint> turns(String from, String to) {
        return new Sweep(Benches.of(Benches.BRACKETS), MANGANESE, "mg/m3")
                .tippingPoints(new BigDecimal(from), new BigDecimal(to), 20);
    }

    /** Limit 0.05 mg/m3 (EH40, respirable manganese) times the factors 20 and 40 of HSG53 (memory): 1 and 2 mg/m3. */
    @Test
    @Tag("ci")
    void theAdviceTurnsExactlyAtLimitTimesFactorAndTheBorderStillBelongsBelow() {
        List<Sweep.TippingPoint> turns = turns("0.3", "3");
        assertEquals(
                List.of("1", "2"),
                turns.stream().map(t -> t.at().toPlainString()).toList());
        assertTrue(turns.stream().allMatch(Sweep.TippingPoint::inclusive));
        assertTrue(turns.get(0).turned().stream().anyMatch(d -> d.what().equals("respirator th2")));
        assertTrue(turns.get(1).turned().stream().anyMatch(d -> d.what().equals("respirator th3")));
    }

    @Test
    void whereNothingTurnsNoPointIsFound() {
        assertEquals(List.of(), turns("0.06", "0.09"));
    }

    @Test
    void pointsRunFromTheFirstValueToTheLast() {
        List<Sweep.Point> points = new Sweep(Benches.of(Benches.BRACKETS), MANGANESE, "mg/m3")
                .points(new BigDecimal("0.01"), new BigDecimal("5"), 7);
        assertEquals(7, points.size());
        assertEquals(new BigDecimal("0.01"), points.get(0).value());
        assertEquals(new BigDecimal("5"), points.get(6).value());
    }

    @ParameterizedTest
    @CsvSource({
        "0.9999999999999, 1.0000000000001, 1",
        "0.1249999999999, 0.1250000000001, 0.125",
        "1999.9999, 2000.0001, 2E+3",
        "0.33333333, 0.33333334, 0.33333333",
        "0.000499999, 0.000500001, 0.0005"
    })
    void theShortestDecimalOfAnIntervalIsFound(String low, String high, String shortest) {
        assertEquals(new BigDecimal(shortest), Sweep.shortest(new BigDecimal(low), new BigDecimal(high)));
    }
}
