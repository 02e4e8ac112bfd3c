package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.ClauseFor;
import org.fumewarden.model.Figures;
import org.fumewarden.model.Keyed;
import org.fumewarden.model.Row;

/**
 * Rows of somebody's tables that differ from those of the program: what nobody typed a second time was compared by nobody, whatever
 * the table says; what somebody did type is a value of the organisation.
 */
public final class EditedRows {
    /** Behind what the program has for all rows of a table. */
    public static final String WHOLE = ", in the whole table";

    private static final String NEW = "no such row";
    /** Cells that hold a text, which speaks for itself. */
    private static final Set<String> WORDS = Set.of("says", "name", "title", "do", "clause", "reason");

    /** Cells that hold spans of time, which people read in words. */
    private static final Set<String> SPANS = Set.of("period", "keep");

    /**
     * How one line of a table differs.
     *
     * @param program what nobody typed
     * @param typed the values that the organisation typed
     * @param cells the names of all that differ
     */
    record At(List<Difference> program, List<TypedApart.Line> typed, Set<String> cells) {
        static final At NOTHING = new At(List.of(), List.of(), Set.of());

        private At() {
            this(new ArrayList<>(), new ArrayList<>(), new HashSet<>());
        }

        private At and(At other) {
            At both = new At(new ArrayList<>(program), new ArrayList<>(typed), new HashSet<>(cells));
            both.program.addAll(other.program);
            both.typed.addAll(other.typed);
            both.cells.addAll(other.cells);
            return both;
        }

        /** What is beside its values. */
        At withoutValues() {
            return new At(program.stream().filter(d -> !d.value()).toList(), List.of(), cells);
        }

        /** What tells of the value in a cell; of one that is none, everything. */
        At about(String cell) {
            return new At(
                    program.stream().filter(d -> isAbout(d.cell(), cell)).toList(),
                    typed.stream().filter(line -> isAbout(line.cell(), cell)).toList(),
                    cells);
        }

        private static boolean isAbout(String changed, String cell) {
            return cell.isEmpty()
                    || changed.equals(cell)
                    || !Keyed.keys(Averaging.class).contains(changed);
        }

        /** What the program has, in words; empty where it has nothing else. */
        String words() {
            return words(d -> true);
        }

        /** The same of its values only, and of no remark on one. */
        String values() {
            return words(Difference::value);
        }

        private String words(Predicate<Difference> some) {
            return program.stream().filter(some).map(Difference::has).distinct().collect(Collectors.joining(", "));
        }
    }

    /** One cell that differs, with what the program has in words. */
    record Difference(String cell, String has, boolean value) {}

    /** By file and line. */
    private final Map<String, Map<Integer, At>> byFile = new HashMap<>();

    /** What the program has in each table that differs, by file. */
    private final Map<String, List<DatedRow>> program = new HashMap<>();

    /** Those of a folder; none in a table that ships as it is, or that the program does not know. */
    static EditedRows in(RuleFolder folder) {
        EditedRows edited = new EditedRows();
        RuleFolder program = folder.program();
        RuleFolder mine = folder.like(program);
        List<String> tables = mine.names("", ".yaml").stream()
                .filter(name -> name.contains("/tables/"))
                .toList();
        if (!mine.files().isEmpty()) {
            Map<String, TypedApart.Line> typed = TypedApart.beside(folder).lines().stream()
                    .collect(Collectors.toMap(TypedApart.Line::key, line -> line, (a, b) -> b));
            CellChange.between(cells(mine), cells(program))
                    .forEach(change -> edited.take(
                            change, Optional.ofNullable(typed.get(change.cell().key()))));
            for (String name : tables) {
                edited.program.put(
                        mine.located(name).file(),
                        new TableReader(name, program.located(name)).read().rows());
            }
        }
        return edited;
    }

    private static List<WrittenCell> cells(RuleFolder folder) {
        return Stream.concat(WrittenCell.every(folder).stream(), WrittenCell.all(folder).stream())
                .toList();
    }

    private void take(CellChange change, Optional<TypedApart.Line> typed) {
        WrittenCell place = change.place();
        if (change.added() && place.row().equals(WrittenCell.HEAD)) {
            return;
        }
        At at = byFile.computeIfAbsent(place.file(), f -> new HashMap<>())
                .computeIfAbsent(place.row().equals(WrittenCell.HEAD) ? 0 : place.line(), l -> new At());
        String cell = change.cell().cell();
        at.cells.add(cell);
        if (typed.isEmpty()
                || change.now().isEmpty()
                || !WrittenCell.same(change.now().get(), typed.get().value())) {
            String has = change.program()
                    .map(value -> WORDS.contains(cell)
                            ? '"' + value + '"'
                            : cell + " " + (SPANS.contains(cell) ? Figures.spans(value) : value))
                    .orElse(change.added() ? NEW : "no " + cell);
            has += place.row().equals(WrittenCell.HEAD) ? WHOLE : "";
            at.program.add(new Difference(cell, has, change.cell().isValue()));
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

    /** True when the program has the same value under the address of a row, whatever else differs in its line; a clause is no value. */
    boolean holds(String file, Row row, LocalDate from) {
        String hash = CellHash.of(row);
        return !(row instanceof ClauseFor)
                && program.getOrDefault(file, List.of()).stream()
                        .anyMatch(d ->
                                d.from().equals(from) && CellHash.of(d.row()).equals(hash));
    }

    /** By {@link #key}, what the program has on a day in the tables that differ from its own. */
    Map<String, Row> program(LocalDate day, List<TableFile> tables) {
        List<Row> rows = tables.stream()
                .flatMap(table -> program.getOrDefault(table.file(), table.rows()).stream())
                .filter(row -> row.inForce(day))
                .map(DatedRow::row)
                .toList();
        Set<String> changed = tables.stream()
                .filter(table -> program.containsKey(table.file()))
                .map(TableFile::id)
                .collect(Collectors.toSet());
        return StricterLimits.of(rows).stream()
                .filter(row -> changed.contains(row.ref().table()))
                .collect(Collectors.toMap(EditedRows::key, row -> row, (a, b) -> a, LinkedHashMap::new));
    }

    /** Kind and address of a row: one line of a table may give rows of two kinds. */
    public static String key(Row row) {
        return row.getClass().getSimpleName() + " " + row.ref().address();
    }
}
