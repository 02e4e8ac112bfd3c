package org.fumewarden.codes;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A cell of a table as it is written, under the name by which it was typed a second time. */
public record WrittenCell(String file, int line, String table, String kind, String row, String cell, String value) {
    private static final Set<String> NO_KEY = Set.of(
            "note",
            "reason",
            "beside",
            "clause",
            "confidence",
            "source",
            "edition",
            "fraction",
            "basis",
            "unit",
            "name",
            "cas",
            "colour",
            "text",
            "do",
            "peaks",
            "until");
    private static final Set<String> HELD = Set.of("fraction", "basis", "confidence", "edition");
    private static final Set<String> HELD_KINDS = Set.of("limits", "benchmarks", "danger-levels", "factors");
    private static final Set<String> SEEN = Set.of("read", "cross-checked");
    private static final Set<String> FREE = Set.of("note", "checked-on", "read", "url");
    /** The table and kind under which the cells of a list of documents stand. */
    static final String SOURCES = "sources";
    /** Where a row stands and since when, which is no part of what it says. */
    private static final Set<String> PLACE = Set.of(
            "source",
            "clause",
            "edition",
            "confidence",
            "also",
            "successor",
            "reason",
            "beside",
            "cas",
            "colour",
            "from");
    /** The row of what stands above the rows. */
    static final String HEAD = "head";

    private static final String FROM = "from";
    private static final Set<String> ALWAYS_TYPED = Set.of("limits", "danger-levels", "filters");
    private static final Set<String> COUNTED = Set.of("unit", "fraction", "basis");
    private static final Set<String> INTERVALS = Set.of("period", "keep");
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9.]+([eE][-+]?[0-9]+)?");
    private static final Pattern INTERVAL = Pattern.compile("\\bP(\\d+)[DWMY]\\b");

    public String key() {
        return rowKey() + " / " + cell;
    }

    /** The row in which it stands, with its table. */
    public String rowKey() {
        return rowKey(table, row);
    }

    public static String rowKey(String table, String row) {
        return table + " / " + row;
    }

    public boolean number() {
        return NUMBER.matcher(value).matches();
    }

    /** True for what nobody may mistype unseen: a limit, a dangerous level, where a filter ends, an interval of time. */
    public boolean isTypedTwice() {
        return INTERVALS.contains(cell)
                || ALWAYS_TYPED.contains(kind) && (COUNTED.contains(cell) || number() && !HELD.contains(cell));
    }

    /** True for a cell of a new row that could change advice and that the name of its row does not say. */
    public boolean isAsked() {
        return !kind.equals(SOURCES)
                && !PLACE.contains(cell)
                && !value.isEmpty()
                && !List.of(row.split(" ")).contains(value);
    }

    /** True for a cell that says what a row gives, not where it stands nor when it holds. */
    public boolean isValue() {
        return kind.equals("clauses") || !PLACE.contains(cell) && !cell.equals("until");
    }

    /** The folder of the rule base in which its table stands. */
    public String folder() {
        Path folder = Path.of(file).getParent();
        return (folder.endsWith("tables") ? folder.getParent() : folder)
                .getFileName()
                .toString();
    }

    /** True for the same number however it is written, and for the same words. */
    public static boolean same(String some, String other) {
        try {
            return new BigDecimal(some).compareTo(new BigDecimal(other)) == 0;
        } catch (NumberFormatException e) {
            return some.equals(other);
        }
    }

    /** True for a row or table that says its value was seen in a copy, where a slip could hurt. */
    public boolean saysSeen() {
        return cell.equals("confidence") && SEEN.contains(value) && HELD_KINDS.contains(kind);
    }

    /** Every number, unit and interval of the tables. */
    public static List<WrittenCell> all(RuleFolder folder) {
        return cells(folder, WrittenCell::words, WrittenCell::value);
    }

    /** What a value is of and how well it is known, where a slip could hurt. */
    public static List<WrittenCell> words(RuleFolder folder) {
        return cells(
                        folder,
                        WrittenCell::words,
                        (name, cell) -> HELD.contains(name) ? Optional.of(plain(cell)) : Optional.empty())
                .stream()
                .filter(cell -> HELD_KINDS.contains(cell.kind()))
                .toList();
    }

    /** Every cell of every row and head, of every listed document and of the cards of codes, but for remarks and the day of a check. */
    public static List<WrittenCell> every(RuleFolder folder) {
        BiFunction<String, Located, Optional<String>> value =
                (name, cell) -> FREE.contains(name) ? Optional.empty() : Optional.of(plain(cell));
        List<WrittenCell> cells = cells(folder, WrittenCell::name, value);
        folder.folders().forEach(part -> {
            rows(SOURCES, SOURCES, Document.items(folder, part), WrittenCell::name, value, cells);
            folder.names(part + CodeCard.FILE, "")
                    .forEach(file -> rows(
                            part + "-code", "code", List.of(folder.located(file)), WrittenCell::name, value, cells));
        });
        return cells;
    }

    private static List<WrittenCell> cells(
            RuleFolder folder, Function<Located, String> naming, BiFunction<String, Located, Optional<String>> value) {
        List<WrittenCell> cells = new ArrayList<>();
        for (String file : folder.names("", ".yaml")) {
            if (file.contains("/tables/")) {
                of(folder.located(file), naming, value, cells);
            }
        }
        return cells;
    }

    /** A cell as text, however it is written. */
    private static String plain(Located cell) {
        if (cell.isList()) {
            return cell.items().stream().map(WrittenCell::plain).collect(Collectors.joining(", "));
        }
        return cell.isMap()
                ? cell.entries().entrySet().stream()
                        .map(e -> e.getKey() + " " + plain(e.getValue()))
                        .collect(Collectors.joining(", "))
                : cell.isNull() ? "" : cell.text();
    }

    private static void of(
            Located root,
            Function<Located, String> naming,
            BiFunction<String, Located, Optional<String>> value,
            List<WrittenCell> cells) {
        Map<String, Located> head = root.entries();
        List<Located> rows = Optional.ofNullable(head.get("rows"))
                .filter(Located::isList)
                .map(Located::items)
                .orElse(List.of());
        if (!head.containsKey("id") || !head.containsKey("kind")) {
            return;
        }
        String table = head.get("id").text();
        String kind = head.get("kind").text();
        head.forEach((name, cell) -> {
            if (!name.equals("rows")) {
                value.apply(name, cell)
                        .map(found -> new WrittenCell(root.file(), root.line(), table, kind, HEAD, name, found))
                        .ifPresent(cells::add);
            }
        });
        rows(table, kind, rows, naming, value, cells);
    }

    private static void rows(
            String table,
            String kind,
            List<Located> rows,
            Function<Located, String> naming,
            BiFunction<String, Located, Optional<String>> value,
            List<WrittenCell> cells) {
        List<String> words = rows.stream().map(naming).toList();
        Map<String, Long> often =
                words.stream().collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            Located row = rows.get(i);
            Map<String, Located> entries = row.isMap() ? row.entries() : Map.of();
            int number = seen.merge(words.get(i), 1, Integer::sum);
            String key = (often.get(words.get(i)) > 1 ? words.get(i) + " #" + number : words.get(i)).strip();
            String id = entries.containsKey("id") ? entries.get("id").text() : key;
            entries.forEach((name, cell) -> value.apply(name, cell)
                    .map(found -> new WrittenCell(
                            row.file(), row.line(), table, kind, INTERVALS.contains(name) ? id : key, name, found))
                    .ifPresent(cells::add));
        }
    }

    private static Optional<String> value(String name, Located cell) {
        if (cell.isList()) {
            return cell.items().stream()
                    .filter(Located::isScalar)
                    .filter(item -> plainNumber(item))
                    .map(Located::text)
                    .min(Comparator.comparing(BigDecimal::new));
        }
        if (!cell.isScalar() || cell.isNull()) {
            return Optional.empty();
        }
        boolean counts = name.equals("unit")
                || INTERVALS.contains(name) && INTERVAL.matcher(cell.text()).find()
                || !NO_KEY.contains(name) && plainNumber(cell);
        return counts ? Optional.of(cell.text()) : Optional.empty();
    }

    private static boolean plainNumber(Located cell) {
        return !cell.quoted() && !cell.isNull() && NUMBER.matcher(cell.text()).matches();
    }

    /** The id of a row with its first day; its words where it has no id. */
    private static String name(Located row) {
        Map<String, Located> entries = row.isMap() ? row.entries() : Map.of();
        return entries.containsKey("id")
                ? entries.get("id").text()
                        + (entries.containsKey(FROM)
                                ? " " + FROM + " " + entries.get(FROM).text()
                                : "")
                : words(row);
    }

    private static String words(Located row) {
        List<String> words = new ArrayList<>();
        List<String> days = new ArrayList<>(1);
        if (row.isMap()) {
            row.entries().forEach((name, cell) -> {
                if (cell.isScalar() && !cell.isNull()) {
                    if (name.equals(FROM)) {
                        days.add(name + " " + cell.text());
                    } else if (!NO_KEY.contains(name) && word(cell)) {
                        words.add(cell.text());
                    }
                }
            });
        }
        words.addAll(days);
        return String.join(" ", words);
    }

    private static boolean word(Located cell) {
        return cell.quoted() || !plainNumber(cell) && !Set.of("true", "false").contains(cell.text());
    }
}
