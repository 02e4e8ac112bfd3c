package org.fumewarden.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.WrittenCell;

/** Cells of rules that somebody keeps, beside those that ship: a slip in any cell is seen, whatever the cell says. */
final class EditedCells {
    private EditedCells() {}

    /**
     * What differs in rows that ship, and was typed by nobody.
     *
     * @param typed the cells that were typed, by key: they are compared with what was typed
     * @param rows whole rows that changed: their cells are not named again
     */
    static List<Problem> of(RuleFolder folder, Set<String> typed, RowChanges rows) {
        if (folder.isShipped()) {
            return List.of();
        }
        Map<String, WrittenCell> now = byKey(folder);
        Map<String, WrittenCell> shipped = byKey(RuleFolder.shipped());
        Set<String> tables = new LinkedHashSet<>();
        now.values().forEach(cell -> tables.add(cell.table()));
        Map<String, WrittenCell> places = new LinkedHashMap<>();
        now.values().forEach(cell -> places.putIfAbsent(cell.rowKey(), cell));
        Set<String> shippedRows = new LinkedHashSet<>();
        shipped.values().forEach(cell -> shippedRows.add(cell.rowKey()));
        List<Problem> problems = new ArrayList<>();
        for (WrittenCell cell : shipped.values()) {
            WrittenCell here = now.get(cell.key());
            if (typed.contains(cell.key())
                    || !tables.contains(cell.table())
                    || rows.settled(cell.table(), cell.row())) {
                continue;
            }
            if (here == null) {
                WrittenCell place = places.get(cell.rowKey());
                problems.add(problem(place, cell, "is gone; the program has " + cell.value() + "."));
            } else if (!here.value().equals(cell.value())) {
                problems.add(problem(here, cell, "is " + here.value() + ", but the program has " + cell.value() + "."));
            }
        }
        for (WrittenCell cell : now.values()) {
            if (!shipped.containsKey(cell.key())
                    && !typed.contains(cell.key())
                    && shippedRows.contains(cell.rowKey())) {
                problems.add(
                        problem(cell, cell, "is " + cell.value() + ", and the row of the program has no such cell."));
            }
        }
        return problems;
    }

    private static Map<String, WrittenCell> byKey(RuleFolder folder) {
        Map<String, WrittenCell> cells = new LinkedHashMap<>();
        WrittenCell.every(folder).forEach(cell -> cells.put(cell.key(), cell));
        return cells;
    }

    private static Problem problem(WrittenCell place, WrittenCell cell, String message) {
        return new Problem(
                place.file(),
                place.line(),
                cell.key(),
                message,
                "restore it; where it is meant, type it a second time: a line " + cell.table() + "," + cell.row() + ","
                        + cell.cell() + ",VALUE,DOCUMENT in " + RuleFolder.TYPED + " beside the rules.");
    }
}
