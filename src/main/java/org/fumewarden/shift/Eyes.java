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

    static ShadeAdvice shade(UnitAnswers given, ShiftTables tables, List<Row> rows) {
        boolean ordered = members(rows).stream().anyMatch(member -> member.set().equals(ORDERED));
        Optional<String> process = given.word("process").flatMap(word -> members(rows).stream()
                .filter(member ->
                        member.item().equals(word) && tables.minimumShades().has(member.set()))
                .map(Member::set)
                .findFirst());
        if (!ordered) {
            return new ShadeAdvice.SeeStandard("Eyes and face: filter shades for this country are not included."
                    + " Take the shade from the standard in force, such as ISO 16321.");
        }
        return process.map(name -> byTable(given, tables, name))
                .orElseGet(
                        () -> new ShadeAdvice.SeeStandard(
                                "Eyes and face: the table has no line for this process. Ask a competent person for the shade before lighting arc or flame."));
    }

    /** Each process goes by one size only: a current never stands in for a thickness. */
    private static ShadeAdvice byTable(UnitAnswers given, ShiftTables tables, String process) {
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
                : new ShadeAdvice.SeeStandard("Eyes and face: the shade depends on "
                        + (by == ShadeTable.By.CURRENT ? "arc current" : "metal thickness")
                        + ", which is not given. Add "
                        + (by == ShadeTable.By.CURRENT ? "task.welding-current." : "task.plate-thickness."));
    }

    private static List<Member> members(List<Row> rows) {
        return rows.stream()
                .filter(Member.class::isInstance)
                .map(Member.class::cast)
                .toList();
    }
}
