package org.fumewarden.codes;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Row;

/** Leaves one limit where a code and a folder that it borrows both hold one: the stricter, the code's own when they are equal. */
final class StricterLimits {
    private StricterLimits() {}

    /** The rows without limits that another of the same agent, averaging time and unit undercuts; order is kept. */
    static List<Row> of(List<Row> rows) {
        Map<List<Object>, Limit> kept = new HashMap<>();
        for (Row row : rows) {
            if (row instanceof Limit limit) {
                kept.merge(key(limit), limit, (own, other) -> other.value().compareTo(own.value()) < 0 ? other : own);
            }
        }
        return rows.stream()
                .filter(row -> !(row instanceof Limit limit) || kept.get(key(limit)) == limit)
                .toList();
    }

    private static List<Object> key(Limit limit) {
        return List.of(limit.agent(), limit.averaging(), limit.unit());
    }
}
