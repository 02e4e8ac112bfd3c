package org.fumewarden.shift;

import java.math.BigDecimal;
import java.util.Map;
import java.util.OptionalDouble;
import org.fumewarden.codes.Located;

/** One row of a table of figures; every complaint names file and line. */
final class FigureRow {
    private final Located place;
    private final Map<String, Located> cells;

    FigureRow(Located place) {
        this.place = place;
        this.cells = place.entries();
    }

    boolean has(String cell) {
        return cells.containsKey(cell);
    }

    /** The words of a cell, with a complaint when it is missing. */
    String text(String cell) {
        Located found = cells.get(cell);
        if (found == null) {
            place.complain("lacks \"" + cell + "\".", "add " + cell + ": to this row.");
            return "?";
        }
        return found.text();
    }

    String text(String cell, String otherwise) {
        return has(cell) ? text(cell) : otherwise;
    }

    /** The number of a cell; one with a complaint when it is missing or no number, so that the reading goes on. */
    double number(String cell) {
        Located found = cells.get(cell);
        if (found == null) {
            place.complain("lacks \"" + cell + "\".", "add " + cell + ": to this row.");
            return 1;
        }
        return found.decimal().map(BigDecimal::doubleValue).orElse(1.0);
    }

    OptionalDouble optional(String cell) {
        return has(cell) ? OptionalDouble.of(number(cell)) : OptionalDouble.empty();
    }

    /** Complains that the row cannot be used. */
    void complain(String message) {
        int maybe = message.indexOf(" Maybe ");
        place.complain(
                "cannot be used: " + (maybe < 0 ? message : message.substring(0, maybe)),
                maybe < 0 ? "a cell stands in the wrong column." : message.substring(maybe + " Maybe ".length()));
    }
}
