package org.fumewarden.endurance;

import java.util.OptionalDouble;

/**
 * Breathing at a work rate, sea level.
 *
 * @param id resting, low, moderate, high, very-high or above
 * @param minuteVolume litres per minute
 * @param peak inhalation flow without speech, litres per minute
 * @param peakSpeech inhalation flow with speech, litres per minute
 * @param atMostMinutes longest time a person keeps it up, empty for the ordinary classes
 */
public record WorkRate(String id, double minuteVolume, double peak, double peakSpeech, OptionalDouble atMostMinutes) {
    public WorkRate {
        new Inputs()
                .positive("minute-volume", minuteVolume)
                .positive("peak", peak)
                .positive("peak-speech", peakSpeech)
                .orThrow("Work rate " + id);
    }
}
