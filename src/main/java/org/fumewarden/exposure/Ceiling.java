package org.fumewarden.exposure;

import java.util.List;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Values that may never be exceeded, and the exception with a permitted peak.
 *
 * <p>Source: 29 CFR 1910.1000(a)(1) and (b). Where the instant cannot be measured, the highest 15 minute average stands
 * in, which can only understate.
 */
public final class Ceiling {
    private Ceiling() {}

    /** The highest concentration in the periods. */
    public static Reckoning<Double> highest(List<Period> periods) {
        return TimeWeightedAverage.fault(periods, 1)
                .map(fault -> Reckoning.<Double>none(Soundness.INVALID_VALUE, fault))
                .orElseGet(() -> Reckoning.of(periods.stream()
                        .mapToDouble(Period::concentration)
                        .max()
                        .orElse(0)));
    }
}
