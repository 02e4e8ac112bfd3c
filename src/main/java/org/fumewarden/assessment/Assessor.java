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
import org.fumewarden.endurance.CartridgeMarks;
import org.fumewarden.endurance.FilterMarks;
import org.fumewarden.endurance.GasPart;
import org.fumewarden.endurance.StandardAtmosphere;
import org.fumewarden.endurance.WorkRate;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Band;
import org.fumewarden.model.Breath;
import org.fumewarden.model.BreathingRate;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Marked;
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
    private static final String MARK = "kit.filter-mark";

    private final Task task;
    private final ExposureTables figures;
    private final ReferencePeriod period;

    /**
     * An assessor of one task.
     *
     * @param figures the rows in force on its day
     */
    public Assessor(Task task, ExposureTables figures) {
        this.task = task;
        this.figures = figures;
        this.period = new ReferencePeriod(task, figures);
    }

    /**
     * One assessment for each reading, in the order of the file.
     *
     * @throws org.fumewarden.codes.InputException when sampled time does not fit into the shift
     */
    public List<Assessment> assess() {
        List<Assessment> each = task.readings().stream().map(this::assess).toList();
        return new WholeAndPart(figures, each).bounded();
    }

    /** The task with each stated average as the code counts it. */
    public Task counted() {
        return task.withInputs(period.counted(task.inputs()));
    }

    /** Whether another value of a row could make an assessment of the task another. */
    public static boolean restsOn(Row row, Task task) {
        if (row instanceof Limit limit) {
            return task.readings().stream().anyMatch(r -> r.agent().equals(limit.agent()));
        }
        if (row instanceof Member member) {
            return PublishedLevels.reads(member)
                    || WholeAndPart.reads(member)
                    || ReferencePeriod.reads(member)
                    || SampleAssessment.reads(member);
        }
        return !(row instanceof DangerLevel || row instanceof Band || row instanceof FilterMatch);
    }

    /** That the filter is past the last day on its label, where the task tells that day. */
    public Optional<Answer> expired() {
        return word("filter-expiry")
                .filter(last -> task.on().isAfter(LocalDate.parse(last)))
                .map(last -> new Answer("filter-expired", "true", "kit.filter-expiry"));
    }

    /** What the filter is marked for, where the task tells its mark and some of it can be read. */
    public Optional<Marked> marked() {
        return word("filter-mark").flatMap(mark -> FilterMarks.read(mark)
                .value()
                .map(m -> new Marked(
                        mark,
                        m.gases().stream()
                                .collect(Collectors.toMap(g -> g.type().name(), GasPart::grade)),
                        m.particleClass() == 0 ? "none" : FilterMarks.kind(mark) + m.particleClass(),
                        MARK))
                .or(() -> cartridge(mark)));
    }

    private Optional<Marked> cartridge(String mark) {
        List<String> kinds = CartridgeMarks.kinds(mark).stream().distinct().toList();
        if (kinds.stream().noneMatch(CartridgeMarks::particulate)
                && figures.all(FilterMatch.class)
                        .map(match -> CartridgeMarks.kind(match.type()))
                        .noneMatch(kinds::contains)) {
            return Optional.empty();
        }
        return Optional.of(new Marked(
                mark,
                kinds.stream()
                        .filter(kind -> !CartridgeMarks.particulate(kind))
                        .collect(Collectors.toMap(kind -> kind.toUpperCase(Locale.ROOT), kind -> 0)),
                kinds.stream()
                        .filter(CartridgeMarks::particulate)
                        .findFirst()
                        .map(kind -> kind.startsWith("he") ? kind : kind.toUpperCase(Locale.ROOT))
                        .orElse("none"),
                MARK));
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
        OptionalDouble told = altitude();
        Function<Double, BreathDemand> at = metres -> BreathDemand.of(
                id -> Optional.ofNullable(rates.get(id)).orElseThrow(() -> ExposureTables.absent(id)),
                air,
                word("work-rate"),
                word("speech"),
                OptionalDouble.of(told.orElse(metres)));
        BreathDemand demand = at.apply(0.0);
        return new Breath(
                demand.work().id(),
                demand.speech() ? "while-talking" : "if-nobody-talks",
                BigDecimal.valueOf(demand.peak()),
                whole(at.apply(figures.value("thin-air"))),
                whole(at.apply(figures.least("highest-altitude", "highest-ground"))),
                "task.work-rate");
    }

    private static BigDecimal whole(BreathDemand demand) {
        return BigDecimal.valueOf((long) Math.ceil(demand.peak()));
    }

    private Optional<String> word(String question) {
        return task.inputs().stream()
                .filter(Answer.class::isInstance)
                .map(Answer.class::cast)
                .filter(a -> a.question().equals(question))
                .map(Answer::value)
                .findFirst();
    }

    private OptionalDouble altitude() {
        return task.inputs().stream()
                .filter(Measure.class::isInstance)
                .map(Measure.class::cast)
                .filter(m -> m.question().equals("altitude"))
                .mapToDouble(m -> m.value().doubleValue())
                .findFirst();
    }

    private Assessment assess(Reading reading) {
        if (reading instanceof Reading.Samples samples) {
            Assessment found = SampleAssessment.of(period.counted(samples), task, figures);
            return found.with(period.note(samples).toList());
        }
        if (reading instanceof Reading.Shift shift) {
            return ShiftAssessment.of(shift, task, figures);
        }
        Assessment found = RoomAssessment.of((Reading.RoomModel) reading, task, figures);
        return new Assessment(
                reading, found.limit(), period.counted(found.inputs()), found.appraisal(), found.screening());
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
