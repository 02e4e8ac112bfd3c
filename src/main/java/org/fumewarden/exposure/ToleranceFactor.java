package org.fumewarden.exposure;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * One-sided tolerance factors of the normal distribution, exact by the noncentral t.
 *
 * <p>mean + K s lies above the share {@code coverage} of the population with the probability {@code confidence}. Source:
 * Odeh and Owen, Tables for Normal Tolerance Limits (1980); EN 689:2018 Annex F uses coverage 0.95, confidence 0.70.
 * The usual closed approximation is up to 17 % too small there, on the unsafe side, and is not used.
 */
public final class ToleranceFactor {
    private static final int REMEMBERED = 1000;
    /** By number, coverage and confidence. */
    private static final Map<List<Number>, Double> KNOWN = new ConcurrentHashMap<>();

    private ToleranceFactor() {}

    /**
     * The factor K.
     *
     * @param n number of samples, 2 or more
     * @param coverage share of the population, 0 to 1 without the ends
     * @param confidence probability, 0 to 1 without the ends; below 0.5 gives the factor of a lower confidence limit
     */
    public static Reckoning<Double> of(int n, double coverage, double confidence) {
        if (n < 2) {
            return Reckoning.none(
                    Soundness.TOO_FEW, "A tolerance limit needs 2 or more samples; there are " + n + ". Take more.");
        }
        if (!isShare(coverage) || !isShare(confidence)) {
            return Reckoning.none(
                    Soundness.INVALID_VALUE,
                    "Coverage " + coverage + " and confidence " + confidence
                            + " must lie between 0 and 1. Write 0.95 for 95 %.");
        }
        List<Number> key = List.of(n, coverage, confidence);
        Double known = KNOWN.get(key);
        Reckoning<Double> factor = known == null ? solve(n, coverage, confidence) : Reckoning.of(known);
        if (KNOWN.size() < REMEMBERED) {
            factor.value().ifPresent(k -> KNOWN.put(key, k));
        }
        return factor;
    }

    /** The factor, reckoned anew. */
    static Reckoning<Double> solve(int n, double coverage, double confidence) {
        NoncentralT distribution = new NoncentralT(n - 1);
        double root = Math.sqrt(n);
        double z = StandardNormal.quantile(coverage);
        OptionalDouble k = Roots.ofIncreasing(x -> distribution.below(x * root, z * root) - confidence, z, 1);
        return Reckoning.of(k.orElse(Double.NaN));
    }

    static boolean isShare(double value) {
        return value > 0 && value < 1;
    }
}
