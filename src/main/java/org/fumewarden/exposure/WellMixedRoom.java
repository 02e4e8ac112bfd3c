package org.fumewarden.exposure;

import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

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

    private double removal() {
        return airflow / volume + deposition;
    }

    private double source() {
        return (generation + airflow * incoming) / volume;
    }

    /** The concentration after a time, from the given start. */
    public Reckoning<Double> after(double time, double start) {
        return timed(time, start, Phi.zeroth(removal() * time), Phi.first(removal() * time));
    }

    /** The average over a time, from the given start. */
    public Reckoning<Double> average(double time, double start) {
        return timed(time, start, Phi.first(removal() * time), Phi.second(removal() * time));
    }

    private Reckoning<Double> timed(double time, double start, double ofStart, double ofSource) {
        if (!(time >= 0) || !Double.isFinite(time) || !(start >= 0) || !Double.isFinite(start)) {
            return Reckoning.none(
                    Soundness.INVALID_VALUE,
                    "A time of " + time + " from " + start + " is not possible. Check the sign.");
        }
        return Reckoning.of(start * ofStart + source() * time * ofSource);
    }
}
