package org.fumewarden.exposure;

import static org.fumewarden.exposure.AirVectors.need;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.fumewarden.model.Soundness;
import org.junit.jupiter.api.Test;

/** Tolerance factors against whole tables. */
class ToleranceTablesTest {
    /** EN 689:2018 Annex F, three decimals for 6 to 30 samples; from memory. */
    private static final double[] ANNEX_F = {
        2.187, 2.12, 2.072, 2.035, 2.005, 1.981, 1.961, 1.944, 1.929, 1.917, 1.905, 1.895, 1.886, 1.878, 1.87, 1.863,
        1.857, 1.851, 1.846, 1.841, 1.836, 1.832, 1.828, 1.824, 1.82
    };

    /** Coverage 95 %, confidence 70 %, 3 to 50 samples; scipy 1.17.1 and mpmath 1.3.0 agree. */
    private static final double[] EXACT_70 = {
        2.809138, 2.453078, 2.285939, 2.186745, 2.120082, 2.071697, 2.034694, 2.005307, 1.981292, 1.961224,
        1.944151, 1.929411, 1.916527, 1.905149, 1.895009, 1.885903, 1.87767, 1.870182, 1.863334, 1.857042,
        1.851237, 1.845859, 1.84086, 1.836198, 1.831837, 1.827747, 1.823902, 1.820278, 1.816855, 1.813617,
        1.810546, 1.807629, 1.804855, 1.802211, 1.799689, 1.797279, 1.794974, 1.792766, 1.790648, 1.788615,
        1.786661, 1.784782, 1.782973, 1.781229, 1.779547, 1.777923, 1.776355, 1.774838
    };

    /** Coverage 95 %, confidence 95 %, 3 to 50 samples; scipy 1.17.1 and mpmath 1.3.0 agree. */
    private static final double[] EXACT_95 = {
        7.6559, 5.143875, 4.202681, 3.707684, 3.399469, 3.187294, 3.031238, 2.910963, 2.814994, 2.736343,
        2.670504, 2.614434, 2.566, 2.523659, 2.486264, 2.452947, 2.423036, 2.396002, 2.371422, 2.348955,
        2.328323, 2.309294, 2.291675, 2.275305, 2.260045, 2.245779, 2.232406, 2.219838, 2.207998, 2.196822,
        2.18625, 2.176232, 2.16672, 2.157675, 2.149061, 2.140845, 2.132998, 2.125494, 2.118308, 2.11142,
        2.10481, 2.09846, 2.092353, 2.086475, 2.080812, 2.075352, 2.070083, 2.064993
    };

    /** Chance that the test of EN 689 passes 6 and 9 samples at true shares above the limit; scipy 1.17.1. */
    private static final double[] SHARES = {0.01, 0.02, 0.05, 0.1, 0.2, 0.3};

    private static final double[] PASSES_6 = {0.634571, 0.501464, 0.3, 0.155077, 0.050339, 0.017029};
    private static final double[] PASSES_9 = {0.727179, 0.563856, 0.3, 0.123666, 0.025078, 0.005159};

    @Test
    void theTableOfTheStandardIsReproduced() {
        for (int i = 0; i < ANNEX_F.length; i++) {
            assertEquals(ANNEX_F[i], need(ToleranceFactor.of(6 + i, 0.95, 0.70)), 0.000501, "n = " + (6 + i));
        }
    }

    @Test
    void sixDecimalsHoldFrom3To50Samples() {
        assertEquals(48, EXACT_70.length);
        assertEquals(48, EXACT_95.length);
        for (int i = 0; i < EXACT_70.length; i++) {
            assertEquals(EXACT_70[i], need(ToleranceFactor.of(3 + i, 0.95, 0.70)), 5.1e-7, "n = " + (3 + i));
            assertEquals(EXACT_95[i], need(ToleranceFactor.of(3 + i, 0.95, 0.95)), 5.1e-7, "n = " + (3 + i));
        }
    }

    @Test
    void theTestPassesAsOftenAsItsTheorySays() {
        for (int i = 0; i < SHARES.length; i++) {
            assertEquals(PASSES_6[i], passes(6, SHARES[i]), 1e-6);
            assertEquals(PASSES_9[i], passes(9, SHARES[i]), 1e-6);
        }
    }

    private static double passes(int n, double above) {
        double root = Math.sqrt(n);
        double required = need(ToleranceFactor.of(n, 0.95, 0.70));
        return 1 - new NoncentralT(n - 1).below(required * root, StandardNormal.quantile(1 - above) * root);
    }

    @Test
    void theUnifiedGuidanceLimitWithNonDetectsIsReproduced() {
        // US EPA Unified Guidance (2009) example 15-1 as worked in the EnvStats manual: UTL 90 %, 95 % confidence of
        // the
        // logarithms 4.708904, with the factor of all 25 samples.
        LognormalFit all = new LognormalFit(2.215904669, 1.356291184, 25, 25, "given");
        assertEquals(4.708904, Math.log(need(all.tolerance(0.90, 0.95))), 1e-6);
        // Our own limit counts the 19 detected samples only and lies above it.
        LognormalFit ours = new LognormalFit(2.215904669, 1.356291184, 25, 19, "given");
        assertEquals(true, need(ours.tolerance(0.90, 0.95)) > need(all.tolerance(0.90, 0.95)));
    }

    @Test
    void factorsThatCannotBeAreRefused() {
        assertEquals(Soundness.TOO_FEW, ToleranceFactor.of(1, 0.95, 0.7).status());
        assertEquals(Soundness.INVALID_VALUE, ToleranceFactor.of(6, 95, 0.7).status());
        assertEquals(Soundness.INVALID_VALUE, ToleranceFactor.of(6, 0.95, 1).status());
        assertEquals(
                Soundness.INVALID_VALUE, ToleranceFactor.of(6, Double.NaN, 0.7).status());
    }
}
