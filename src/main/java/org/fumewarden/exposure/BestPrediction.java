package org.fumewarden.exposure;

/**
 * What observed values say of a value not observed, all of them normal with known means and covariances.
 *
 * <p>The best linear prediction: known mean plus weights times what the observed values lie off theirs, the weights solving
 * covariance times weights = covariance with the value wanted. Source: textbook formula of the conditional normal
 * distribution, such as Searle, Casella and McCulloch, Variance Components, chapter 7 (from memory); the test reckons small
 * cases by hand.
 *
 * @param off by how much the value is expected to lie off its mean
 * @param variance that is left
 */
public record BestPrediction(double off, double variance) {

    /**
     * The prediction from observed values.
     *
     * @param residuals what each observed value lies off its mean
     * @param covariance of the observed values, symmetric and positive definite
     * @param with covariance of each observed value with the value wanted
     * @param own variance of the value wanted before anything is observed
     * @throws IllegalArgumentException when the covariance is not positive definite
     */
    public static BestPrediction of(double[] residuals, double[][] covariance, double[] with, double own) {
        double[][] root = root(covariance);
        double[] seen = forward(root, residuals);
        double[] wanted = forward(root, with);
        double off = 0;
        double left = own;
        for (int i = 0; i < seen.length; i++) {
            off += wanted[i] * seen[i];
            left -= wanted[i] * wanted[i];
        }
        return new BestPrediction(off, Math.max(0, left));
    }

    /** The lower triangular root of a covariance, after Cholesky. */
    private static double[][] root(double[][] covariance) {
        int n = covariance.length;
        double[][] root = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = covariance[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                if (i == j && !(sum > 0)) {
                    throw new IllegalArgumentException("Value " + i + " adds nothing: the covariance is singular.");
                }
                root[i][j] = i == j ? Math.sqrt(sum) : sum / root[j][j];
            }
        }
        return root;
    }

    private static double[] forward(double[][] root, double[] right) {
        double[] found = new double[right.length];
        for (int i = 0; i < right.length; i++) {
            double sum = right[i];
            for (int k = 0; k < i; k++) {
                sum -= root[i][k] * found[k];
            }
            found[i] = sum / root[i][i];
        }
        return found;
    }
}
