package org.fumewarden.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * An exposure estimated from the task, as a distribution; for screening only.
 *
 * <p>The concentration is linear in the source, so its distribution is a mean of lognormal ones over equally likely
 * airflows and exchanges: no random numbers, the same input gives the same digits. An estimate proves no compliance and
 * opens no confined space. A welding helmet without supplied air gets no credit.
 */
public final class Screening {
    /** The question that goes with every estimate. */
    public static final String QUESTION = "Measure this: an estimate is for screening only and proves no compliance.";

    private static final int GRID = 31;
    /** No emission is known better than this; also keeps the distribution smooth. */
    private static final double LEAST_SPREAD = 0.05;

    private static final double ONE_SIGMA = 0.8413447460685429;

    private final Spread source;
    private final double[] logPerRate;
    private final double scale;
    private final List<String> assumptions;

    private Screening(Spread source, double[] logPerRate, double scale, List<String> assumptions) {
        this.source = source;
        this.logPerRate = logPerRate.clone();
        this.scale = scale;
        this.assumptions = List.copyOf(assumptions);
    }

    /**
     * The average over the task, starting in clean air.
     *
     * @param minutes length of the task
     */
    public static Screening of(FumeSource fume, Workplace room, Workplace.Place place, double minutes) {
        if (!SampleSet.isConcentration(minutes)) {
            throw new IllegalArgumentException("A task of " + minutes + " min is not possible. Maybe a unit is wrong.");
        }
        double[] logs = new double[GRID * GRID];
        for (int i = 0; i < GRID; i++) {
            double flow = room.airflow().quantile((i + 0.5) / GRID);
            for (int j = 0; j < GRID; j++) {
                double exchanged = room.exchange().quantile((j + 0.5) / GRID);
                logs[i * GRID + j] = Math.log(room.averagePerRate(flow, exchanged, place, minutes));
            }
        }
        List<String> all = new ArrayList<>(fume.assumptions());
        all.add("Room of " + Sentences.number(room.volume()) + " m3 with " + FumeSource.words(room.airflow())
                + " m3/min of fresh air; " + FumeSource.words(room.exchange())
                + " m3/min pass between the air at the arc and the rest.");
        all.add("A welding helmet without supplied air gets no credit.");
        Spread rate = fume.milligramsPerMinute();
        return new Screening(new Spread(rate.median(), Math.max(rate.deviationLog(), LEAST_SPREAD)), logs, 1, all);
    }

    /**
     * The same estimate averaged over a longer reference time.
     *
     * @param taskMinutes length of the task
     * @param referenceMinutes reference time of the limit, 480 for 8 hours
     * @param restUnexposed true only when it is known that nobody is exposed in the rest of the time
     */
    public Screening over(double taskMinutes, double referenceMinutes, boolean restUnexposed) {
        double share = restUnexposed ? taskMinutes / referenceMinutes : Math.max(1, taskMinutes / referenceMinutes);
        List<String> all = new ArrayList<>(assumptions);
        all.add(
                restUnexposed
                        ? "No exposure in the rest of the " + Sentences.number(referenceMinutes) + " min."
                        : "The rest of the " + Sentences.number(referenceMinutes) + " min is counted like the task.");
        return new Screening(source, logPerRate, scale * share, all);
    }

    /** The share of days below a concentration in mg/m3. */
    public double below(double concentration) {
        if (!(concentration > 0)) {
            return 0;
        }
        return belowLog(Math.log(concentration));
    }

    private double belowLog(double logConcentration) {
        double sum = 0;
        double centre = Math.log(source.median() * scale);
        for (double log : logPerRate) {
            sum += StandardNormal.below((logConcentration - log - centre) / source.deviationLog());
        }
        return sum / logPerRate.length;
    }

    /** The concentration in mg/m3 with the given share of days below it. */
    public Outcome<Double> percentile(double share) {
        if (!ToleranceFactor.isShare(share)) {
            return Outcome.none(Status.INVALID_VALUE, "The share " + share + " must lie between 0 and 1.");
        }
        OptionalDouble log = Roots.ofIncreasing(x -> belowLog(x) - share, 0, 1);
        return Outcome.finite(Math.exp(log.orElse(Double.NaN)));
    }

    /** The mean in mg/m3. */
    public Outcome<Double> mean() {
        double sum = 0;
        for (double log : logPerRate) {
            sum += Math.exp(log);
        }
        return Outcome.finite(source.mean() * scale * sum / logPerRate.length);
    }

    /** The geometric standard deviation of a lognormal distribution as wide as this one between median and 84 %. */
    public Outcome<Double> geometricDeviation() {
        return percentile(0.5).then(half -> percentile(ONE_SIGMA).then(high -> Outcome.finite(high / half)));
    }

    /** The value that counts against a limit: the 95th percentile. */
    public Outcome<Double> governing() {
        return percentile(Compliance.COVERAGE);
    }

    /** What went into the estimate, one sentence each. */
    public List<String> assumptions() {
        return assumptions;
    }

    /** The estimate in one sentence, with its spread. */
    public String sentence() {
        String deviation = geometricDeviation().value().map(Sentences::number).orElse("unknown");
        return "Estimated, not measured: median " + words(0.5) + " mg/m3, 95th percentile " + words(0.95)
                + " mg/m3, geometric standard deviation " + deviation + ".";
    }

    private String words(double share) {
        return percentile(share).value().map(Sentences::number).orElse("unknown");
    }
}
