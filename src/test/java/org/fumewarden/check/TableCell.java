package org.fumewarden.check;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.RuleFolder;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * A cell of a rule table, read from the text of the file and not by the reader of the program.
 *
 * @param row the words of the row that tell it from others, with its first day, and "#2" for the second of the same words
 * @param line where it stands, from 1
 * @param start first character of the value in its file
 */
record TableCell(String file, String table, String kind, String row, String cell, String value, int line, int start) {
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
    private static final Set<String> INTERVALS = Set.of("period", "keep");
    private static final Pattern INTERVAL = Pattern.compile("\\bP(\\d+)[DWMY]\\b");
    private static final String FROM = "from";

    /** The name by which a cell is listed. */
    String key() {
        return table + " / " + row + " / " + cell;
    }

    /** True when the cell holds a number. */
    boolean isNumber() {
        return value.matches("[-+]?[0-9.]+([eE][-+]?[0-9]+)?");
    }

    /** True when the cell holds an interval of time, or says with one how long something is kept. */
    boolean isInterval() {
        return INTERVALS.contains(cell) && INTERVAL.matcher(value).find();
    }

    /** The cell with each of its intervals one unit longer, and one shorter. */
    List<TableCell> nudgedIntervals() {
        return INTERVAL.matcher(value)
                .results()
                .flatMap(found -> Stream.of(1, -1).map(by -> {
                    int other = Integer.parseInt(found.group(1)) + by;
                    return with(value.substring(0, found.start(1)) + other + value.substring(found.end(1)));
                }))
                .toList();
    }

    BigDecimal number() {
        return new BigDecimal(value);
    }

    /** The cell with one more, or one less, in its last digit. */
    TableCell nudged(int by) {
        BigDecimal number = number();
        return with(number.add(number.ulp().multiply(BigDecimal.valueOf(by))));
    }

    TableCell with(BigDecimal other) {
        return with(other.toPlainString());
    }

    private TableCell with(String other) {
        return new TableCell(file, table, kind, row, cell, other, line, start);
    }

    /** Every number, every interval and every unit of the tables. */
    static List<TableCell> all(RuleFolder folder) {
        List<TableCell> cells = new ArrayList<>();
        for (String file : folder.names("", ".yaml")) {
            if (file.contains("/tables/")) {
                cells.addAll(of(file, folder.text(file)));
            }
        }
        return cells;
    }

    private static List<TableCell> of(String file, String content) {
        MappingNode root = (MappingNode) new Yaml(new LoaderOptions()).compose(new StringReader(content));
        Map<String, Node> head = entries(root);
        String table = scalar(head.get("id"));
        String kind = scalar(head.get("kind"));
        List<Node> rows = head.get("rows") instanceof SequenceNode list ? list.getValue() : List.of();
        List<String> words = rows.stream().map(TableCell::words).toList();
        Map<String, Long> often =
                words.stream().collect(Collectors.groupingBy(w -> w, HashMap::new, Collectors.counting()));
        Map<String, Integer> seen = new HashMap<>();
        List<TableCell> cells = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Node row = rows.get(i);
            String text = words.get(i);
            int number = seen.merge(text, 1, Integer::sum);
            String key = (often.get(text) > 1 ? text + " #" + number : text).strip();
            entries(row).forEach((name, whole) -> {
                Node node = lowest(whole);
                if (node instanceof ScalarNode value && counts(name, value)) {
                    cells.add(new TableCell(
                            file,
                            table,
                            kind,
                            INTERVALS.contains(name) ? scalar(entries(row).get("id")) : key,
                            name,
                            value.getValue(),
                            value.getStartMark().getLine() + 1,
                            value.getStartMark().getIndex() + (value.isPlain() ? 0 : 1)));
                }
            });
        }
        return cells;
    }

    /** Of the values that several documents give the lowest, which the program uses; any other cell as it is. */
    private static Node lowest(Node node) {
        boolean numbers = node instanceof SequenceNode list
                && !list.getValue().isEmpty()
                && list.getValue().stream()
                        .allMatch(item ->
                                item.getTag().equals(Tag.INT) || item.getTag().equals(Tag.FLOAT));
        return numbers
                ? ((SequenceNode) node)
                        .getValue().stream()
                                .min(Comparator.comparing(item -> new BigDecimal(scalar(item))))
                                .orElseThrow()
                : node;
    }

    private static boolean counts(String name, ScalarNode value) {
        return name.equals("unit")
                || INTERVALS.contains(name)
                        && INTERVAL.matcher(value.getValue()).find()
                || !NO_KEY.contains(name)
                        && (value.getTag().equals(Tag.INT) || value.getTag().equals(Tag.FLOAT));
    }

    private static String words(Node row) {
        List<String> words = new ArrayList<>();
        List<String> days = new ArrayList<>(1);
        entries(row).forEach((name, node) -> {
            if (name.equals(FROM)) {
                days.add(name + " " + scalar(node));
            } else if (!NO_KEY.contains(name) && node.getTag().equals(Tag.STR)) {
                words.add(scalar(node));
            }
        });
        words.addAll(days);
        return String.join(" ", words);
    }

    private static Map<String, Node> entries(Node node) {
        Map<String, Node> entries = new LinkedHashMap<>();
        if (node instanceof MappingNode map) {
            map.getValue().forEach(t -> entries.put(scalar(t.getKeyNode()), t.getValueNode()));
        }
        return entries;
    }

    private static String scalar(Node node) {
        return node instanceof ScalarNode value ? value.getValue() : "";
    }
}
