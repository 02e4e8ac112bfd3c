package org.fumewarden.exposure;

import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Limits for shifts longer than 8 hours or weeks longer than 40.
 *
 * <p>The lead rule is law where a code says so; the others are advisory unless a code orders them. No adjustment ever
 * raises a limit.
 */
public final class ShiftAdjustment {
    private static final double DAY = 8;
    private static final double WEEK = 40;
    private static final double HOURS_IN_DAY = 24;
    private static final double HOURS_IN_WEEK = 168;

    private ShiftAdjustment() {}

    /**
     * A limit that falls so that the dose of the day stays the same: limit x 8 / h above 8 hours.
     *
     * <p>With a limit of 50 ug/m3 this is the rule 400 / h. Source: 29 CFR 1910.1025(c)(2) and 1926.62(c)(2). The action
     * level is not reduced.
     */
    public static Reckoning<Double> equalDose(double limit, double hoursPerDay) {
        if (!SampleSet.isConcentration(limit)) {
            return Reckoning.none(Soundness.INVALID_LIMIT, Ratios.limitSentence(limit));
        }
        return factor(DAY / hoursPerDay, hoursPerDay, HOURS_IN_DAY).map(f -> limit * f);
    }

    /** The daily factor (8/h)(24-h)/16, at most 1. Source: Brief and Scala 1975. Advisory. */
    public static Reckoning<Double> daily(double hoursPerDay) {
        return factor(
                DAY / hoursPerDay * (HOURS_IN_DAY - hoursPerDay) / (HOURS_IN_DAY - DAY), hoursPerDay, HOURS_IN_DAY);
    }

    /** The weekly factor (40/h)(168-h)/128, at most 1. Source: Brief and Scala 1975, from memory. Advisory. */
    public static Reckoning<Double> weekly(double hoursPerWeek) {
        return factor(
                WEEK / hoursPerWeek * (HOURS_IN_WEEK - hoursPerWeek) / (HOURS_IN_WEEK - WEEK),
                hoursPerWeek,
                HOURS_IN_WEEK);
    }

    /** The smaller of the daily and the weekly factor. */
    public static Reckoning<Double> stricter(double hoursPerDay, double hoursPerWeek) {
        return daily(hoursPerDay).then(day -> weekly(hoursPerWeek).map(week -> Math.min(day, week)));
    }

    private static Reckoning<Double> factor(double raw, double hours, double whole) {
        if (!SampleSet.isConcentration(hours) || hours >= whole) {
            return Reckoning.none(
                    Soundness.INVALID_VALUE,
                    hours + " hours do not fit into " + whole + ". Write the length of the day.");
        }
        return Reckoning.of(Math.min(1, raw));
    }
}
