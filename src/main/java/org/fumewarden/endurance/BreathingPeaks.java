package org.fumewarden.endurance;

/**
 * Peak inhalation flow over minute volume.
 *
 * @param silent without speech
 * @param speaking with speech
 */
public record BreathingPeaks(double silent, double speaking) {
    public BreathingPeaks {
        new Inputs()
                .within("silent", silent, 1, 20)
                .within("speaking", speaking, 1, 20)
                .orThrow("Breathing peaks");
    }

    /** Peak flow of a minute volume, litres per minute. */
    public double peak(double minuteVolume, boolean speech) {
        return minuteVolume * (speech ? speaking : silent);
    }

    /** Largest minute volume whose peak a supply still covers, litres per minute. */
    public double covered(double supply, boolean speech) {
        return supply / (speech ? speaking : silent);
    }
}
