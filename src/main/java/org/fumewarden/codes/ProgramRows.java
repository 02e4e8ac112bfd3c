package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.model.Row;

/** What the program has in the tables that somebody changed. */
public final class ProgramRows {
    private ProgramRows() {}

    /** By address, its rows in force on a day; none of a table that is as the program has it. */
    public static Map<String, Row> on(LocalDate day, CodeBook book) {
        RuleFolder program = book.rules.program();
        Map<String, Row> rows = new HashMap<>();
        // An archive also holds a list of its tables, which is none.
        List<String> tables = program.names("", ".yaml").stream()
                .filter(name -> name.contains("/tables/"))
                .toList();
        for (String name : tables) {
            new TableReader(name, program.located(name))
                    .read().rows().stream()
                            .filter(row -> row.inForce(day))
                            .forEach(row -> rows.put(row.row().ref().address(), row.row()));
        }
        return rows;
    }
}
