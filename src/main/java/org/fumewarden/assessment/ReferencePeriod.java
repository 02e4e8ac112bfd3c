package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.fumewarden.exposure.Sample;
import org.fumewarden.exposure.TimeWeightedAverage;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Figures;
import org.fumewarden.model.Input;
import org.fumewarden.model.Member;
import org.fumewarden.model.SampleNote;
import org.fumewarden.model.Threshold;
import org.fumewarden.task.Reading;
import org.fumewarden.task.Task;

/**
 * An average of work that is longer than the reference period of a code counts over that period with all its hours.
 *
 * <p>A code has such a period by a row of its tables. Where it lowers the limit of long shifts instead, there is no row, or the
 * agent is in the set of those whose limit falls. Nothing is thinned out where the work is shorter.
 */
public final class ReferencePeriod {
    /** Status of the note that a level was counted over the period. */
    public static final String NOTE = "over-8-h";

    private static final String ROW = "reference-period";
    private static final String LOWERED = "limit-falls-with-the-shift";
    private static final double HOUR = 60;
    private static final MathContext EXACT = new MathContext(12, RoundingMode.CEILING);

    private final ExposureTables figures;
    private final OptionalDouble reference;
    private final double worked;

    ReferencePeriod(Task task, ExposureTables figures) {
        this.figures = figures;
        reference = figures.all(Threshold.class)
                .filter(t -> t.id().equals(ROW))
                .mapToDouble(t -> t.value().doubleValue())
                .findFirst();
        worked = ShiftAssessment.amount(task, "time-on-task")
                .orElse(ShiftAssessment.amount(task, "shift").orElse(0));
    }

    /** Whether the reckoning asks for this member of a set. */
    static boolean reads(Member member) {
        return member.set().equals(LOWERED);
    }

    /** By how much what is expected of the work counts. */
    double times(Reading.Samples group) {
        return group.averaging() == Averaging.TWA ? times(group.agent(), minutes(group)) : 1;
    }

    /** The inputs with each stated average of longer work counted over the period, and with a note of it. */
    List<Input> counted(List<Input> inputs) {
        List<Input> counted = new ArrayList<>();
        for (Input input : inputs) {
            if (input instanceof Exposure x && x.averaging() == Averaging.TWA && times(x.agent(), worked) > 1) {
                Exposure over = new Exposure(
                        x.agent(),
                        x.averaging(),
                        over(x.level(), worked),
                        x.unit(),
                        x.statistic().equals(Exposure.AS_GIVEN) ? Exposure.COUNTED_OVER : x.statistic(),
                        x.estimated(),
                        x.path());
                counted.add(over);
                counted.add(note(x, worked, over.level()));
            } else {
                counted.add(input);
            }
        }
        return counted;
    }

    /** The samples, each counted by its own time or that of the work, whichever is longer. */
    Reading.Samples counted(Reading.Samples group) {
        if (times(group) == 1) {
            return group;
        }
        double scale = times(group.agent(), minutes(group));
        List<Sample> samples = group.samples().stream()
                .map(s -> s.times(times(group.agent(), minutes(s))))
                .toList();
        double most = samples.stream().mapToDouble(Sample::concentration).max().orElseThrow();
        BigDecimal highest =
                over(group.highest(), scale * reference.orElseThrow()).min(ExposureTables.level(most));
        return new Reading.Samples(
                group.agent(),
                group.averaging(),
                group.unit(),
                samples,
                highest,
                group.nonDetects(),
                group.desired(),
                group.error(),
                group.path());
    }

    /** That samples were counted over the period; nothing where they were not. */
    Stream<Input> note(Reading.Samples group) {
        return times(group) == 1
                ? Stream.empty()
                : group.samples().stream()
                        .max(Comparator.comparingDouble(Sample::concentration))
                        .map(s -> (Input) note(
                                new Exposure(
                                        group.agent(),
                                        group.averaging(),
                                        group.highest(),
                                        group.unit(),
                                        Exposure.AS_GIVEN,
                                        false,
                                        group.path()),
                                minutes(s),
                                over(group.highest(), minutes(s))))
                        .stream();
    }

    private SampleNote note(Exposure x, double minutes, BigDecimal over) {
        String unit = " " + x.unit().symbol();
        return new SampleNote(
                x.agent(),
                NOTE,
                Figures.shown(x.level()) + unit + " over " + Figures.shown(minutes / HOUR) + " h counts as "
                        + Figures.shown(over) + unit + " over 8 h. If it was brought to 8 h already, state the levels"
                        + " during the work as periods.",
                x.path());
    }

    private double minutes(Reading.Samples group) {
        return group.samples().stream().mapToDouble(this::minutes).max().orElse(worked);
    }

    private double minutes(Sample sample) {
        return Math.max(worked, sample.minutes().orElse(0));
    }

    private double times(String agent, double minutes) {
        return reference.isEmpty() || figures.isMember(LOWERED, agent)
                ? 1
                : TimeWeightedAverage.times(minutes, reference.getAsDouble());
    }

    private BigDecimal over(BigDecimal level, double minutes) {
        return level.multiply(BigDecimal.valueOf(minutes))
                .divide(BigDecimal.valueOf(reference.orElseThrow()), EXACT)
                .stripTrailingZeros();
    }
}
