package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.DatedRow;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.TableFile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** In a table of any kind the old row holds the day before a renewal and the new one on the day; an unknown cell is named. */
final class DatedKindsTest {
    private static final LocalDate DAY = LocalDate.of(2031, 5, 6);
    private static final String RULES = "rules/";

    /** One table of each kind, under the code gb or us. */
    static Stream<TableFile> kinds() {
        Map<String, TableFile> kinds = new TreeMap<>();
        for (String code : List.of("gb", "us")) {
            for (TableFile table :
                    CodeBook.read(RuleFolder.at(Path.of(RULES)), code).tables()) {
                if (!table.rows().isEmpty() && !table.kind().equals("questions")) {
                    kinds.putIfAbsent(table.kind(), table);
                }
            }
        }
        Set<String> dated = new TreeSet<>(TableFile.kinds());
        dated.remove("questions");
        assertEquals(dated, kinds.keySet());
        assertEquals(dated, RenewedKindsTest.CELLS.keySet());
        return kinds.values().stream();
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void theOldRowHoldsTheDayBeforeAndTheNewOneOnTheDay(TableFile table) {
        Renewed renewed = renewed(table, "");
        List<Integer> before = renewed.inForce(DAY.minusDays(1));
        List<Integer> on = renewed.inForce(DAY);
        assertTrue(!before.isEmpty() && before.stream().allMatch(l -> l == renewed.old()), before.toString());
        assertTrue(!on.isEmpty() && on.stream().allMatch(l -> l == renewed.fresh()), on.toString());
        assertEquals(before.size(), on.size());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void aMisspeltCellIsNamedWithItsLine(TableFile table) {
        InputException fault = assertThrows(InputException.class, () -> renewed(table, "untill: 1"));
        assertTrue(
                fault.problems().stream()
                        .anyMatch(p -> p.line() > table.rows().get(0).line()
                                && p.text().contains("untill is not a cell of this kind of table")),
                fault.getMessage());
    }

    /**
     * A table with its first row closed on the day, and the same anew from the day on.
     *
     * @param old line of the row that is closed
     * @param fresh line of the row that begins
     */
    private record Renewed(TableFile table, int old, int fresh) {
        List<Integer> inForce(LocalDate day) {
            return table.rows().stream()
                    .filter(r -> r.inForce(day) && (r.line() == old || r.line() == fresh))
                    .map(DatedRow::line)
                    .toList();
        }
    }

    private static Renewed renewed(TableFile table, String more) {
        List<String> lines = new ArrayList<>(lines(Path.of(table.file())));
        int old = table.rows().get(0).line();
        int end = old;
        while (end < lines.size() && !lines.get(end).matches(" {2}[-#].*")) {
            end++;
        }
        List<String> row = lines.subList(old - 1, end).stream()
                .map(l -> l.replaceAll(", (from|until): [0-9-]+", ""))
                .filter(l -> !l.matches(" *(from|until): .*"))
                .toList();
        List<String> both = new ArrayList<>(with(row, "until: " + DAY));
        int fresh = old + both.size();
        both.addAll(with(row, "from: " + DAY));
        lines.subList(old - 1, end).clear();
        lines.addAll(old - 1, more.isEmpty() ? both : with(both, more));
        String name = table.file().substring(RULES.length());
        byte[] text = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
        return new Renewed(CodeBook.table(RuleFolder.of(RULES, Map.of(name, text)), name), old, fresh);
    }

    /** A row with one more cell, whether it stands on one line or on several. */
    private static List<String> with(List<String> row, String cell) {
        List<String> more = new ArrayList<>(row);
        String last = more.get(more.size() - 1);
        if (last.endsWith("}") && row.get(0).startsWith("  - {")) {
            more.set(more.size() - 1, last.substring(0, last.lastIndexOf('}')) + ", " + cell + "}");
        } else {
            more.add("    " + cell);
        }
        return more;
    }
}
