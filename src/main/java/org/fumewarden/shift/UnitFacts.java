package org.fumewarden.shift;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fumewarden.endurance.RunTime;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Row;
import org.fumewarden.task.Task;

/** What the figures of the unit come to, as answers that rules read: how long its battery runs, how long its filter is open. */
public final class UnitFacts {
    private final Task task;
    private final UnitAnswers given;
    private final ShiftTables tables;

    private UnitFacts(Task task, List<Row> rows) {
        this.task = task;
        this.given = new UnitAnswers(task);
        this.tables = ShiftTables.of(rows);
    }

    /**
     * What speaks against the unit on the day of the task; nothing where its figures are not told.
     *
     * @param every the rows that are asked for where they are told
     */
    public static List<Answer> of(Task task, Supplier<List<Row>> every) {
        UnitAnswers told = new UnitAnswers(task);
        if (told.number("battery-charge").isEmpty() && told.day("filter-opened").isEmpty()) {
            return List.of();
        }
        List<Row> rows = every.get();
        UnitFacts facts = new UnitFacts(task, rows);
        return Stream.concat(facts.battery(rows), facts.filter()).toList();
    }

    private Stream<Answer> filter() {
        LocalDate closed = task.on().minusMonths(tables.opened());
        return given.day("filter-opened").filter(closed::isAfter).stream()
                .map(day -> new Answer("filter-opened-long", "true", "kit.filter-opened"));
    }

    /** Too short even with every spare pack full. A pack that is charged in the breaks is left to the plan of the shift. */
    private Stream<Answer> battery(List<Row> rows) {
        Reckoning<Stretches> wear = Stretches.of(given);
        if (given.number("battery-charge").isEmpty()
                || wear.value().isEmpty()
                || given.yes("charge-in-breaks")
                || given.word("blower").filter("false"::equals).isPresent()) {
            return Stream.empty();
        }
        Battery battery = new Battery(task, given, new Dust(given, new Air(task, rows), tables), tables);
        OptionalDouble now = low(battery.now());
        if (now.isEmpty()) {
            return Stream.empty();
        }
        double spare =
                given.count("spare-packs").orElse(0) * low(battery.full()).orElse(0);
        return now.getAsDouble() + spare < wear.value().orElseThrow().total()
                ? Stream.of(new Answer("battery-too-short", "true", "kit.battery-charge"))
                : Stream.empty();
    }

    private static OptionalDouble low(Reckoning<RunTime> time) {
        return time.value().stream().mapToDouble(run -> run.minutes().low()).findFirst();
    }
}
