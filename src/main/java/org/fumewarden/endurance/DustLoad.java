package org.fumewarden.endurance;

import java.util.Optional;
import org.fumewarden.model.Reckoning;

/**
 * Dust that a filter set takes up, all of what is captured counted, whatever the wearer breathes.
 *
 * @param milligramsPerMinute on the whole set
 * @param preFilterShare of it that stays on the pre-filter, 0 without one
 */
public record DustLoad(double milligramsPerMinute, double preFilterShare) {

    /**
     * Load by concentration and blower flow.
     *
     * @param milligramsPerCubicMetre before the filter
     * @param litresPerMinute that the blower moves
     * @param captured share that the set captures, 1 on the safe side
     * @param preFilterShare share of the captured dust that stays on the pre-filter
     */
    public static Reckoning<DustLoad> of(
            double milligramsPerCubicMetre, double litresPerMinute, double captured, double preFilterShare) {
        Optional<Reckoning<DustLoad>> bad = new Inputs()
                .notNegative("The concentration in mg/m3", milligramsPerCubicMetre)
                .positive("The flow in L/min", litresPerMinute)
                .within("The captured share", captured, 0, 1)
                .within("The share on the pre-filter", preFilterShare, 0, 1)
                .refusal();
        return bad.orElseGet(() ->
                Reckoning.of(new DustLoad(milligramsPerCubicMetre * litresPerMinute / 1e3 * captured, preFilterShare)));
    }

    /** Milligrams on the whole set after these minutes. */
    public double milligrams(double minutes) {
        return milligramsPerMinute * minutes;
    }

    /** Milligrams per minute on the pre-filter. */
    public double onPreFilter() {
        return milligramsPerMinute * preFilterShare;
    }

    /** Milligrams per minute on the main filter. */
    public double onMainFilter() {
        return milligramsPerMinute * (1 - preFilterShare);
    }
}
