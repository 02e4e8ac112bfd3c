package org.fumewarden.exposure;

/**
 * The noncentral t distribution, by quadrature over the chi distribution of the standard deviation.
 *
 * <p>P(T' &lt;= t) = integral of Phi(t s - delta) over the density of s, where nu s^2 is chi-squared with nu degrees of
 * freedom. The variable is ln s; the weights are normalised by their own sum, so no gamma function enters. Largest
 * relative error of tolerance factors against 30-digit values: {@link NumericsSelfCheck}.
 */
final class NoncentralT {
    private static final int PANELS = 64;

    private final double[] scale;
    private final double[] weight;

    /** Prepares the weights for the given degrees of freedom, 1 or more. */
    NoncentralT(int freedom) {
        double root = Math.sqrt(2.0 * freedom);
        double from = -8 / root - 40.0 / freedom;
        double to = 0.5 * Math.log(1 + 20 / root + 80.0 / freedom);
        Quadrature.Rule rule = Quadrature.rule(from, to, PANELS);
        scale = new double[rule.nodes().length];
        weight = new double[scale.length];
        double sum = 0;
        for (int i = 0; i < scale.length; i++) {
            double w = rule.nodes()[i];
            scale[i] = Math.exp(w);
            weight[i] = rule.weights()[i] * Math.exp(-0.5 * freedom * (Math.expm1(2 * w) - 2 * w));
            sum += weight[i];
        }
        for (int i = 0; i < weight.length; i++) {
            weight[i] /= sum;
        }
    }

    /** The share of the distribution at or below {@code t}. */
    double below(double t, double noncentrality) {
        double sum = 0;
        for (int i = 0; i < scale.length; i++) {
            sum += weight[i] * StandardNormal.below(t * scale[i] - noncentrality);
        }
        return sum;
    }
}
