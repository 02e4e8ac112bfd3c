package org.fumewarden.exposure;

import java.util.List;

/**
 * Concentration over limit, for one agent or for several.
 *
 * <p>Source of the sum: 29 CFR 1910.1000(d)(2)(i), Em = C1/L1 + C2/L2 + ...; EH40/2005 mixed exposures. The single
 * limits have to be met as well.
 */
public final class Ratios {
    private Ratios() {}

    /** How agents act together. */
    public enum Together {
        /** Like effects: the ratios add up. */
        ADDITIVE,
        /** Separate effects: the largest ratio decides. */
        INDEPENDENT
    }

    /** Concentration over limit; a limit of zero is refused and never an infinite ratio. */
    public static Outcome<Double> of(double concentration, double limit) {
        if (!SampleSet.isConcentration(limit)) {
            return Outcome.none(Status.INVALID_LIMIT, limitSentence(limit));
        }
        if (!(concentration >= 0) || !Double.isFinite(concentration)) {
            return Outcome.none(Status.INVALID_VALUE, "The concentration is " + concentration + ". Check the signs.");
        }
        return Outcome.finite(concentration / limit);
    }

    /** The ratio of a mixture: the sum or the largest of {@code concentrations[i] / limits[i]}. */
    public static Outcome<Double> mixture(List<Double> concentrations, List<Double> limits, Together effects) {
        if (concentrations.isEmpty() || concentrations.size() != limits.size()) {
            return Outcome.none(
                    Status.INVALID_VALUE,
                    "There are " + concentrations.size() + " concentrations and " + limits.size()
                            + " limits. Give each agent its limit.");
        }
        double sum = 0;
        double largest = 0;
        for (int i = 0; i < limits.size(); i++) {
            Outcome<Double> ratio = of(concentrations.get(i), limits.get(i));
            if (ratio.value().isEmpty()) {
                return ratio;
            }
            sum += ratio.value().get();
            largest = Math.max(largest, ratio.value().get());
        }
        return Outcome.finite(effects == Together.ADDITIVE ? sum : largest);
    }

    static String limitSentence(double limit) {
        return "The limit is " + limit + ". Check the list for this averaging time.";
    }
}
