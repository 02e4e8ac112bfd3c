package org.fumewarden.model;

import java.util.Map;

/**
 * A row of a table that arithmetic or people read, and no rule.
 *
 * @param kind kind of the table
 * @param cells what stands in the row, as written, by cell
 * @param place file and line, for complaints
 */
public record Figure(RowRef ref, String kind, Map<String, String> cells, String place) implements Row {
    public Figure {
        Checks.text("kind", kind);
        cells = Map.copyOf(cells);
    }
}
