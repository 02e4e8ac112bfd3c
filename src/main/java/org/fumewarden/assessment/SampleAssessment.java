package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.fumewarden.exposure.Appraisal;
import org.fumewarden.exposure.Governing;
import org.fumewarden.exposure.Sample;
import org.fumewarden.exposure.Screening;
import org.fumewarden.exposure.Statistic;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.Member;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;
import org.fumewarden.model.Stretch;
import org.fumewarden.model.Threshold;
import org.fumewarden.task.Reading;
import org.fumewarden.task.Task;

/** The exposure that samples stand for, by the statistic that governs. */
final class SampleAssessment {
    private static final double SHIFT_MINUTES = 480;
    private static final double QUARTER_HOUR = 15;

    private static final String BY_RESULTS = "duties-by-results";

    private SampleAssessment() {}

    /** Whether the reckoning asks for this member of a set. */
    static boolean reads(Member member) {
        return member.set().equals(BY_RESULTS);
    }

    static Assessment of(Reading.Samples group, Task task, ExposureTables figures) {
        OptionalDouble limit = figures.lowestLimit(group.agent(), group.averaging(), group.unit()).stream()
                .mapToDouble(BigDecimal::doubleValue)
                .findFirst();
        // The governing value does not hang on the limit; without one, no sample can be said to lie below it.
        Appraisal.Question question = new Appraisal.Question(
                limit.orElse(Double.MAX_VALUE),
                minutes(group.averaging()),
                group.desired(),
                group.nonDetects(),
                RoomEstimate.prior(group, task, figures));
        Reckoning<Appraisal> found = Appraisal.of(group.samples(), question);
        if (found.value().isEmpty()) {
            List<Input> open = new ArrayList<>(
                    List.of(Assessor.open(group), Assessor.note(group, found.status(), found.sentence())));
            open.addAll(proven(group, task));
            return new Assessment(group, limit, open, Optional.empty(), Optional.empty());
        }
        Governing governing = found.value().get().governing();
        List<Input> inputs = new ArrayList<>();
        BigDecimal level = level(group, governing);
        String name = name(group, governing.statistic());
        Optional<SamplingError.Raised> raised =
                SamplingError.of(group, group.error(), limit).flatMap(e -> e.single(group.highest()));
        if (raised.isPresent() && raised.get().upper().compareTo(level) > 0) {
            level = raised.get().upper();
            name = name(group, Statistic.HIGHEST_SAMPLE) + raised.get().words();
        }
        inputs.add(new Exposure(group.agent(), group.averaging(), level, group.unit(), name, false, group.path()));
        raised.ifPresent(r -> inputs.add(r.note()));
        inputs.addAll(proven(group, task));
        if (group.samples().stream().noneMatch(Sample::detected)) {
            inputs.add(Assessor.note(group, "none-detected", "Every result lies below its detection limit."));
        }
        if (governing.statistic() == Statistic.POSTERIOR || governing.statistic() == Statistic.ASSUMED_SPREAD) {
            RoomEstimate.of(task, figures, group.agent())
                    .screening()
                    .filter(s -> group.averaging() == Averaging.TWA)
                    .ifPresent(s -> inputs.add(Assessor.note(group, "where-from", from(group, governing, s))));
        }
        governing.cautions().forEach(c -> inputs.add(Assessor.note(group, c.status(), c.sentence())));
        notUsed(group, found.value().get()).ifPresent(inputs::add);
        boolean longShift = ShiftAssessment.amount(task, "shift").orElse(0) > SHIFT_MINUTES;
        if (!longShift && level.doubleValue() <= limit.orElse(0)) {
            belowAction(group, figures).ifPresent(inputs::add);
        }
        return new Assessment(group, limit, inputs, found.value(), Optional.empty());
    }

    /** What the highest result proves of its own time and of each shorter one; an average over 8 h of a longer shift by its part. */
    private static List<Stretch> proven(Reading.Samples group, Task task) {
        double highest = group.samples().stream()
                .filter(Sample::detected)
                .mapToDouble(Sample::concentration)
                .max()
                .orElse(0);
        double shifts = Math.max(1, ShiftAssessment.amount(task, "shift").orElse(SHIFT_MINUTES) / SHIFT_MINUTES);
        return highest == 0
                ? List.of()
                : Stream.of(Averaging.values())
                        .filter(a -> a.compareTo(group.averaging()) >= 0)
                        .map(a -> new Stretch(
                                group.agent(),
                                a,
                                ExposureTables.level(
                                        a == Averaging.TWA || group.averaging() != Averaging.TWA
                                                ? highest
                                                : highest / shifts,
                                        true),
                                group.unit(),
                                group.path()))
                        .toList();
    }

    /** One line on where the figure comes from. */
    private static String from(Reading.Samples group, Governing governing, Screening published) {
        int n = group.samples().size();
        String samples = "your " + (n == 1 ? "sample" : n + " samples");
        return governing.statistic() == Statistic.POSTERIOR
                ? published.provenance().replaceFirst("[.]$", ", and " + samples + ".")
                : "From " + samples + " with an assumed spread. Together with published studies "
                        + (n == 1 ? "it asks" : "they ask") + " for no more.";
    }

    /** That no result of two or more reaches the action level of a standard whose duties go by the results. */
    private static Optional<Input> belowAction(Reading.Samples group, ExposureTables figures) {
        boolean byResults = figures.isMember(BY_RESULTS, group.agent());
        return figures.all(Threshold.class)
                .filter(t -> byResults
                        && t.id().equals("action-level-" + group.agent())
                        && t.unit().equals(group.unit().symbol())
                        && group.averaging() == Averaging.TWA
                        && group.samples().size() > 1
                        && group.highest().compareTo(t.value()) < 0)
                .findFirst()
                .map(t -> Assessor.note(
                        group,
                        "below-action-level",
                        "Each result lies below the action level of "
                                + t.value().stripTrailingZeros().toPlainString() + " " + t.unit()
                                + ". The duties of the standard go by the results: confirm them once, 7 days later or"
                                + " more."));
    }

    private static OptionalDouble minutes(Averaging averaging) {
        return switch (averaging) {
            case TWA -> OptionalDouble.of(SHIFT_MINUTES);
            case STEL -> OptionalDouble.of(QUARTER_HOUR);
            case CEILING -> OptionalDouble.empty();
        };
    }

    /** The highest sample as it was written, anything else rounded up and never below it. */
    private static BigDecimal level(Reading.Samples group, Governing governing) {
        return governing.statistic() == Statistic.HIGHEST_SAMPLE
                ? group.highest()
                : ExposureTables.level(governing.value(), governing.holds(Soundness.HELD_AT_LIMIT))
                        .max(group.highest());
    }

    private static String name(Reading.Samples group, Statistic statistic) {
        int n = group.samples().size();
        String count = n + (n == 1 ? " sample" : " samples");
        if (statistic != Statistic.HIGHEST_SAMPLE) {
            return statistic.words() + ", " + count;
        }
        double highest = group.samples().stream()
                .mapToDouble(s -> s.concentration())
                .max()
                .orElse(0);
        boolean detected = group.samples().stream().anyMatch(s -> s.detected() && s.concentration() == highest);
        return "highest of " + count + (detected ? "" : ", a detection limit");
    }

    /** A statistic that was asked for and does not count is named, with the reason. */
    private static Optional<Input> notUsed(Reading.Samples group, Appraisal appraisal) {
        Statistic used = appraisal.governing().statistic();
        return group.desired()
                .filter(asked -> asked != used)
                .map(asked -> Assessor.note(group, "statistic-not-used", why(asked, used, appraisal)));
    }

    private static String why(Statistic asked, Statistic used, Appraisal appraisal) {
        String rests = "the ratio rests on the " + used.words() + ".";
        return appraisal.estimates().stream()
                .filter(e -> e.statistic() == asked && e.value().isEmpty())
                .findFirst()
                .map(e -> "The " + asked.words() + " was asked for and cannot be given; " + rests + " " + e.sentence())
                .orElse("The " + asked.words() + " was asked for and is not above it; " + rests);
    }
}
