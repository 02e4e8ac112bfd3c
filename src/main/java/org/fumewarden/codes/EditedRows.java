package org.fumewarden.codes;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Rows of somebody's tables that differ from those of the program, and that nobody typed a second time. What stands in them was
 * compared by nobody, whatever the table says.
 */
final class EditedRows {
    private static final String NEW = "no such row";

    /** By file and line, what the program has there. */
    private final Map<String, Map<Integer, String>> byFile = new HashMap<>();

    /** Those of a folder; none in a table that ships as it is, or that the program does not know. */
    static EditedRows in(RuleFolder folder) {
        EditedRows edited = new EditedRows();
        RuleFolder program = folder.program();
        RuleFolder mine = folder.like(program);
        if (!mine.names("", ".yaml").isEmpty()) {
            Map<String, String> typed = TypedApart.beside(folder).lines().stream()
                    .collect(Collectors.toMap(TypedApart.Line::key, TypedApart.Line::value, (a, b) -> b));
            edited.compare(byKey(mine), byKey(program), typed);
        }
        return edited;
    }

    private static Map<String, WrittenCell> byKey(RuleFolder folder) {
        Map<String, WrittenCell> cells = new LinkedHashMap<>();
        WrittenCell.every(folder).forEach(cell -> cells.put(cell.key(), cell));
        WrittenCell.all(folder).forEach(cell -> cells.putIfAbsent(cell.key(), cell));
        return cells;
    }

    private void compare(Map<String, WrittenCell> now, Map<String, WrittenCell> before, Map<String, String> typed) {
        Map<String, WrittenCell> rows = new HashMap<>();
        before.values().forEach(cell -> rows.put(cell.rowKey(), cell));
        Map<String, WrittenCell> places = new HashMap<>();
        now.values().forEach(cell -> {
            places.put(cell.rowKey(), cell);
            boolean same = before.containsKey(cell.key())
                    && before.get(cell.key()).value().equals(cell.value());
            if (!same && !cell.value().equals(typed.get(cell.key()))) {
                say(
                        cell,
                        before.containsKey(cell.key())
                                ? cell.cell() + " " + before.get(cell.key()).value()
                                : rows.containsKey(cell.rowKey()) ? "no " + cell.cell() : NEW);
            }
        });
        before.values().stream()
                .filter(cell -> !now.containsKey(cell.key()) && places.containsKey(cell.rowKey()))
                .forEach(cell -> say(places.get(cell.rowKey()), cell.cell() + " " + cell.value()));
    }

    private void say(WrittenCell place, String words) {
        byFile.computeIfAbsent(place.file(), f -> new HashMap<>())
                .merge(
                        place.row().equals(WrittenCell.HEAD) ? 0 : place.line(),
                        words,
                        (some, other) -> List.of(some.split(", ")).contains(other) ? some : some + ", " + other);
    }

    /** What the program has in place of a row, in words; empty where it has the same. */
    Optional<String> at(String file, int line) {
        Map<Integer, String> lines = byFile.getOrDefault(file, Map.of());
        String words = List.of(0, line).stream()
                .map(lines::get)
                .filter(java.util.Objects::nonNull)
                .collect(Collectors.joining(", "));
        return Optional.of(words).filter(w -> !w.isEmpty());
    }
}
