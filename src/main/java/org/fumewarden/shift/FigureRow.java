package org.fumewarden.shift;

import java.util.Locale;
import java.util.OptionalDouble;
import org.fumewarden.codes.Problem;
import org.fumewarden.endurance.BadFigure;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Figure;

/** One row of a table of figures; the reader of tables has checked its cells. */
record FigureRow(Figure figure) {

    boolean has(String cell) {
        return figure.cells().containsKey(cell);
    }

    String text(String cell) {
        return figure.cells().get(cell);
    }

    String text(String cell, String otherwise) {
        return figure.cells().getOrDefault(cell, otherwise);
    }

    double number(String cell) {
        return Double.parseDouble(text(cell));
    }

    OptionalDouble optional(String cell) {
        return has(cell) ? OptionalDouble.of(number(cell)) : OptionalDouble.empty();
    }

    /** Source and clause, for a sentence. */
    String document() {
        Citation cited = figure.ref().citation();
        return cited.cited(cited.source().toUpperCase(Locale.ROOT), ", ");
    }

    /** Says that the row cannot be used. */
    Problem problem(IllegalArgumentException fault) {
        int line = figure.place().lastIndexOf(':');
        return new Problem(
                figure.place().substring(0, line),
                Integer.parseInt(figure.place().substring(line + 1)),
                figure.ref().key(),
                "cannot be used: " + (fault instanceof BadFigure bad ? bad.found() : fault.getMessage()),
                fault instanceof BadFigure bad ? bad.remedy() : "Check the columns of its cells.");
    }
}
