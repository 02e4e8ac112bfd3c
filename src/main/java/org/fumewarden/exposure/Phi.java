package org.fumewarden.exposure;

/** exp(-x) and its first two divided integrals, without loss of digits at small x. */
final class Phi {
    private static final double SMALL = 0.01;

    private Phi() {}

    static double zeroth(double x) {
        return Math.exp(-x);
    }

    /** (1 - exp(-x)) / x, the average of exp(-s) over 0 to x. */
    static double first(double x) {
        return x == 0 ? 1 : -Math.expm1(-x) / x;
    }

    /** (x - 1 + exp(-x)) / x^2, the average of s first(s) / x over 0 to x. */
    static double second(double x) {
        if (Math.abs(x) < SMALL) {
            return 0.5 - x / 6 + x * x / 24 - x * x * x / 120 + x * x * x * x / 720;
        }
        return (x + Math.expm1(-x)) / (x * x);
    }
}
