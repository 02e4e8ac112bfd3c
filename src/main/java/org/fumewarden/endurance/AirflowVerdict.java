package org.fumewarden.endurance;

/**
 * Whether the supply covers the breathing.
 *
 * <p>Adequacy never raises a protection factor, and its lack warns without lowering one.
 *
 * @param adequacy the outcome
 * @param says for the reader
 */
public record AirflowVerdict(Adequacy adequacy, String says) {

    /** How supply and demand compare. */
    public enum Adequacy {
        /** Supply at or above the peak of every breath. */
        COVERS_PEAKS,
        /** Peaks above the supply: short dips below outside pressure are possible. */
        PEAKS_ABOVE_SUPPLY,
        /** Even the mean breathing is above the supply. */
        MEAN_ABOVE_SUPPLY
    }
}
