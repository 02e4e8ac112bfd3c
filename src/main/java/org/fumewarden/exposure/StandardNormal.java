package org.fumewarden.exposure;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The standard normal distribution. */
public final class StandardNormal {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private StandardNormal() {}

    /** The share below {@code z}. */
    public static double below(double z) {
        return STANDARD.cumulativeProbability(z);
    }

    /** The share above {@code z}. */
    public static double above(double z) {
        return STANDARD.survivalProbability(z);
    }

    /** The value with the given share below it, 0 < share < 1. */
    public static double quantile(double share) {
        return STANDARD.inverseCumulativeProbability(share);
    }

    /** Density over share below, stable far into the lower tail. */
    static double densityOverBelow(double z) {
        if (z < -30) {
            double inverse = 1 / (z * z);
            return -z / (1 - inverse + 3 * inverse * inverse);
        }
        return STANDARD.density(z) / STANDARD.cumulativeProbability(z);
    }
}
