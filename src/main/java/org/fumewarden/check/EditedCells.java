package org.fumewarden.check;

import java.util.List;
import java.util.Set;
import org.fumewarden.codes.CellChange;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.WrittenCell;

/** Cells of rules that somebody keeps, beside those that ship: a slip in any cell is seen, whatever the cell says. */
final class EditedCells {
    private EditedCells() {}

    /**
     * What differs from the tables that ship, and was typed by nobody; of rows that are new what could change advice.
     *
     * @param named the cells that were typed or are named already, by key
     * @param rows whole rows that changed: their cells are not named again
     */
    static List<Problem> of(RuleFolder folder, Set<String> named, RowChanges rows) {
        List<String> parts = RuleFolder.shipped().folders();
        return folder.isShipped()
                ? List.of()
                : CellChange.between(WrittenCell.every(folder), WrittenCell.every(RuleFolder.shipped())).stream()
                        .filter(change -> !named.contains(change.cell().key()))
                        .filter(change -> !change.added()
                                || change.cell().isAsked()
                                        && parts.contains(change.cell().folder()))
                        .filter(change -> !rows.settled(
                                change.cell().table(), change.cell().row()))
                        .map(EditedCells::problem)
                        .toList();
    }

    private static Problem problem(CellChange change) {
        WrittenCell cell = change.cell();
        String is = change.now().map(now -> "is " + now).orElse("is gone");
        return new Problem(
                change.place().file(),
                change.place().line(),
                cell.key(),
                change.program()
                        .map(has -> is + (change.now().isEmpty() ? "; " : ", but ") + "the program has " + has + ".")
                        .orElse(
                                change.added()
                                        ? TypedValues.ONCE
                                        : is + ", and the row of the program has no such cell."),
                (change.added()
                                ? "type it a second time: a line "
                                : "restore it; where it is meant, type it a second time: a line ")
                        + cell.table() + "," + cell.row() + "," + cell.cell() + ",VALUE,DOCUMENT in " + RuleFolder.TYPED
                        + " beside the rules.");
    }
}
