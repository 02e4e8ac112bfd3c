package org.fumewarden.advice;

import java.util.Optional;
import org.fumewarden.model.Row;

/** The advice on the same task if a row of a table held something else, or were not there. */
interface WithOther {
    Upshot upshot(Row row, Optional<Row> instead);

    /** The advice on it by the rules and tables of the program; empty where it has none for this code or cannot read the task. */
    default Optional<Upshot> program() {
        return Optional.empty();
    }
}
