package org.fumewarden.endurance;

import java.util.Optional;

/**
 * Breakthrough curve through two measured points.
 *
 * <p>{@code t = tau + (1 / k') ln(P / (1 - P))}, P the exit over the inlet concentration. Holds for the conditions of the
 * measurement: use it at no more gas, flow, humidity or warmth than measured.
 *
 * @param halfTime minutes until half comes through
 * @param scale minutes, 1 / k'
 */
public record YoonNelson(double halfTime, double scale) {

    /** Fits the curve to two points of one test. */
    public static Reckoning<YoonNelson> through(CurvePoint early, CurvePoint late) {
        Optional<Reckoning<YoonNelson>> refusal = new Inputs()
                .positive("The earlier time", early.minutes())
                .positive("The later time", late.minutes())
                .within("The earlier exit fraction", early.exitFraction(), 1e-6, 1 - 1e-6)
                .within("The later exit fraction", late.exitFraction(), 1e-6, 1 - 1e-6)
                .refusal();
        if (refusal.isPresent()) {
            return refusal.get();
        }
        if (late.minutes() <= early.minutes() || late.exitFraction() <= early.exitFraction()) {
            return Reckoning.refuse(
                    Refusal.NOT_MONOTONE,
                    "More gas must come through later: " + early + ", " + late + ".",
                    "Give the earlier point first.");
        }
        double scale = (late.minutes() - early.minutes()) / (logit(late.exitFraction()) - logit(early.exitFraction()));
        return Reckoning.of(new YoonNelson(early.minutes() - scale * logit(early.exitFraction()), scale));
    }

    /** Minutes until this exit fraction, 0 to 1 exclusive; may be below zero far before the measured points. */
    public double minutes(double exitFraction) {
        return halfTime + scale * logit(exitFraction);
    }

    /** Half time over scale, the figure k of the published form. */
    public double steepness() {
        return halfTime / scale;
    }

    private static double logit(double fraction) {
        return Math.log(fraction / (1 - fraction));
    }
}
