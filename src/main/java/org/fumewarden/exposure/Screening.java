package org.fumewarden.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * An exposure taken from what others measured, as a lognormal distribution; for screening only.
 *
 * <p>An estimate proves no compliance and opens no confined space. A welding helmet without supplied air gets no credit.
 *
 * @param medianLog natural logarithm of the median
 * @param unsure how far the median of this place may lie from it, as a standard deviation of logarithms
 * @param daily standard deviation of the logarithms between shifts of one place
 * @param atLeast a value below which the governing one is never taken
 * @param whole what it is a part of, which no part exceeds
 * @param unit of the air level
 * @param provenance where the figure comes from, in one sentence
 * @param assumptions each step, one sentence each
 */
public record Screening(
        double medianLog,
        double unsure,
        double daily,
        OptionalDouble atLeast,
        Optional<Screening> whole,
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
        double own = concentration > 0 ? StandardNormal.below((Math.log(concentration) - medianLog) / deviation()) : 0;
        return whole.map(w -> Math.max(own, w.below(concentration))).orElse(own);
    }

    /** The concentration with the given share of shifts below it. */
    public Reckoning<Double> percentile(double share) {
        if (!ToleranceFactor.isShare(share)) {
            return Reckoning.none(Soundness.INVALID_VALUE, "The share " + share + " must lie between 0 and 1.");
        }
        double own = Math.exp(medianLog + StandardNormal.quantile(share) * deviation());
        return Reckoning.of(bounded(own, w -> w.percentile(share)));
    }

    private double bounded(double own, Function<Screening, Reckoning<Double>> statistic) {
        return whole.flatMap(w -> statistic.apply(w).value())
                .map(w -> Math.min(w, own))
                .orElse(own);
    }

    /** The mean. */
    public Reckoning<Double> mean() {
        return Reckoning.of(bounded(Math.exp(medianLog + deviation() * deviation() / 2), Screening::mean));
    }

    /** The value that counts against a limit: the 95th percentile, and never below the floor. */
    public Reckoning<Double> governing() {
        return percentile(Compliance.COVERAGE).map(p -> bounded(Math.max(p, atLeast.orElse(0)), Screening::governing));
    }

    /** What is expected before anything is measured. */
    public Prior prior() {
        return new Prior(medianLog, unsure, daily);
    }

    /** The same as a part of a whole: nowhere above it. */
    public Screening within(Screening all) {
        Screening part = new Screening(
                Math.min(medianLog, all.medianLog),
                unsure,
                daily,
                atLeast,
                Optional.of(all),
                unit,
                provenance,
                assumptions);
        return governing().value().equals(part.governing().value())
                ? part
                : part.noting("A part weighs no more than the whole: the figure of the welding fume bounds it.");
    }

    /** The same with one step more. */
    public Screening noting(String step) {
        List<String> all = new ArrayList<>(assumptions);
        all.add(step);
        return new Screening(medianLog, unsure, daily, atLeast, whole, unit, provenance, all);
    }

    /** The same, of which no less than this counts, with why and by which steps. */
    public Screening atLeast(double floor, String because, List<String> steps) {
        return new Screening(
                medianLog, unsure, daily, OptionalDouble.of(floor), whole, unit, because + provenance, steps);
    }

    /** The estimate in one sentence, with its spread. */
    public String sentence() {
        return "Estimated, not measured: median " + words(0.5) + " " + unit + ", 95th percentile " + words(0.95) + " "
                + unit + ", geometric standard deviation " + ResultWords.number(Math.exp(deviation())) + ". "
                + provenance;
    }

    private String words(double share) {
        return percentile(share).value().map(ResultWords::number).orElse("unknown");
    }
}
