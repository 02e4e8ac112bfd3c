package org.fumewarden.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.WrittenCell;

/** Whole rows of the program that somebody's rules lack, hold twice or date anew: one slip is one message. */
final class RowChanges {
    private static final String FROM = " from ";
    private static final String FIRST = " #1";

    private final Set<String> settled = new HashSet<>();
    private final List<Problem> problems = new ArrayList<>();

    private RowChanges() {}

    /** The changes of a folder beside the rules that ship; none for these. */
    static RowChanges in(RuleFolder folder) {
        RowChanges changes = new RowChanges();
        if (!folder.isShipped()) {
            changes.compare(rows(folder), rows(RuleFolder.shipped()));
        }
        return changes;
    }

    List<Problem> problems() {
        return problems;
    }

    /** True when a cell belongs to a row that is named already. */
    boolean settled(String table, String row) {
        return settled.contains(WrittenCell.rowKey(table, row));
    }

    private void compare(Map<String, List<WrittenCell>> now, Map<String, List<WrittenCell>> before) {
        Map<String, WrittenCell> tables = now.values().stream()
                .map(cells -> cells.get(0))
                .collect(Collectors.toMap(WrittenCell::table, cell -> cell, (some, other) -> some));
        int line = 0;
        for (Map.Entry<String, List<WrittenCell>> row : before.entrySet()) {
            WrittenCell cell = row.getValue().get(0);
            if (now.containsKey(row.getKey())) {
                line = now.get(row.getKey()).get(0).line();
            } else if (tables.containsKey(cell.table())) {
                settled.add(row.getKey());
                gone(row.getKey(), row.getValue(), tables.get(cell.table()).file(), line, now, before.keySet());
            }
        }
    }

    private void gone(
            String key,
            List<WrittenCell> cells,
            String file,
            int line,
            Map<String, List<WrittenCell>> now,
            Set<String> before) {
        if (now.containsKey(key + FIRST)) {
            List<String> twice =
                    now.keySet().stream().filter(k -> k.startsWith(key + " #")).toList();
            settled.addAll(twice);
            WrittenCell last = now.get(twice.get(twice.size() - 1)).get(0);
            say(
                    file,
                    last.line(),
                    key,
                    "is written " + twice.size() + " times.",
                    "drop all but one, or date them apart.");
            return;
        }
        for (Map.Entry<String, List<WrittenCell>> other : now.entrySet()) {
            if (!before.contains(other.getKey())
                    && key.contains(FROM)
                    && StringUtils.substringBefore(key, FROM).equals(StringUtils.substringBefore(other.getKey(), FROM))
                    && settled.add(other.getKey())) {
                String day = StringUtils.substringAfter(other.getKey(), FROM);
                say(
                        file,
                        other.getValue().get(0).line(),
                        key,
                        (day.isEmpty() ? "has no from" : "has from: " + day) + ", but the program has from: "
                                + StringUtils.substringAfter(key, FROM) + ".",
                        "restore the day; for a new edition add a row of its own.");
                return;
            }
        }
        String words = cells.stream()
                .filter(WrittenCell::number)
                .map(cell -> cell.cell() + " " + cell.value())
                .distinct()
                .collect(Collectors.joining(", "));
        say(
                file,
                line,
                key,
                "is a row of the program that is gone" + (words.isEmpty() ? "" : " (" + words + ")")
                        + "; it stood below this line.",
                "restore the row" + written(cells.get(0))
                        + (cells.get(0).kind().equals("sources")
                                ? "."
                                : ", or close it with until: and the first day on which it no longer holds."));
    }

    /** How the program writes a row of one line, or the line from which a longer one may be copied. */
    private static String written(WrittenCell cell) {
        RuleFolder shipped = RuleFolder.shipped();
        String name = StringUtils.removeStart(cell.file(), shipped.origin() + "/");
        String line = shipped.text(name)
                .lines()
                .skip(Math.max(0, cell.line() - 1L))
                .findFirst()
                .orElse("")
                .strip();
        return line.startsWith("- {") && line.endsWith("}")
                ? ", " + line
                : " from line " + cell.line() + " of " + name + " of the program";
    }

    private void say(String file, int line, String row, String message, String maybe) {
        problems.add(new Problem(file, line, row, message, maybe));
    }

    private static Map<String, List<WrittenCell>> rows(RuleFolder folder) {
        Map<String, List<WrittenCell>> rows = new LinkedHashMap<>();
        for (Collection<WrittenCell> cells : List.of(WrittenCell.every(folder), WrittenCell.all(folder))) {
            cells.forEach(cell ->
                    rows.computeIfAbsent(cell.rowKey(), k -> new ArrayList<>()).add(cell));
        }
        return rows;
    }
}
