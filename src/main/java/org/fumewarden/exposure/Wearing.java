package org.fumewarden.exposure;

import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/** What is left inside a respirator, over the time it is worn and the time it is off. */
public final class Wearing {
    private Wearing() {}

    /**
     * The protection that is left when the respirator is off for part of the exposed time: 1 / ((1-w) + w / factor).
     *
     * <p>Derived by time-weighting; 29 CFR 1926.62(c)(3) allows such averaging for lead, no other rule is known to. It
     * shows what breaks cost; it is no reason to take a respirator off.
     *
     * @param factor protection factor while worn, 1 or more
     * @param wornShare share of the exposed time, 0 to 1
     */
    public static Reckoning<Double> effectiveFactor(double factor, double wornShare) {
        if (!(factor >= 1) || !Double.isFinite(factor) || !(wornShare >= 0 && wornShare <= 1)) {
            return Reckoning.none(
                    Soundness.INVALID_VALUE,
                    "A factor of " + factor + " worn for " + wornShare
                            + " of the time is not possible. Write 0.95 for 95 %.");
        }
        return Reckoning.of(1 / ((1 - wornShare) + wornShare / factor));
    }
}
