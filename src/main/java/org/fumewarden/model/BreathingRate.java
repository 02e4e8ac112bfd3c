package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * Breathing at a work rate at sea level, litres per minute.
 *
 * @param id of the work rate
 * @param peak inhalation flow without speech
 * @param peakSpeech inhalation flow with speech
 */
public record BreathingRate(RowRef ref, String id, BigDecimal minuteVolume, BigDecimal peak, BigDecimal peakSpeech)
        implements Row {}
