package org.fumewarden.shift;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.model.Figure;
import org.fumewarden.model.Row;
import org.fumewarden.model.Threshold;

/** One table of figures that arithmetic reads, as it is in force on a day. */
final class FigureTable {
    private final String kind;
    private final List<FigureRow> rows;

    private FigureTable(String kind, List<FigureRow> rows) {
        this.kind = kind;
        this.rows = rows;
        if (rows.isEmpty()) {
            throw fault("has no row in force on the day of the task.", "a row was closed and none follows it.");
        }
    }

    /** The rows of a kind among those in force. */
    static FigureTable of(List<Row> inForce, String kind) {
        return new FigureTable(
                kind,
                inForce.stream()
                        .filter(Figure.class::isInstance)
                        .map(Figure.class::cast)
                        .filter(f -> f.kind().equals(kind))
                        .map(FigureRow::new)
                        .toList());
    }

    /** The thresholds of one table among the rows in force, as figures. */
    static FigureTable thresholds(List<Row> inForce, String table) {
        return new FigureTable(
                table,
                inForce.stream()
                        .filter(Threshold.class::isInstance)
                        .map(Threshold.class::cast)
                        .filter(t -> t.ref().table().equals(table))
                        .map(t -> new FigureRow(new Figure(
                                t.ref(),
                                table,
                                Map.of("id", t.id(), "value", t.value().toPlainString()),
                                table + ":0")))
                        .toList());
    }

    private InputException fault(String message, String maybe) {
        return new InputException(new Problem(kind, 0, "", message, maybe));
    }

    /** Every row as a record; a row that its record refuses is complained about. */
    <T> List<T> map(Function<FigureRow, T> make) {
        List<T> made = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (FigureRow row : rows) {
            try {
                made.add(make.apply(row));
            } catch (IllegalArgumentException e) {
                problems.add(row.problem(e));
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return List.copyOf(made);
    }

    /** The row whose id is given. */
    FigureRow row(String id) {
        return rows.stream()
                .filter(row -> row.text("id").equals(id))
                .findFirst()
                .orElseThrow(() -> fault(
                        "has no row with the id \"" + id + "\" in force on the day of the task.",
                        "Check whether the row was renamed, or closed and not renewed."));
    }

    /** The value of the row whose id is given. */
    double value(String id) {
        return row(id).number("value");
    }

    /** Turns the refusal of a record into a complaint about the table. */
    <T> T whole(Supplier<T> make) {
        try {
            return make.get();
        } catch (IllegalArgumentException e) {
            throw fault("cannot be used: " + e.getMessage(), "Compare its figures with their document.");
        }
    }
}
