package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.exposure.Statistic;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Figures;
import org.fumewarden.model.Input;
import org.fumewarden.model.Member;
import org.fumewarden.task.Reading;

/**
 * A figure that rests on an assumed spread or on other people's studies is at most what as many samples or more give for the
 * whole it is a part of.
 *
 * <p>A single figure of the whole, stated or of one shift, speaks for its day and bounds no percentile of other days. Never below
 * the highest sample. An estimate bounds nothing.
 */
public final class WholeAndPart {
    /** The statistic of a level that the samples of the whole cap. */
    public static final String BY_THE_WHOLE = "capped by samples of the whole";

    private static final String PART_OF = "part-of-";

    private final ExposureTables figures;
    private final List<Assessment> each;

    WholeAndPart(ExposureTables figures, List<Assessment> each) {
        this.figures = figures;
        this.each = each;
    }

    /** Whether the bound asks for this member of a set. */
    static boolean reads(Member member) {
        return member.set().startsWith(PART_OF);
    }

    List<Assessment> bounded() {
        return each.stream().map(this::bounded).toList();
    }

    private Assessment bounded(Assessment assessment) {
        if (!(assessment.reading() instanceof Reading.Samples group) || !assumed(assessment)) {
            return assessment;
        }
        return assessment
                .exposure()
                .flatMap(x -> whole(x, group.samples().size())
                        .filter(w -> figure(w, x).orElseThrow().compareTo(x.level()) < 0)
                        .map(w -> bounded(assessment, group, x, w)))
                .orElse(assessment);
    }

    private static boolean assumed(Assessment assessment) {
        return assessment
                .appraisal()
                .map(a -> a.governing().statistic())
                .filter(s -> s == Statistic.ASSUMED_SPREAD || s == Statistic.POSTERIOR)
                .isPresent();
    }

    /** The lowest level that as many samples give for what holds it, over the same time. */
    private Optional<Exposure> whole(Exposure part, int samples) {
        return each.stream()
                .filter(a ->
                        a.reading() instanceof Reading.Samples s && s.samples().size() >= samples)
                .flatMap(a -> a.exposure().stream())
                .filter(w -> w.averaging() == part.averaging() && figures.isMember(PART_OF + w.agent(), part.agent()))
                .filter(w -> figure(w, part).isPresent())
                .min(Comparator.comparing(w -> figure(w, part).orElseThrow()));
    }

    private Optional<BigDecimal> figure(Exposure whole, Exposure part) {
        return figures.in(part.unit(), whole.level(), whole.unit(), whole.agent());
    }

    private Assessment bounded(Assessment assessment, Reading.Samples group, Exposure part, Exposure whole) {
        BigDecimal level = figure(whole, part).orElseThrow().max(group.highest());
        List<Input> inputs = Stream.concat(
                        assessment.inputs().stream()
                                .map(i -> i == part
                                        ? new Exposure(
                                                part.agent(),
                                                part.averaging(),
                                                level,
                                                part.unit(),
                                                BY_THE_WHOLE,
                                                false,
                                                part.path())
                                        : i),
                        Stream.of((Input) Assessor.note(
                                group,
                                "at-most-the-whole",
                                "The samples alone would count as " + Figures.shown(part.level()) + " "
                                        + part.unit().symbol() + ". A part is at most the whole, so they count as "
                                        + Figures.shown(level) + " "
                                        + part.unit().symbol() + ".")))
                .toList();
        return new Assessment(group, assessment.limit(), inputs, assessment.appraisal(), assessment.screening());
    }
}
