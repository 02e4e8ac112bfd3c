package org.fumewarden.endurance;

import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * A cap that a code sets on top of every method.
 *
 * @param minutes longest use
 * @param says the cap in words
 * @param clause where it stands
 */
public record CodeCap(double minutes, String says, String clause) {

    /** The cap as a bound; it can shorten a time but never justify one. */
    public Reckoning<TimeBound> bound() {
        return new Inputs()
                .positive("The cap in minutes", minutes)
                .<TimeBound>refusal()
                .orElseGet(() ->
                        Reckoning.of(new TimeBound(BoundKind.CODE_CAP, minutes, says + " (" + clause + ").", false)));
    }

    /** A use time fixed for the filter type, which stands alone. */
    public Reckoning<TimeBound> fixedUseTime(double minutesUsed) {
        double left = minutes - minutesUsed;
        return new Inputs()
                .positive("The fixed use time in minutes", minutes)
                .notNegative("The minutes already used", minutesUsed)
                .<TimeBound>refusal()
                .orElseGet(() -> left > 0
                        ? Reckoning.of(new TimeBound(BoundKind.FIXED_USE_TIME, left, says + " (" + clause + ").", true))
                        : Reckoning.refuse(
                                Soundness.USED_UP,
                                says + ": used up, nothing left of the function.",
                                "Fit a new filter."));
    }
}
