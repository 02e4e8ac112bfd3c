package org.fumewarden.exposure;

import java.util.function.DoubleUnaryOperator;

/** Ten-point Gauss-Legendre quadrature on equal panels. */
final class Quadrature {
    /** Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 25.4, n = 10; recomputed to 17 digits. */
    private static final double[] NODES = {
        0.14887433898163122, 0.43339539412924719, 0.67940956829902441, 0.86506336668898451, 0.97390652851717172
    };

    private static final double[] WEIGHTS = {
        0.29552422471475287, 0.26926671930999636, 0.21908636251598204, 0.14945134915058059, 0.066671344308688138
    };

    private Quadrature() {}

    /** Nodes of the rule on one interval, and their weights. */
    record Rule(double[] nodes, double[] weights) {}

    static Rule rule(double from, double to, int panels) {
        int perPanel = 2 * NODES.length;
        double[] nodes = new double[panels * perPanel];
        double[] weights = new double[panels * perPanel];
        double half = (to - from) / (2 * panels);
        int index = 0;
        for (int panel = 0; panel < panels; panel++) {
            double centre = from + half * (2 * panel + 1);
            for (int i = 0; i < NODES.length; i++) {
                nodes[index] = centre - half * NODES[i];
                weights[index++] = half * WEIGHTS[i];
                nodes[index] = centre + half * NODES[i];
                weights[index++] = half * WEIGHTS[i];
            }
        }
        return new Rule(nodes, weights);
    }

    static double integral(DoubleUnaryOperator function, double from, double to, int panels) {
        Rule rule = rule(from, to, panels);
        double sum = 0;
        for (int i = 0; i < rule.nodes().length; i++) {
            sum += rule.weights()[i] * function.applyAsDouble(rule.nodes()[i]);
        }
        return sum;
    }
}
