package org.fumewarden.exposure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Everything that samples of one group say about one limit.
 *
 * @param estimates the statistics, always all of them and in the order of {@link Statistic}
 * @param governing the one that drives the advice
 * @param verdict the test of EN 689:2018 for this number of samples
 * @param fit the fitted distribution, or why there is none
 * @param shape the test of lognormal shape, or why there is none
 * @param workers spread between workers, or why there is none
 */
public record Appraisal(
        List<Estimate> estimates,
        Governing governing,
        Compliance.Verdict verdict,
        Reckoning<LognormalFit> fit,
        Reckoning<ShapiroWilk> shape,
        Reckoning<WorkerVariance> workers) {
    private static final double UNLIKELY = 0.05;
    private static final int POWER_FROM = 6;
    private static final double SHORTEST_SHARE = 0.25;

    public Appraisal {
        estimates = List.copyOf(estimates);
    }

    /**
     * What is asked.
     *
     * @param limit exposure limit in the unit of the samples
     * @param averagingMinutes averaging time of the limit, when sample times are to be checked against it
     * @param desired a statistic that is to count when it is higher than the usual one
     * @param nonDetects treatment of samples below the detection limit
     * @param prior what published studies lead to expect, in the unit of the samples
     */
    public record Question(
            double limit,
            OptionalDouble averagingMinutes,
            Optional<Statistic> desired,
            NonDetects nonDetects,
            Optional<Prior> prior) {

        /** A question without anything published to go by. */
        public Question(
                double limit, OptionalDouble averagingMinutes, Optional<Statistic> desired, NonDetects nonDetects) {
            this(limit, averagingMinutes, desired, nonDetects, Optional.empty());
        }

        /** The usual question about a limit. */
        public static Question against(double limit) {
            return new Question(limit, OptionalDouble.empty(), Optional.empty(), NonDetects.MAXIMUM_LIKELIHOOD);
        }
    }

    /** Appraises the samples; refuses values and limits that cannot be. */
    public static Reckoning<Appraisal> of(List<Sample> samples, Question question) {
        if (!SampleSet.isConcentration(question.limit())) {
            return Reckoning.none(Soundness.INVALID_LIMIT, Ratios.limitSentence(question.limit()));
        }
        return SampleSet.of(samples).map(set -> of(set, question));
    }

    private static Appraisal of(SampleSet set, Question question) {
        Reckoning<LognormalFit> fit = LognormalFits.of(set, question.nonDetects());
        List<Estimate> estimates = Arrays.stream(Statistic.values())
                .map(s -> s == Statistic.HIGHEST_SAMPLE
                        ? Estimate.highest(set)
                        : Estimate.of(s, set, fit, question.prior()))
                .toList();
        Reckoning<ShapiroWilk> shape = ShapiroWilk.ofLogs(set);
        Reckoning<WorkerVariance> workers = WorkerVariance.of(set);
        Governing plain = Governing.of(set, fit, question);
        List<Governing.Caution> cautions = new ArrayList<>(plain.cautions());
        cautions.addAll(ofMethod(set, question));
        cautions.addAll(ofShape(set, shape));
        cautions.addAll(ofWorkers(workers));
        cautions.addAll(ofTimes(set, question));
        Governing governing =
                new Governing(plain.statistic(), plain.value(), plain.sentence(), cautions, plain.measureMore());
        Compliance.Verdict verdict = Compliance.test(set, question.limit()).beside(governing.value(), question.limit());
        return new Appraisal(estimates, governing, verdict, fit, shape, workers);
    }

    private static List<Governing.Caution> ofMethod(SampleSet set, Question question) {
        return question.nonDetects().substitutes() && !set.complete()
                ? List.of(new Governing.Caution(
                        Soundness.WARN_SUBSTITUTION,
                        "Non-detects were replaced as asked ("
                                + question.nonDetects().words()
                                + "), which biases mean and spread. Use maximum likelihood."))
                : List.of();
    }

    private static List<Governing.Caution> ofShape(SampleSet set, Reckoning<ShapiroWilk> shape) {
        return shape.value()
                .filter(test -> set.size() >= POWER_FROM && test.probability() < UNLIKELY)
                .map(test -> List.of(new Governing.Caution(
                        Soundness.WARN_POOR_FIT,
                        "The samples do not look lognormal (Shapiro-Wilk W " + ResultWords.statistic(test.statistic())
                                + ", p " + ResultWords.statistic(test.probability())
                                + "). Split them by task or place.")))
                .orElse(List.of());
    }

    private static List<Governing.Caution> ofWorkers(Reckoning<WorkerVariance> workers) {
        return workers.value()
                .filter(WorkerVariance::individualTestNeeded)
                .map(found -> List.of(new Governing.Caution(
                        Soundness.WARN_WORKERS_DIFFER,
                        "The workers differ ("
                                + ResultWords.number(100 * found.betweenShare().orElse(0.0))
                                + " % of the variance lies between them), so the group says too little about the most"
                                + " exposed one. Sample that worker again.")))
                .orElse(List.of());
    }

    private static List<Governing.Caution> ofTimes(SampleSet set, Question question) {
        if (question.averagingMinutes().isEmpty()) {
            return List.of();
        }
        double averaging = question.averagingMinutes().getAsDouble();
        List<Governing.Caution> cautions = new ArrayList<>();
        boolean shortTerm = averaging <= ShortTerm.QUARTER_HOUR;
        if (shortTerm && set.samples().stream().anyMatch(s -> s.minutes().orElse(averaging) > averaging)) {
            cautions.add(new Governing.Caution(
                    Soundness.WARN_SAMPLE_TIME,
                    "A sample ran longer than the " + ResultWords.number(averaging)
                            + " min of the limit, so peaks may be hidden in it. Sample the worst minutes."));
        }
        double shortest = averaging * SHORTEST_SHARE;
        if (!shortTerm && set.samples().stream().anyMatch(s -> s.minutes().orElse(averaging) < shortest)) {
            cautions.add(new Governing.Caution(
                    Soundness.WARN_SAMPLE_TIME,
                    "A sample ran for less than " + ResultWords.number(shortest)
                            + " min, which may not stand for the shift. Sample longer."));
        }
        return cautions;
    }
}
