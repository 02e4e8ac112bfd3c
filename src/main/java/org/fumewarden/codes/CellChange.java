package org.fumewarden.codes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A cell of somebody's tables that differs from that of the program.
 *
 * @param place the cell, or the row where it stood
 * @param cell the cell as it is, or as the program has it when it is gone
 * @param now what it says; empty when it is gone
 * @param program what the program has; empty when it has no such cell
 * @param added true in a row that the program has not
 */
public record CellChange(
        WrittenCell place, WrittenCell cell, Optional<String> now, Optional<String> program, boolean added) {

    /** The changes of a folder, in the order of the program and then of the folder; what is left of a lost row is none. */
    public static List<CellChange> between(List<WrittenCell> folder, List<WrittenCell> program) {
        Map<String, WrittenCell> now = byKey(folder);
        Map<String, WrittenCell> before = byKey(program);
        Map<String, WrittenCell> places = new HashMap<>();
        now.values().forEach(cell -> places.putIfAbsent(cell.rowKey(), cell));
        Map<String, WrittenCell> rows = new HashMap<>();
        before.values().forEach(cell -> rows.put(cell.rowKey(), cell));
        List<CellChange> changes = new ArrayList<>();
        for (WrittenCell cell : before.values()) {
            WrittenCell here = now.get(cell.key());
            if (here == null ? places.containsKey(cell.rowKey()) : !here.value().equals(cell.value())) {
                Optional<WrittenCell> found = Optional.ofNullable(here);
                changes.add(new CellChange(
                        found.orElseGet(() -> places.get(cell.rowKey())),
                        found.orElse(cell),
                        found.map(WrittenCell::value),
                        Optional.of(cell.value()),
                        false));
            }
        }
        now.values().stream()
                .filter(cell -> !before.containsKey(cell.key()))
                .map(cell -> new CellChange(
                        cell, cell, Optional.of(cell.value()), Optional.empty(), !rows.containsKey(cell.rowKey())))
                .forEach(changes::add);
        return changes;
    }

    private static Map<String, WrittenCell> byKey(List<WrittenCell> cells) {
        Map<String, WrittenCell> byKey = new LinkedHashMap<>();
        cells.forEach(cell -> byKey.putIfAbsent(cell.key(), cell));
        return byKey;
    }
}
