package org.fumewarden.check;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.codes.TypedApart;

/** The values typed apart from the tables, beside the cells as the tests read them. */
final class ShippedValues {
    private final Map<String, TypedApart.Line> values = new TypedValues().values();

    /** The cells that were typed, with the source of each. */
    Map<String, String> sources() {
        Map<String, String> sources = new LinkedHashMap<>();
        values.forEach((key, typed) -> sources.put(key, typed.source()));
        return sources;
    }

    /** What was typed, when the table says something else. */
    Optional<String> differs(TableCell cell) {
        if (!holds(cell)) {
            return Optional.empty();
        }
        String typed = values.get(cell.key()).value();
        boolean same = cell.isNumber()
                ? cell.number().compareTo(new BigDecimal(typed)) == 0
                : cell.value().equals(typed);
        return same ? Optional.empty() : Optional.of(typed);
    }

    boolean holds(TableCell cell) {
        return values.containsKey(cell.key());
    }
}
