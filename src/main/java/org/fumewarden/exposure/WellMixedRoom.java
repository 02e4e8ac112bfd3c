package org.fumewarden.exposure;

/**
 * A room whose air is perfectly mixed.
 *
 * <p>V dC/dt = G + Q Cin - (Q + k V) C. Screening only: real rooms are not mixed and the air near the source is worse.
 * Any units that fit together will do; usually mg, m3 and min.
 *
 * @param generation mass released into the room per time
 * @param airflow volume of fresh air per time, zero for a sealed room
 * @param volume volume of the room
 * @param incoming concentration of the fresh air
 * @param deposition share lost to surfaces per time
 */
public record WellMixedRoom(double generation, double airflow, double volume, double incoming, double deposition) {
    public WellMixedRoom {
        boolean good = generation >= 0
                && airflow >= 0
                && SampleSet.isConcentration(volume)
                && incoming >= 0
                && deposition >= 0
                && Double.isFinite(generation + airflow + incoming + deposition);
        if (!good) {
            throw new IllegalArgumentException("A room with generation " + generation + ", airflow " + airflow
                    + ", volume " + volume + ", incoming " + incoming + " and deposition " + deposition
                    + " is not possible. Check the signs.");
        }
    }

    /** A room with clean fresh air and no deposition. */
    public static WellMixedRoom of(double generation, double airflow, double volume) {
        return new WellMixedRoom(generation, airflow, volume, 0, 0);
    }

    private double removal() {
        return airflow / volume + deposition;
    }

    private double source() {
        return (generation + airflow * incoming) / volume;
    }

    /** The concentration after a time, from the given start. */
    public Outcome<Double> after(double time, double start) {
        return timed(time, start, Phi.zeroth(removal() * time), Phi.first(removal() * time));
    }

    /** The average over a time, from the given start. */
    public Outcome<Double> average(double time, double start) {
        return timed(time, start, Phi.first(removal() * time), Phi.second(removal() * time));
    }

    private Outcome<Double> timed(double time, double start, double ofStart, double ofSource) {
        if (!(time >= 0) || !Double.isFinite(time) || !(start >= 0) || !Double.isFinite(start)) {
            return Outcome.none(
                    Status.INVALID_VALUE, "A time of " + time + " from " + start + " is not possible. Check the sign.");
        }
        return Outcome.finite(start * ofStart + source() * time * ofSource);
    }

    /** The concentration that the room tends to; a sealed room tends to none. */
    public Outcome<Double> steady() {
        if (removal() == 0) {
            return Outcome.none(
                    Status.NEVER_REACHED, "In a sealed room the concentration rises as long as work goes on.");
        }
        return Outcome.finite(source() / removal());
    }

    /** The time until the target is reached, from the given start, upwards or downwards. */
    public Outcome<Double> timeTo(double target, double start) {
        double slope = source() - removal() * start;
        double left = source() - removal() * target;
        boolean reached = target == start
                || (slope != 0
                        && Math.signum(left) == Math.signum(slope)
                        && Math.signum(target - start) == Math.signum(slope));
        if (!reached) {
            return Outcome.none(
                    Status.NEVER_REACHED, "The room never gets from " + start + " to " + target + ". Give more air.");
        }
        if (target == start) {
            return Outcome.of(0.0);
        }
        double x = -removal() * (target - start) / slope;
        return Outcome.finite(removal() == 0 ? (target - start) / slope : -Math.log1p(x) / removal());
    }
}
