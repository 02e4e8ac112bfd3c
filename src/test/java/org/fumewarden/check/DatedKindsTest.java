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
import java.util.TreeMap;
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

    /** One table of each kind whose rows stand on one line each, under the code gb or us. */
    static Stream<TableFile> kinds() {
        Map<String, TableFile> kinds = new TreeMap<>();
        for (String code : List.of("gb", "us")) {
            for (TableFile table :
                    CodeBook.read(RuleFolder.at(Path.of(RULES)), code).tables()) {
                if (!table.rows().isEmpty()
                        && !table.kind().equals("questions")
                        && first(table).startsWith("  - {")) {
                    kinds.putIfAbsent(table.kind(), table);
                }
            }
        }
        assertTrue(kinds.size() > 25, kinds.keySet().toString());
        return kinds.values().stream();
    }

    private static String first(TableFile table) {
        return lines(Path.of(table.file())).get(table.rows().get(0).line() - 1);
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
        int line = table.rows().get(0).line();
        TableFile renewed = renewed(table, "");
        List<Integer> before = inForce(renewed, DAY.minusDays(1), line);
        List<Integer> on = inForce(renewed, DAY, line);
        assertTrue(!before.isEmpty() && before.stream().allMatch(l -> l == line), before.toString());
        assertTrue(!on.isEmpty() && on.stream().allMatch(l -> l == line + 1), on.toString());
        assertEquals(before.size(), on.size());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void aMisspeltCellIsNamedWithItsLine(TableFile table) {
        int line = table.rows().get(0).line();
        InputException fault = assertThrows(InputException.class, () -> renewed(table, ", untill: 1"));
        assertTrue(
                fault.problems().stream()
                        .anyMatch(
                                p -> p.line() == line + 1 && p.text().contains("is not a cell of this kind of table")),
                fault.getMessage());
    }

    /** The table with its first row closed on the day, and the same anew from the day on. */
    private static TableFile renewed(TableFile table, String more) {
        List<String> lines = new ArrayList<>(lines(Path.of(table.file())));
        int line = table.rows().get(0).line();
        String row = lines.get(line - 1);
        String bare = row.substring(0, row.lastIndexOf('}')).replaceAll(", (from|until): [0-9-]+", "");
        lines.set(line - 1, bare + ", until: " + DAY + "}");
        lines.add(line, bare + ", from: " + DAY + more + "}");
        String name = table.file().substring(RULES.length());
        byte[] text = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
        return CodeBook.table(RuleFolder.of(RULES, Map.of(name, text)), name);
    }

    private static List<Integer> inForce(TableFile table, LocalDate day, int line) {
        return table.rows().stream()
                .filter(r -> r.inForce(day) && (r.line() == line || r.line() == line + 1))
                .map(DatedRow::line)
                .toList();
    }
}
