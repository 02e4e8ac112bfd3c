package org.fumewarden.exposure;

import java.util.List;
import java.util.OptionalDouble;

/**
 * An exposure taken from what others measured, as a lognormal distribution; for screening only.
 *
 * <p>An estimate proves no compliance and opens no confined space. A welding helmet without supplied air gets no credit.
 *
 * @param medianLog natural logarithm of the median
 * @param unsure how far the median of this place may lie from it, as a standard deviation of logarithms
 * @param daily standard deviation of the logarithms between shifts of one place
 * @param atLeast a value below which the governing one is never taken
 * @param unit of the air level
 * @param provenance where the figure comes from, in one sentence
 * @param assumptions each step, one sentence each
 */
public record Screening(
        double medianLog,
        double unsure,
        double daily,
        OptionalDouble atLeast,
        String unit,
        String provenance,
        List<String> assumptions) {
    /** The question that goes with every estimate. */
    public static final String QUESTION = "Measure this: an estimate is for screening only and proves no compliance.";

    public Screening {
        assumptions = List.copyOf(assumptions);
    }

    private double deviation() {
        return Math.hypot(unsure, daily);
    }

    /** The share of shifts in places like this below a concentration. */
    public double below(double concentration) {
        return concentration > 0 ? StandardNormal.below((Math.log(concentration) - medianLog) / deviation()) : 0;
    }

    /** The concentration with the given share of shifts below it. */
    public Outcome<Double> percentile(double share) {
        return ToleranceFactor.isShare(share)
                ? Outcome.finite(Math.exp(medianLog + StandardNormal.quantile(share) * deviation()))
                : Outcome.none(Status.INVALID_VALUE, "The share " + share + " must lie between 0 and 1.");
    }

    /** The mean. */
    public Outcome<Double> mean() {
        return Outcome.finite(Math.exp(medianLog + deviation() * deviation() / 2));
    }

    /** The value that counts against a limit: the 95th percentile, and never below the floor. */
    public Outcome<Double> governing() {
        return percentile(Compliance.COVERAGE).map(p -> Math.max(p, atLeast.orElse(0)));
    }

    /** What is expected before anything is measured. */
    public Prior prior() {
        return new Prior(medianLog, unsure, daily);
    }

    /** The estimate in one sentence, with its spread. */
    public String sentence() {
        return "Estimated, not measured: median " + words(0.5) + " " + unit + ", 95th percentile " + words(0.95) + " "
                + unit + ", geometric standard deviation " + Sentences.number(Math.exp(deviation())) + ". "
                + provenance;
    }

    private String words(double share) {
        return percentile(share).value().map(Sentences::number).orElse("unknown");
    }
}
