package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.fumewarden.exposure.TwoZoneRoom.Fields;
import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;

/** Closed forms of the rooms against integration step by step (classical Runge-Kutta, written here). */
class RoomModelsTest {
    private static final int STEPS = 20000;
    private static final double PROMISED = 1e-6;

    private final Random random = new Random(1915);

    private double between(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    /** Near, far and the integrals of both after a time. */
    private static double[] integrated(TwoZoneRoom room, Fields start, double time) {
        double[] y = {start.near(), start.far(), 0, 0};
        double h = time / STEPS;
        for (int i = 0; i < STEPS; i++) {
            double[] k1 = slope(room, y);
            double[] k2 = slope(room, moved(y, k1, h / 2));
            double[] k3 = slope(room, moved(y, k2, h / 2));
            double[] k4 = slope(room, moved(y, k3, h));
            for (int j = 0; j < y.length; j++) {
                y[j] += h / 6 * (k1[j] + 2 * k2[j] + 2 * k3[j] + k4[j]);
            }
        }
        return y;
    }

    private static double[] slope(TwoZoneRoom r, double[] y) {
        return new double[] {
            (r.generation() + r.exchange() * (y[1] - y[0])) / r.nearVolume(),
            (r.exchange() * (y[0] - y[1]) - r.airflow() * y[1]) / r.farVolume(),
            y[0],
            y[1]
        };
    }

    private static double[] moved(double[] y, double[] k, double h) {
        double[] moved = y.clone();
        for (int j = 0; j < y.length; j++) {
            moved[j] += h * k[j];
        }
        return moved;
    }

    @Test
    void twoZonesAgreeWithIntegrationFromAnyStart() {
        for (int i = 0; i < 40; i++) {
            double airflow = i % 8 == 0 ? 0 : between(0.5, 60);
            TwoZoneRoom room = new TwoZoneRoom(
                    i % 7 == 0 ? 0 : between(1, 400), airflow, between(2, 30), between(0.1, 3), between(15, 800));
            Fields start = new Fields(random.nextDouble() * 5, random.nextDouble() * 5);
            double time = between(2, 240);
            double[] expected = integrated(room, start, time);
            Fields end = room.after(time, start);
            Fields average = room.average(time, start);
            assertEquals(expected[0], end.near(), PROMISED * expected[0]);
            assertEquals(expected[1], end.far(), PROMISED * expected[1]);
            assertEquals(expected[2] / time, average.near(), PROMISED * average.near());
            assertEquals(expected[3] / time, average.far(), PROMISED * average.far());
        }
    }

    @Test
    void aMixedRoomIsTheFarFieldOfNearlyInstantExchange() {
        WellMixedRoom mixed = new WellMixedRoom(30, 8, 100, 0, 0);
        TwoZoneRoom zones = new TwoZoneRoom(30, 8, 1e7, 0.5, 99.5);
        assertEquals(need(mixed.after(25, 0)), zones.after(25, Fields.CLEAN).far(), 1e-5);
        assertEquals(need(mixed.average(25, 0)), zones.average(25, Fields.CLEAN).near(), 1e-4);
    }

    @Test
    void aSealedRoomFillsInAStraightLine() {
        WellMixedRoom sealed = new WellMixedRoom(12, 0, 8, 0, 0);
        assertEquals(1.5 * 60, need(sealed.after(60, 0)), 1e-12);
    }

    @Test
    void roomsThatCannotBeAreRefusedWithAHint() {
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertTrue(assertThrows(IllegalArgumentException.class, () -> new WellMixedRoom(bad, 1, 1, 0, 0))
                    .getMessage()
                    .contains("Check"));
            assertThrows(IllegalArgumentException.class, () -> new TwoZoneRoom(1, bad, 1, 1, 1));
        }
        assertThrows(IllegalArgumentException.class, () -> new WellMixedRoom(1, 1, 0, 0, 0));
        assertEquals(
                Soundness.INVALID_VALUE,
                new WellMixedRoom(1, 1, 1, 0, 0).after(-1, 0).status());
    }
}
