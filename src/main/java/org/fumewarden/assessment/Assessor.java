package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fumewarden.endurance.BreathDemand;
import org.fumewarden.endurance.StandardAtmosphere;
import org.fumewarden.endurance.WorkRate;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Band;
import org.fumewarden.model.Breath;
import org.fumewarden.model.BreathingRate;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Measure;
import org.fumewarden.model.Member;
import org.fumewarden.model.Row;
import org.fumewarden.model.SampleNote;
import org.fumewarden.model.Soundness;
import org.fumewarden.model.Unknown;
import org.fumewarden.task.Reading;
import org.fumewarden.task.Task;

/** Turns the readings of a task into exposures, or into open questions; never into a milder value. */
public final class Assessor {
    private final Task task;
    private final ExposureTables figures;

    /**
     * An assessor of one task.
     *
     * @param figures the rows in force on its day
     */
    public Assessor(Task task, ExposureTables figures) {
        this.task = task;
        this.figures = figures;
    }

    /**
     * One assessment for each reading, in the order of the file.
     *
     * @throws org.fumewarden.codes.InputException when sampled time does not fit into the shift
     */
    public List<Assessment> assess() {
        List<Assessment> each = task.readings().stream().map(this::assess).toList();
        return new WholeAndPart(figures, each, task.inputs()).bounded();
    }

    /** Whether another value of a row could make an assessment of the task another. */
    public static boolean restsOn(Row row, Task task) {
        if (row instanceof Limit limit) {
            return task.readings().stream().anyMatch(r -> r.agent().equals(limit.agent()));
        }
        if (row instanceof Member member) {
            return PublishedLevels.reads(member) || WholeAndPart.reads(member);
        }
        return !(row instanceof DangerLevel || row instanceof Band || row instanceof FilterMatch);
    }

    /** That the filter is past the last day on its label, where the task tells that day. */
    public Optional<Answer> expired() {
        return word("filter-expiry")
                .filter(last -> task.on().isAfter(LocalDate.parse(last)))
                .map(last -> new Answer("filter-expired", "true", "kit.filter-expiry"));
    }

    /** The air that the wearer draws at the peak of a breath. */
    public Breath breath() {
        Map<String, WorkRate> rates = figures.all(BreathingRate.class)
                .collect(Collectors.toMap(
                        BreathingRate::id,
                        r -> new WorkRate(
                                r.id(),
                                r.minuteVolume().doubleValue(),
                                r.peak().doubleValue(),
                                r.peakSpeech().doubleValue(),
                                OptionalDouble.empty())));
        StandardAtmosphere air = new StandardAtmosphere(
                figures.value("sea-level-pressure"),
                figures.value("sea-level-temperature"),
                figures.value("lapse-rate"),
                figures.value("exponent"),
                figures.value("highest-altitude"));
        Optional<BigDecimal> told = altitude();
        BigDecimal height = told.orElseGet(() -> BigDecimal.valueOf((long) figures.value("thin-air")));
        Function<Double, BreathDemand> at = metres -> BreathDemand.of(
                id -> Optional.ofNullable(rates.get(id)).orElseThrow(() -> ExposureTables.absent(id)),
                air,
                word("work-rate"),
                word("speech"),
                OptionalDouble.of(told.map(BigDecimal::doubleValue).orElse(metres)));
        BreathDemand demand = at.apply(height.doubleValue());
        return new Breath(
                demand.work().id(),
                demand.speech() ? "while-talking" : "if-nobody-talks",
                height,
                BigDecimal.valueOf(at.apply(0.0).peak()),
                BigDecimal.valueOf(demand.peak()),
                BigDecimal.valueOf(at.apply(air.highestAltitude()).peak()),
                "task.work-rate");
    }

    private Optional<String> word(String question) {
        return task.inputs().stream()
                .filter(Answer.class::isInstance)
                .map(Answer.class::cast)
                .filter(a -> a.question().equals(question))
                .map(Answer::value)
                .findFirst();
    }

    private Optional<BigDecimal> altitude() {
        return task.inputs().stream()
                .filter(Measure.class::isInstance)
                .map(Measure.class::cast)
                .filter(m -> m.question().equals("altitude"))
                .map(Measure::value)
                .findFirst();
    }

    private Assessment assess(Reading reading) {
        if (reading instanceof Reading.Samples samples) {
            return SampleAssessment.of(samples, task, figures);
        }
        if (reading instanceof Reading.Shift shift) {
            return ShiftAssessment.of(shift, task, figures);
        }
        return RoomAssessment.of((Reading.RoomModel) reading, task, figures);
    }

    /** The open question in place of a level that could not be reckoned. */
    static Unknown open(Reading reading) {
        return new Unknown(
                "exposures." + reading.agent() + "." + reading.averaging().key(), reading.path());
    }

    static SampleNote note(Reading reading, Soundness status, String sentence) {
        return note(reading, status.name().toLowerCase(Locale.ROOT).replace('_', '-'), sentence);
    }

    static SampleNote note(Reading reading, String status, String sentence) {
        return new SampleNote(reading.agent(), status, sentence, reading.path());
    }
}
