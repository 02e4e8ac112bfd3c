package org.fumewarden.exposure;

import java.util.List;

/**
 * Values that may never be exceeded, and the exception with a permitted peak.
 *
 * <p>Source: 29 CFR 1910.1000(a)(1) and (b). Where the instant cannot be measured, the highest 15 minute average stands
 * in, which can only understate.
 */
public final class Ceiling {
    private Ceiling() {}

    /** The highest concentration in the periods. */
    public static Outcome<Double> highest(List<Period> periods) {
        return TimeWeightedAverage.fault(periods, 1)
                .map(fault -> Outcome.<Double>none(Status.INVALID_VALUE, fault))
                .orElseGet(() -> Outcome.finite(periods.stream()
                        .mapToDouble(Period::concentration)
                        .max()
                        .orElse(0)));
    }

    /**
     * A ceiling with a permitted peak above it.
     *
     * @param ceiling value that only the permitted minutes may exceed
     * @param peak value that nothing may exceed
     * @param minutes permitted time between ceiling and peak, in one shift
     */
    public record Peak(double ceiling, double peak, double minutes) {
        public Peak {
            if (!(ceiling > 0) || !(peak >= ceiling) || !(minutes >= 0)) {
                throw new IllegalArgumentException(
                        "Ceiling " + ceiling + ", peak " + peak + " and " + minutes + " minutes do not fit together.");
            }
        }

        /** True when the periods stay within the exception; the 8 hour average has to be met as well. */
        public boolean allows(List<Period> periods) {
            if (TimeWeightedAverage.fault(periods, 1).isPresent()) {
                return false;
            }
            double above = periods.stream()
                    .filter(p -> p.concentration() > ceiling)
                    .mapToDouble(Period::minutes)
                    .sum();
            return above <= minutes && periods.stream().allMatch(p -> p.concentration() <= peak);
        }
    }
}
