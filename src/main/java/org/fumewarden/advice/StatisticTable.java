package org.fumewarden.advice;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.fumewarden.assessment.Assessment;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.exposure.Estimate;
import org.fumewarden.exposure.Statistic;
import org.fumewarden.model.Need;
import org.fumewarden.model.Ratio;
import org.fumewarden.task.Reading;
import org.fumewarden.trail.Trail;

/** What a need would be by each statistic of the samples behind it. */
final class StatisticTable {
    private final ExposureTables figures;
    private final List<Assessment> assessed;
    private final Trail trail;

    StatisticTable(ExposureTables figures, List<Assessment> assessed, Trail trail) {
        this.figures = figures;
        this.assessed = assessed;
        this.trail = trail;
    }

    /** One line for each statistic that has a value; nothing when no samples stand behind the need. */
    List<ByStatistic> of(Need need) {
        Optional<Ratio> ratio = trail.all(Ratio.class).stream()
                .filter(r -> need.basis().equals("ratio") && Need.of(r).equals(need))
                .findFirst();
        return ratio.flatMap(r -> samples(r).map(samples -> lines(r, samples))).orElse(List.of());
    }

    private Optional<Assessment> samples(Ratio ratio) {
        return assessed.stream()
                .filter(a -> a.reading() instanceof Reading.Samples
                        && a.reading().agent().equals(ratio.agent())
                        && a.reading().averaging() == ratio.averaging())
                .findFirst();
    }

    private List<ByStatistic> lines(Ratio ratio, Assessment assessment) {
        Reading.Samples group = (Reading.Samples) assessment.reading();
        return assessment.appraisal().stream()
                .flatMap(a -> a.estimates().stream())
                .flatMap(e -> line(ratio, group, e).stream())
                .toList();
    }

    private Optional<ByStatistic> line(Ratio ratio, Reading.Samples group, Estimate estimate) {
        return estimate.value()
                .map(value -> estimate.statistic() == Statistic.HIGHEST_SAMPLE
                        ? group.highest()
                        : ExposureTables.level(value))
                .flatMap(level -> figures.in(ratio.unit(), level, group.unit(), group.agent()))
                .map(level -> new ByStatistic(estimate.statistic().words(), level, factor(ratio, level)));
    }

    private static BigDecimal factor(Ratio ratio, BigDecimal level) {
        return new Need(ratio.agent(), "ratio", level, ratio.limit(), ratio.statistic()).value();
    }
}
