package org.fumewarden.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.advice.ByStatistic;
import org.fumewarden.assessment.Assessment;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.exposure.Appraisal;
import org.fumewarden.exposure.Estimate;
import org.fumewarden.exposure.Exceedance;
import org.fumewarden.exposure.KaplanMeier;
import org.fumewarden.exposure.LognormalFit;
import org.fumewarden.exposure.NonDetects;
import org.fumewarden.exposure.OrderRegression;
import org.fumewarden.exposure.Posterior;
import org.fumewarden.exposure.Prior;
import org.fumewarden.exposure.SampleSet;
import org.fumewarden.exposure.ShapiroWilk;
import org.fumewarden.exposure.Statistic;
import org.fumewarden.exposure.WorkerVariance;
import org.fumewarden.model.Count;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Need;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;
import org.fumewarden.report.plot.SamplePlot;
import org.fumewarden.task.Reading;

/** Everything that the samples of one agent say, in words and as a plot. */
final class SampleSection {
    private static final double CONFIDENCE = 0.95;
    private static final double PERCENTILE = 0.95;

    private final Reading.Samples group;
    private final Appraisal appraisal;
    private final OptionalDouble limit;
    private final String name;
    private final Optional<Prior> prior;
    private final Optional<String> test;

    /**
     * A section.
     *
     * @param test name of the test of compliance that the code uses; empty for none
     */
    SampleSection(
            Reading.Samples group,
            Appraisal appraisal,
            OptionalDouble limit,
            String name,
            Optional<Prior> prior,
            Optional<String> test) {
        this.prior = prior;
        this.test = test;
        this.group = group;
        this.appraisal = appraisal;
        this.limit = limit;
        this.name = name;
    }

    void write(Page page, Assessment assessment) {
        long detected = group.samples().stream().filter(s -> s.detected()).count();
        page.paragraph(Count.of(group.samples().size(), "sample") + ", " + detected + " detected"
                + (detected < group.samples().size()
                        ? "; non-detects by " + group.nonDetects().words()
                        : "")
                + ". " + limitWords());
        appraisal.estimates().forEach(e -> page.paragraph(estimate(e)));
        assessment
                .exposure()
                .ifPresent(x -> page.paragraph("The advice rests on: " + x.statistic() + ", "
                        + Page.number(x.level().doubleValue()) + " " + unit()
                        + ratio(x.level().doubleValue())
                        + "."));
        test.ifPresent(t -> page.paragraph(t + ": " + verdict()));
        page.paragraph("Fitted distribution (lognormal): " + fit());
        page.paragraph("Test of the fit: " + shape());
        exceedance(page);
        if (detected < group.samples().size()) {
            page.paragraph("Without a fitted distribution (product limit): " + productLimit());
        }
        page.paragraph("Workers: " + workers());
        plot().ifPresentOrElse(
                        p -> p.text().lines().forEach(page::line),
                        () -> page.paragraph("No plot: there is no limit to draw."));
    }

    private String limitWords() {
        return limit.isPresent()
                ? "Limit " + Page.number(limit.getAsDouble()) + " " + unit() + "."
                : "This code has no limit with this averaging time.";
    }

    private String unit() {
        return group.unit().symbol();
    }

    private String ratio(double level) {
        return limit.isPresent() ? " = " + Page.number(level / limit.getAsDouble()) + " x the limit" : "";
    }

    private String estimate(Estimate estimate) {
        String label = "- " + estimate.statistic().words() + ": ";
        return estimate.value()
                .map(v -> label + Page.number(v) + " " + unit() + ratio(v)
                        + (estimate.status() == Soundness.SOUND ? "" : ". " + estimate.sentence()))
                .orElse(label + "none. " + estimate.sentence());
    }

    private String verdict() {
        return limit.isPresent()
                ? decision() + ". "
                        + appraisal.verdict().sentence()
                        + " The test screens a group. It replaces neither the code nor a competent person."
                : "there is no limit to test against. That is not a pass.";
    }

    private String decision() {
        return switch (appraisal.verdict().decision()) {
            case COMPLIANT -> "the limit is complied with";
            case NON_COMPLIANT -> "the limit is not complied with";
            case NO_DECISION -> "no decision";
            case NOT_APPLICABLE -> "the test does not apply";
        };
    }

    private String fit() {
        Reckoning<LognormalFit> fit = appraisal.fit();
        return fit.value()
                .map(f -> "geometric mean " + Page.number(f.geometricMean()) + " " + unit()
                        + ", geometric standard deviation " + Page.number(f.geometricDeviation()) + ", " + f.method()
                        + ". " + fit.sentence())
                .orElse("none. " + fit.sentence());
    }

    private String shape() {
        Reckoning<ShapiroWilk> shape = appraisal.shape();
        return shape.value()
                .map(s -> "Shapiro-Wilk W " + Page.statistic(s.statistic()) + ", p " + Page.statistic(s.probability())
                        + ". With few samples the test finds only gross misfit. " + shape.sentence())
                .orElse("not tested. " + shape.sentence());
    }

    private void exceedance(Page page) {
        if (limit.isEmpty()) {
            return;
        }
        Reckoning<Exceedance> found =
                SampleSet.of(group.samples()).then(set -> Exceedance.of(set, limit.getAsDouble(), CONFIDENCE));
        page.paragraph("Share above the limit: "
                + found.value()
                        .map(e -> Page.percent(e.share()) + ", one-sided 95 % limits " + Page.percent(e.lower())
                                + " and " + Page.percent(e.upper()) + method() + ". " + found.sentence())
                        .orElse("none. " + found.sentence()));
        Exceedance.aboveHighest(group.samples().size(), CONFIDENCE)
                .value()
                .ifPresent(share -> page.paragraph("Whatever the distribution, up to " + Page.percent(share)
                        + " of exposures may lie above the highest sample (95 % confidence)."));
    }

    private String method() {
        return group.nonDetects() == NonDetects.MAXIMUM_LIKELIHOOD ? "" : " (by maximum likelihood)";
    }

    /** What the non-detects leave of the distribution when no curve is put through it. */
    private String productLimit() {
        Reckoning<KaplanMeier> found = SampleSet.of(group.samples()).then(KaplanMeier::of);
        if (found.value().isEmpty()) {
            return "none. " + found.sentence();
        }
        KaplanMeier estimate = found.value().get();
        Reckoning<Double> mean = estimate.mean();
        Reckoning<Double> percentile = estimate.percentile(PERCENTILE);
        return "mean " + shown(mean) + ", 95th percentile " + shown(percentile) + ". "
                + String.join(" ", mean.sentence(), percentile.sentence()).strip();
    }

    private String shown(Reckoning<Double> found) {
        return found.value().map(v -> Page.number(v) + " " + unit()).orElse("none");
    }

    private String workers() {
        Reckoning<WorkerVariance> workers = appraisal.workers();
        return workers.value()
                .map(w -> "variance of the logarithms between workers " + Page.number(w.between()) + ", within "
                        + Page.number(w.within())
                        + w.betweenShare()
                                .map(s -> "; " + Page.percent(s) + " lies between them")
                                .orElse("")
                        + ". " + individual(w) + workers.sentence())
                .orElse("no split. " + workers.sentence());
    }

    private String individual(WorkerVariance variance) {
        if (limit.isEmpty()) {
            return "";
        }
        Reckoning<WorkerVariance.Individual> found = variance.individual(limit.getAsDouble());
        return found.value()
                .map(i -> "A worker has more than 5 % of days above the limit with a probability of "
                        + Page.percent(i.probability()) + ". ")
                .orElse(found.sentence() + " ");
    }

    /** The plot with level and required factor by each statistic; empty when there is no limit to hold them against. */
    Optional<SamplePart.Sampled> sampled(Assessment assessment) {
        String rests = assessment.exposure().map(Exposure::statistic).orElse("-");
        return plot().map(p -> new SamplePart.Sampled(p, rests, byStatistic()));
    }

    private List<ByStatistic> byStatistic() {
        BigDecimal held = BigDecimal.valueOf(limit.orElseThrow());
        List<ByStatistic> lines = new ArrayList<>();
        for (Estimate estimate : appraisal.estimates()) {
            estimate.value().ifPresent(value -> {
                BigDecimal level = estimate.statistic() == Statistic.HIGHEST_SAMPLE
                        ? group.highest()
                        : ExposureTables.level(value);
                BigDecimal factor = new Need(group.agent(), "ratio", level, held, "").value();
                lines.add(new ByStatistic(estimate.statistic().words(), level, factor));
            });
        }
        return lines;
    }

    /** The plot; empty when there is no limit to draw. */
    Optional<SamplePlot> plot() {
        if (limit.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble tolerance = appraisal.estimates().stream()
                .filter(e -> e.statistic() == Statistic.UPPER_TOLERANCE_70)
                .flatMap(e -> e.value().stream())
                .filter(v -> v < 1e300)
                .mapToDouble(Double::doubleValue)
                .findFirst();
        return SampleSet.of(group.samples())
                .value()
                .map(set -> new SamplePlot(
                        name,
                        unit(),
                        OrderRegression.marks(set).stream()
                                .map(m -> new SamplePlot.Mark(m.concentration(), m.share(), m.detected()))
                                .toList(),
                        limit.getAsDouble(),
                        appraisal.fit().value().map(f -> new SamplePlot.Line(f.meanLog(), f.sdLog())),
                        tolerance,
                        expected(set)));
    }

    /** What published studies lead to expect, and that together with these samples. */
    private List<SamplePlot.Expected> expected(SampleSet set) {
        if (prior.isEmpty()) {
            return List.of();
        }
        Prior before = prior.get();
        Posterior after = Posterior.of(before, set);
        return List.of(
                new SamplePlot.Expected(
                        "published studies",
                        'p',
                        "6 3",
                        new SamplePlot.Line(before.meanLog(), Math.hypot(before.unsure(), before.daily()))),
                new SamplePlot.Expected(
                        "studies and samples together",
                        '+',
                        "2 2",
                        new SamplePlot.Line(Math.log(after.geometricMean()), Math.log(after.geometricDeviation()))));
    }
}
