package org.fumewarden.exposure;

import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Short-term averages, usually over 15 minutes.
 *
 * <p>"Any 15 minutes" means the highest of all windows, not of clock blocks. An event shorter than the window is
 * averaged over the whole window. Source: EH40/2005, short-term reference period; reproduced in South African
 * Regulation R280 of 2021, Annexure 3, paragraphs 94 to 96.
 */
public final class ShortTerm {
    /** Minutes of the usual short-term reference time. */
    public static final double QUARTER_HOUR = 15;

    private ShortTerm() {}

    /** The highest average over any window; time outside the periods counts as unexposed. */
    public static Reckoning<Double> highest(List<Period> periods, double windowMinutes) {
        Optional<String> fault = TimeWeightedAverage.fault(periods, windowMinutes);
        if (fault.isPresent()) {
            return Reckoning.none(Soundness.INVALID_VALUE, fault.get());
        }
        double[] edges = edges(periods);
        double highest = 0;
        // The average is piecewise linear in the start of the window, so its maximum has an end on an edge.
        for (double edge : edges) {
            highest = Math.max(highest, dose(periods, edges, edge, edge + windowMinutes));
            highest = Math.max(highest, dose(periods, edges, edge - windowMinutes, edge));
        }
        return Reckoning.of(highest / windowMinutes);
    }

    /**
     * What a sample longer than the window says about the short-term limit.
     *
     * <p>It gives no short-term value; but a mean above the limit proves that some window lay above it.
     */
    public static Reckoning<Double> fromSample(double mean, double sampleMinutes, double windowMinutes, double limit) {
        if (!SampleSet.isConcentration(limit)) {
            return Reckoning.none(Soundness.INVALID_LIMIT, Ratios.limitSentence(limit));
        }
        Optional<String> fault = TimeWeightedAverage.fault(List.of(new Period(mean, sampleMinutes)), windowMinutes);
        if (fault.isPresent()) {
            return Reckoning.none(Soundness.INVALID_VALUE, fault.get());
        }
        if (sampleMinutes <= windowMinutes) {
            return Reckoning.of(mean * sampleMinutes / windowMinutes);
        }
        return mean > limit
                ? Reckoning.none(
                        Soundness.INFERRED_EXCEEDANCE,
                        "A mean of " + mean + " over " + sampleMinutes + " min gives no " + windowMinutes
                                + " min value, yet some window must have been above the limit of " + limit + ".")
                : Reckoning.none(
                        Soundness.TOO_FEW,
                        "A sample of " + sampleMinutes + " min gives no " + windowMinutes
                                + " min value. Sample the worst " + windowMinutes + " minutes.");
    }

    private static double[] edges(List<Period> periods) {
        double[] edges = new double[periods.size() + 1];
        for (int i = 0; i < periods.size(); i++) {
            edges[i + 1] = edges[i] + periods.get(i).minutes();
        }
        return edges;
    }

    private static double dose(List<Period> periods, double[] edges, double from, double to) {
        double sum = 0;
        for (int i = 0; i < periods.size(); i++) {
            double overlap = Math.min(to, edges[i + 1]) - Math.max(from, edges[i]);
            if (overlap > 0) {
                sum += overlap * periods.get(i).concentration();
            }
        }
        return sum;
    }
}
