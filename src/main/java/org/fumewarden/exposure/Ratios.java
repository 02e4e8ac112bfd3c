package org.fumewarden.exposure;

import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Concentration over limit, for one agent or for several.
 *
 * <p>Source of the sum: 29 CFR 1910.1000(d)(2)(i), Em = C1/L1 + C2/L2 + ...; EH40/2005 mixed exposures. The single
 * limits have to be met as well.
 */
public final class Ratios {
    private Ratios() {}

    /** Concentration over limit; a limit of zero is refused and never an infinite ratio. */
    public static Reckoning<Double> of(double concentration, double limit) {
        if (!SampleSet.isConcentration(limit)) {
            return Reckoning.none(Soundness.INVALID_LIMIT, limitSentence(limit));
        }
        if (!(concentration >= 0) || !Double.isFinite(concentration)) {
            return Reckoning.none(
                    Soundness.INVALID_VALUE, "The concentration is " + concentration + ". Check the signs.");
        }
        return Reckoning.of(concentration / limit);
    }

    static String limitSentence(double limit) {
        return "The limit is " + limit + ". Check the list for this averaging time.";
    }
}
