package org.fumewarden.advice;

import java.util.Optional;
import org.fumewarden.model.Row;

/** The advice on the same task if a row of a table held something else, or were not there. */
interface WithOther {
    Upshot upshot(Row row, Optional<Row> instead);
}
