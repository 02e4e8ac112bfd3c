package org.fumewarden.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.DatedRow;
import org.fumewarden.codes.TableFile;
import org.fumewarden.model.Confidence;
import org.fumewarden.report.html.Words;

/** How well the values of each table of a code are known, the least known first. */
record ValueSheet(Words words) {
    /** Before the key of what is said of a row that is known so. */
    static final String KNOWN = "codes.known.";

    private static final List<String> KEYS =
            List.of("memory", "practice", "derived", "read", "affirmed", "cross-checked");

    private record Line(String table, Map<String, Integer> counts) {
        private int of(String known) {
            return counts.getOrDefault(known, 0);
        }
    }

    /** The code that rests most on memory first. */
    String of(List<CodeBook> books) {
        return books.stream()
                .sorted(Comparator.comparingLong(ValueSheet::memory).reversed().thenComparing(book -> book.card()
                        .id()))
                .map(this::of)
                .collect(Collectors.joining());
    }

    private static long memory(CodeBook book) {
        return book.tables().stream()
                .flatMap(table -> table.rows().stream())
                .filter(row -> known(row).equals(Confidence.MEMORY.key()))
                .count();
    }

    private String of(CodeBook book) {
        List<Line> lines = new ArrayList<>();
        Map<String, Integer> all = new LinkedHashMap<>();
        for (TableFile table : book.tables()) {
            if (!table.rows().isEmpty()) {
                Map<String, Integer> counts = new LinkedHashMap<>();
                table.rows().forEach(row -> {
                    counts.merge(known(row), 1, Integer::sum);
                    all.merge(known(row), 1, Integer::sum);
                });
                lines.add(new Line(table.id(), counts));
            }
        }
        lines.sort(Comparator.comparingInt((Line line) -> -line.of(Confidence.MEMORY.key()))
                .thenComparing(Line::table));
        StringBuilder sheet = new StringBuilder(book.card().id() + ": " + words(new Line("", all)) + "\n");
        lines.forEach(line -> sheet.append(String.format("  %-28s %s%n", line.table(), words(line))));
        return sheet.append('\n').toString();
    }

    private static String known(DatedRow row) {
        return row.affirmations().isEmpty()
                ? row.row().ref().citation().confidence().key()
                : "affirmed";
    }

    private String words(Line line) {
        return KEYS.stream()
                .filter(known -> line.of(known) > 0)
                .map(known -> words.say(KNOWN + known) + " " + line.of(known))
                .collect(Collectors.joining(", "));
    }
}
