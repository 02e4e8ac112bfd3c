package org.fumewarden.codes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Rows of somebody's tables that differ from those of the program: what nobody typed a second time was compared by nobody, whatever
 * the table says; what somebody did type is a value of the organisation.
 */
final class EditedRows {
    private static final String NEW = "no such row";

    /**
     * How one line of a table differs.
     *
     * @param program what the program has, in words, where nobody typed the difference
     * @param values those of it that are values, and no remark on one
     * @param typed the values that the organisation typed
     */
    record At(Set<String> program, Set<String> values, List<TypedApart.Line> typed) {
        static final At NOTHING = new At(Set.of(), Set.of(), List.of());

        private At() {
            this(new LinkedHashSet<>(), new LinkedHashSet<>(), new ArrayList<>());
        }

        private At and(At other) {
            At both = new At(new LinkedHashSet<>(program), new LinkedHashSet<>(values), new ArrayList<>(typed));
            both.program.addAll(other.program);
            both.values.addAll(other.values);
            both.typed.addAll(other.typed);
            return both;
        }

        Optional<String> words() {
            return Optional.of(String.join(", ", program)).filter(w -> !w.isEmpty());
        }
    }

    /** By file and line. */
    private final Map<String, Map<Integer, At>> byFile = new HashMap<>();

    /** Those of a folder; none in a table that ships as it is, or that the program does not know. */
    static EditedRows in(RuleFolder folder) {
        EditedRows edited = new EditedRows();
        RuleFolder program = folder.program();
        RuleFolder mine = folder.like(program);
        if (!mine.names("", ".yaml").isEmpty()) {
            Map<String, TypedApart.Line> typed = TypedApart.beside(folder).lines().stream()
                    .collect(Collectors.toMap(TypedApart.Line::key, line -> line, (a, b) -> b));
            CellChange.between(cells(mine), cells(program))
                    .forEach(change -> edited.take(
                            change, Optional.ofNullable(typed.get(change.cell().key()))));
        }
        return edited;
    }

    private static List<WrittenCell> cells(RuleFolder folder) {
        return Stream.concat(WrittenCell.every(folder).stream(), WrittenCell.all(folder).stream())
                .toList();
    }

    private void take(CellChange change, Optional<TypedApart.Line> typed) {
        WrittenCell place = change.place();
        At at = byFile.computeIfAbsent(place.file(), f -> new HashMap<>())
                .computeIfAbsent(place.row().equals(WrittenCell.HEAD) ? 0 : place.line(), l -> new At());
        String cell = change.cell().cell();
        if (typed.isEmpty()
                || change.now().isEmpty()
                || !WrittenCell.same(change.now().get(), typed.get().value())) {
            String has = change.program().map(value -> cell + " " + value).orElse(change.added() ? NEW : "no " + cell);
            at.program.add(has);
            if (change.cell().isValue()) {
                at.values.add(has);
            }
        } else if (change.cell().isValue()) {
            at.typed.add(typed.get());
        }
    }

    /** How a row differs, with the head of its table. */
    At at(String file, int line) {
        Map<Integer, At> lines = byFile.getOrDefault(file, Map.of());
        return Stream.of(0, line)
                .flatMap(l -> Optional.ofNullable(lines.get(l)).stream())
                .reduce(At.NOTHING, At::and);
    }
}
