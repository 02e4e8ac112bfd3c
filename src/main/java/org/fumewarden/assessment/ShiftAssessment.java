package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.exposure.Period;
import org.fumewarden.exposure.ShortTerm;
import org.fumewarden.exposure.TimeWeightedAverage;
import org.fumewarden.exposure.TimeWeightedAverage.Unsampled;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Figures;
import org.fumewarden.model.Input;
import org.fumewarden.model.Measure;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;
import org.fumewarden.model.Stretch;
import org.fumewarden.task.Reading;
import org.fumewarden.task.Task;

/** The 8 hour average of a shift of which stretches were sampled. */
final class ShiftAssessment {
    private static final Map<Unsampled, String> WORDS = Map.of(
            Unsampled.AS_HIGHEST, "counted like the highest period",
            Unsampled.AS_SAMPLED, "counted like the average of the sampled time, as the file says",
            Unsampled.AS_UNEXPOSED, "counted as unexposed, as the file says");

    private static final double DAY = 1440;

    private ShiftAssessment() {}

    static Assessment of(Reading.Shift shift, Task task, ExposureTables figures) {
        double covered = shift.periods().stream().mapToDouble(Period::minutes).sum();
        OptionalDouble told = amount(task, "shift");
        double exposed = told.orElse(Math.max(covered, TimeWeightedAverage.EIGHT_HOURS));
        double working = working(shift, task, covered, exposed);
        List<Period> periods = counted(shift, working);
        Reckoning<Double> average =
                TimeWeightedAverage.ofShift(periods, exposed, shift.rest(), TimeWeightedAverage.EIGHT_HOURS);
        double level = average.value()
                .orElseThrow(() -> new InputException(new Problem(
                        task.file(),
                        task.lines().getOrDefault(shift.path(), 0),
                        shift.path(),
                        average.sentence(),
                        "Check the times of the periods and of the shift.")));
        int n = shift.periods().size();
        String count = "8 h average of " + n + (n == 1 ? " period" : " periods") + ", " + minutes(covered) + " of "
                + minutes(exposed) + " sampled";
        List<Input> inputs = new ArrayList<>();
        OptionalDouble limit = figures.lowestLimit(shift.agent(), shift.averaging(), shift.unit()).stream()
                .mapToDouble(BigDecimal::doubleValue)
                .findFirst();
        Optional<SamplingError.Raised> raised = SamplingError.of(shift, shift.error(), limit)
                .flatMap(e -> e.average(ExposureTables.level(level), periods));
        inputs.add(new Exposure(
                shift.agent(),
                shift.averaging(),
                raised.map(SamplingError.Raised::upper).orElse(ExposureTables.level(level)),
                shift.unit(),
                count + raised.map(SamplingError.Raised::words).orElse(""),
                false,
                shift.path()));
        raised.ifPresent(r -> inputs.add(r.note()));
        if (working > 0) {
            inputs.add(Assessor.note(
                    shift,
                    "unsampled-work",
                    minutes(working) + " on the task were not sampled and are " + WORDS.get(Unsampled.AS_HIGHEST)
                            + ". Only time off the task counts as unexposed."));
        }
        if (exposed > covered + working) {
            inputs.add(Assessor.note(
                    shift,
                    "unsampled-time",
                    minutes(exposed - covered - working) + " of the shift were not sampled and are "
                            + WORDS.get(shift.rest()) + ". Sample the whole shift."));
        }
        if (told.isEmpty() && longerMatters(shift, level, limit)) {
            inputs.add(Assessor.note(
                    shift,
                    "shift-unknown",
                    "A shift of 8 h is assumed, for its length is unknown. A longer one gives more."));
        }
        inputs.add(
                Assessor.note(shift, "one-shift", "One shift says little about other days. Sample 6 or more shifts."));
        inputs.addAll(hidden(shift, figures));
        inputs.add(new Stretch(shift.agent(), shift.averaging(), sampled(shift), shift.unit(), shift.path()));
        proven(shift, Averaging.STEL, ShortTerm.QUARTER_HOUR).ifPresent(inputs::add);
        proven(shift, Averaging.CEILING, 0).ifPresent(inputs::add);
        if (raised.isEmpty()) {
            highestQuarter(shift, covered + working).ifPresent(inputs::add);
        }
        return new Assessment(shift, limit, inputs, Optional.empty(), Optional.empty());
    }

    /** Minutes on the task that nobody sampled, though the file counts what was not sampled as unexposed. */
    private static double working(Reading.Shift shift, Task task, double covered, double exposed) {
        double work = Math.min(exposed, amount(task, "time-on-task").orElse(0));
        return shift.rest() == Unsampled.AS_UNEXPOSED ? Math.max(0, work - covered) : 0;
    }

    /** The periods, and the work that nobody sampled like the highest of them. */
    private static List<Period> counted(Reading.Shift shift, double working) {
        List<Period> periods = new ArrayList<>(shift.periods());
        if (working > 0) {
            double highest =
                    periods.stream().mapToDouble(Period::concentration).max().orElse(0);
            periods.add(new Period(highest, working));
        }
        return periods;
    }

    /** Whether work round the clock would average more, and could pass a limit. */
    private static boolean longerMatters(Reading.Shift shift, double level, OptionalDouble limit) {
        double most = TimeWeightedAverage.ofShift(shift.periods(), DAY, shift.rest(), TimeWeightedAverage.EIGHT_HOURS)
                .value()
                .orElse(level);
        return most > level && most > limit.orElse(0);
    }

    /** What the sampled time alone proves for the average of the shift. */
    private static BigDecimal sampled(Reading.Shift shift) {
        return ExposureTables.level(
                shift.periods().stream()
                                .mapToDouble(p -> p.concentration() * p.minutes())
                                .sum()
                        / TimeWeightedAverage.EIGHT_HOURS,
                true);
    }

    /** Where all that anybody breathed lies within a quarter of an hour, nothing is left to ask about its level. */
    private static Optional<Exposure> highestQuarter(Reading.Shift shift, double exposed) {
        if (shift.rest() != Unsampled.AS_UNEXPOSED || exposed > ShortTerm.QUARTER_HOUR) {
            return Optional.empty();
        }
        return TimeWeightedAverage.ofShift(
                        shift.periods(), ShortTerm.QUARTER_HOUR, shift.rest(), ShortTerm.QUARTER_HOUR)
                .value()
                .map(level -> new Exposure(
                        shift.agent(),
                        Averaging.STEL,
                        ExposureTables.level(level),
                        shift.unit(),
                        "all of the shift in one quarter of an hour",
                        false,
                        shift.path()));
    }

    /** The most that one stretch proves for a shorter time; a stretch below that time counts with its part of it. */
    private static Optional<Stretch> proven(Reading.Shift shift, Averaging shorter, double minutes) {
        return shift.periods().stream()
                .map(p -> BigDecimal.valueOf(
                        p.minutes() < minutes ? p.concentration() * p.minutes() / minutes : p.concentration()))
                .max(Comparator.naturalOrder())
                .filter(level -> level.signum() > 0)
                .map(level -> new Stretch(shift.agent(), shorter, level, shift.unit(), shift.path()));
    }

    /** Stretches too long for a short-term level whose mean alone proves that the short-term limit was exceeded. */
    private static List<Input> hidden(Reading.Shift shift, ExposureTables figures) {
        OptionalDouble limit = figures.lowestLimit(shift.agent(), Averaging.STEL, shift.unit()).stream()
                .mapToDouble(BigDecimal::doubleValue)
                .findFirst();
        List<Input> found = new ArrayList<>();
        for (Period period : shift.periods()) {
            Reckoning<Double> shortTerm = limit.isEmpty()
                    ? Reckoning.of(0.0)
                    : ShortTerm.fromSample(
                            period.concentration(), period.minutes(), ShortTerm.QUARTER_HOUR, limit.getAsDouble());
            if (shortTerm.status() == Soundness.INFERRED_EXCEEDANCE) {
                found.add(Assessor.note(shift, shortTerm.status(), shortTerm.sentence()));
            }
        }
        return found;
    }

    /** A measured answer of the task; empty when it is not known. */
    static OptionalDouble amount(Task task, String question) {
        return task.inputs().stream()
                .filter(i -> i instanceof Measure m && m.question().equals(question))
                .mapToDouble(i -> ((Measure) i).value().doubleValue())
                .findFirst();
    }

    private static String minutes(double minutes) {
        return Figures.shown(minutes) + " min";
    }
}
