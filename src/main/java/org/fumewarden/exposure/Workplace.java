package org.fumewarden.exposure;

/**
 * The room of an estimate.
 *
 * @param airflow fresh air in m3/min
 * @param volume whole room in m3
 * @param exchange air exchanged between near and far field in m3/min
 * @param nearRadius radius of the half sphere that is the near field, in m
 */
public record Workplace(Spread airflow, double volume, Spread exchange, double nearRadius) {
    public Workplace {
        double near = new TwoZoneRoom.HalfSphere(nearRadius, 1).volume();
        if (!SampleSet.isConcentration(nearRadius) || !(volume > near) || !Double.isFinite(volume)) {
            throw new IllegalArgumentException("A room of " + volume + " m3 does not hold a near field of radius "
                    + nearRadius + " m. Maybe a unit is wrong.");
        }
    }

    /** Where somebody stands. */
    public enum Place {
        /** At the arc: the near field. */
        AT_THE_ARC,
        /** Elsewhere in the room: the far field. */
        ELSEWHERE
    }

    /** The average over a time from clean air, for one unit of fume per time. */
    double averagePerRate(double flow, double exchanged, Place place, double minutes) {
        double near = new TwoZoneRoom.HalfSphere(nearRadius, 1).volume();
        TwoZoneRoom.Fields average =
                new TwoZoneRoom(1, flow, exchanged, near, volume - near).average(minutes, TwoZoneRoom.Fields.CLEAN);
        return place == Place.AT_THE_ARC ? average.near() : average.far();
    }
}
