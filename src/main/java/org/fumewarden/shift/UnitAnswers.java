package org.fumewarden.shift;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.endurance.BadFigure;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Measure;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;
import org.fumewarden.task.Task;

/** What a task file says about the unit in use. */
final class UnitAnswers {
    private final Task task;

    UnitAnswers(Task task) {
        this.task = task;
    }

    OptionalDouble number(String question) {
        return task.inputs().stream()
                .filter(Measure.class::isInstance)
                .map(Measure.class::cast)
                .filter(measure -> measure.question().equals(question))
                .mapToDouble(measure -> measure.value().doubleValue())
                .findFirst();
    }

    Optional<String> word(String question) {
        return task.inputs().stream()
                .filter(Answer.class::isInstance)
                .map(Answer.class::cast)
                .filter(answer -> answer.question().equals(question))
                .map(Answer::value)
                .filter(value -> !value.equals("unknown"))
                .findFirst();
    }

    boolean yes(String question) {
        return word(question).filter("true"::equals).isPresent();
    }

    Optional<LocalDate> day(String question) {
        return word(question).map(LocalDate::parse);
    }

    /** A whole number, rounded down. */
    OptionalInt count(String question) {
        OptionalDouble number = number(question);
        return number.isPresent()
                ? OptionalInt.of((int) Math.min(1000, Math.floor(number.getAsDouble())))
                : OptionalInt.empty();
    }

    /** The line on which a place of the task file stands, 0 when it is not in the file. */
    int line(String path) {
        return task.lines().getOrDefault(path, 0);
    }

    /** A refusal that lists which of these figures are missing, empty when all are there. */
    <T> Optional<Reckoning<T>> missing(String what, String... paths) {
        List<String> absent = List.of(paths).stream().filter(path -> !has(path)).toList();
        return absent.isEmpty()
                ? Optional.empty()
                : Optional.of(Reckoning.refuse(
                        Soundness.NOT_GIVEN,
                        what + " cannot be calculated.",
                        "Add to the task file: " + String.join(", ", absent) + "."));
    }

    /** A record of given figures; what it refuses is a fault of the file. */
    <T> T sound(String path, Supplier<T> make) {
        try {
            return make.get();
        } catch (BadFigure e) {
            throw new InputException(
                    new Problem(task.file(), line(path), path, "cannot be used: " + e.found(), e.remedy()));
        }
    }

    private boolean has(String path) {
        return task.inputs().stream()
                .anyMatch(input ->
                        input instanceof Measure measure && measure.path().equals(path)
                                || input instanceof Answer answer
                                        && answer.path().equals(path)
                                        && !answer.value().equals("unknown"));
    }
}
