package org.fumewarden.shift;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.endurance.ShadeAdvice;
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
        OptionalDouble plate = given.number("plate-thickness");
        double size = given.number("welding-current").orElse(plate.isPresent() ? plate.getAsDouble() * MILLIMETRES : 0);
        return process.map(name -> tables.minimumShades().advise(tables.suggestedShades(), name, size))
                .orElseGet(() -> new ShadeAdvice.SeeStandard("Eye shade: the table of this code has no line for the"
                        + " process. Maybe a competent person knows the shade."));
    }

    private static List<Member> members(List<Row> rows) {
        return rows.stream()
                .filter(Member.class::isInstance)
                .map(Member.class::cast)
                .toList();
    }
}
