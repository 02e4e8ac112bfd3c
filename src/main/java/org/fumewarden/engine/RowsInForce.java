package org.fumewarden.engine;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.model.Row;
import org.kie.api.KieBase;

/**
 * The rows in force on one day.
 *
 * @param all in the order of tables and rows
 * @param byPhase those of a type that the rules of the phase read
 */
record RowsInForce(List<Row> all, Map<Phase, List<Row>> byPhase) {
    static RowsInForce of(List<Row> all, Map<Phase, KieBase> rules) {
        Map<Phase, List<Row>> byPhase = new EnumMap<>(Phase.class);
        rules.forEach((phase, base) -> {
            ReadTypes read = ReadTypes.of(base);
            byPhase.put(phase, all.stream().filter(read::contain).toList());
        });
        return new RowsInForce(List.copyOf(all), byPhase);
    }
}
