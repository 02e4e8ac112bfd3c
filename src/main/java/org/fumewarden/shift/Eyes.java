package org.fumewarden.shift;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.endurance.ShadeAdvice;
import org.fumewarden.endurance.ShadeTable;
import org.fumewarden.model.Member;
import org.fumewarden.model.Row;

/** Shade of the eye filter for the arc or flame of a task, where the code orders a cross-checked table. */
final class Eyes {
    private static final double MILLIMETRES = 1000;
    private static final String ORDERED = "shade-tables";

    private Eyes() {}

    static ShadeAdvice shade(Given given, ShiftTables tables, List<Row> rows) {
        boolean ordered = members(rows).stream().anyMatch(member -> member.set().equals(ORDERED));
        Optional<String> process = given.word("process").flatMap(word -> members(rows).stream()
                .filter(member ->
                        member.item().equals(word) && tables.minimumShades().has(member.set()))
                .map(Member::set)
                .findFirst());
        if (!ordered) {
            return new ShadeAdvice.SeeStandard("Eye shade: see the standard in force here for process and current. No"
                    + " table of this code was seen in two independent places, and none is guessed.");
        }
        return process.map(name -> byTable(given, tables, name))
                .orElseGet(() -> new ShadeAdvice.SeeStandard("Eye shade: the table of this code has no line for the"
                        + " process. Maybe a competent person knows the shade."));
    }

    /** Each process goes by one size only: a current never stands in for a thickness. */
    private static ShadeAdvice byTable(Given given, ShiftTables tables, String process) {
        ShadeTable.By by = tables.minimumShades().by(process);
        OptionalDouble size =
                switch (by) {
                    case CURRENT -> given.number("welding-current");
                    case THICKNESS ->
                        given.number("plate-thickness").stream()
                                .map(metres -> metres * MILLIMETRES)
                                .findFirst();
                    case ANY -> OptionalDouble.of(0);
                };
        return size.isPresent()
                ? tables.minimumShades().advise(tables.suggestedShades(), process, size.getAsDouble())
                : new ShadeAdvice.SeeStandard("Eye shade: it goes by "
                        + (by == ShadeTable.By.CURRENT ? "arc current" : "plate thickness")
                        + ", which is not given. Maybe add "
                        + (by == ShadeTable.By.CURRENT ? "task.welding-current." : "task.plate-thickness."));
    }

    private static List<Member> members(List<Row> rows) {
        return rows.stream()
                .filter(Member.class::isInstance)
                .map(Member.class::cast)
                .toList();
    }
}
