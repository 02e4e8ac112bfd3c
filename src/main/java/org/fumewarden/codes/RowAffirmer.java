package org.fumewarden.codes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.fumewarden.model.Confidence;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;

/** Writes a reviewer's check of a row into its table file, and changes nothing else in the file. */
public final class RowAffirmer {
    private static final String CELL = "affirmed";

    /**
     * What was written.
     *
     * @param place file and line of the row
     * @param addresses the rows that the check raises
     */
    public record Written(String place, List<String> addresses, Confidence before, Confidence after) {}

    private record Found(String name, Located item, List<DatedRow> rows, List<DatedRow> all) {}

    private final Path folder;
    private final RuleFolder base;

    /** An affirmer of the rows in a source checkout of the rules. */
    public RowAffirmer(Path folder) {
        this.folder = folder;
        this.base = RuleFolder.at(folder);
    }

    /**
     * Records that somebody compared a row with a document.
     *
     * @param address of the row as printed, for example {@code gb-limits#cadmium/twa}; the part before a slash means all rows below it
     * @throws InputException when there is no such row, or the check cannot be written down as it is
     */
    public Written affirm(String address, String by, LocalDate on, String source) {
        said("--by", by);
        said("--source", source);
        Found found = find(address, on);
        String key = address.substring(address.indexOf('#') + 1);
        boolean whole = found.rows().size() == found.all().size();
        String check = "{" + (whole ? "" : "rows: [" + quoted(key) + "], ") + "by: " + quoted(by.strip()) + ", on: "
                + on + ", source: " + quoted(source.strip()) + "}";
        String text = new String(base.files().get(found.name()), StandardCharsets.UTF_8);
        String edited = insert(text, found.item(), check);
        List<DatedRow> after = rows(found.name(), edited).stream()
                .filter(r -> r.line() == found.item().line()
                        && below(key, r.row().ref().key()))
                .toList();
        write(found.name(), edited);
        return new Written(
                base.origin() + "/" + found.name() + ":" + found.item().line(),
                after.stream().map(r -> r.row().ref().address()).toList(),
                found.rows().get(0).row().ref().citation().confidence(),
                after.get(0).row().ref().citation().confidence());
    }

    private static void said(String option, String words) {
        if (words.isBlank() || words.chars().anyMatch(Character::isISOControl)) {
            throw problem(option, "must be one line of words.", "write it in quotes: " + option + " \"...\".");
        }
    }

    /** The line that holds the row; of several editions the one in force on the day of the check. */
    private Found find(String address, LocalDate on) {
        TreeSet<String> known = new TreeSet<>();
        List<Found> matches = new ArrayList<>();
        for (String name : base.names("", ".yaml")) {
            if (!name.matches("[^/]+/tables/[^/]+\\.yaml")) {
                continue;
            }
            List<DatedRow> all = rows(name, base.text(name));
            all.forEach(r -> known.add(r.row().ref().address()));
            for (Located item : items(name)) {
                List<DatedRow> line =
                        all.stream().filter(r -> r.line() == item.line()).toList();
                List<DatedRow> rows = line.stream()
                        .filter(r -> below(address, r.row().ref().address()))
                        .toList();
                if (!rows.isEmpty()) {
                    matches.add(new Found(name, item, rows, line));
                }
            }
        }
        List<Found> day =
                matches.stream().filter(f -> f.rows().get(0).inForce(on)).toList();
        List<Found> left = matches.size() > 1 && !day.isEmpty() ? day : matches;
        if (left.size() == 1) {
            return left.get(0);
        }
        throw left.isEmpty()
                ? problem(
                        "--affirm", "names no row: \"" + Located.shown(address) + "\".", Nearest.maybe(address, known))
                : problem(
                        "--affirm",
                        "names " + left.size() + " lines: \"" + Located.shown(address) + "\".",
                        "name one of their rows, for example "
                                + left.get(0).rows().get(0).row().ref().address() + ".");
    }

    private static boolean below(String key, String rowKey) {
        return rowKey.equals(key) || rowKey.startsWith(key + "/");
    }

    private List<Located> items(String name) {
        Located root = YamlFiles.parse(base.origin() + "/" + name, base.text(name));
        Located rows = root.entries().get("rows");
        return rows == null || !rows.isList() ? List.of() : rows.items();
    }

    private List<DatedRow> rows(String name, String text) {
        Located root = YamlFiles.parse(base.origin() + "/" + name, text);
        TableFile table = new TableReader(base.origin() + "/" + name, root).read();
        root.settle();
        return table.rows();
    }

    /** Puts the check at the end of the row, or of the checks that it already has. */
    private static String insert(String text, Located item, String check) {
        int mark = text.startsWith("\uFEFF") ? 1 : 0;
        MappingNode row = (MappingNode) item.node();
        for (NodeTuple cell : row.getValue()) {
            boolean affirmed = cell.getKeyNode() instanceof org.yaml.snakeyaml.nodes.ScalarNode name
                    && name.getValue().equals(CELL);
            if (affirmed && cell.getValueNode() instanceof CollectionNode<?> list && flow(list)) {
                return at(text, mark, list.getEndMark().getIndex() - 1, ", " + check);
            }
        }
        if (flow(row)) {
            return at(text, mark, row.getEndMark().getIndex() - 1, ", " + CELL + ": [" + check + "]");
        }
        NodeTuple first = row.getValue().get(0);
        Node key = first.getKeyNode();
        String indent = " ".repeat(key.getStartMark().getColumn());
        return at(text, mark, key.getStartMark().getIndex(), CELL + ": [" + check + "]\n" + indent);
    }

    private static boolean flow(CollectionNode<?> node) {
        return node.getFlowStyle() == FlowStyle.FLOW;
    }

    private static String at(String text, int mark, int codePoint, String words) {
        int place = text.offsetByCodePoints(0, codePoint + mark);
        return text.substring(0, place) + words + text.substring(place);
    }

    private static String quoted(String words) {
        return "\"" + words.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private void write(String name, String text) {
        Path file = folder.resolve(name);
        try {
            Path fresh = Files.createTempFile(file.toAbsolutePath().getParent(), "affirm", ".tmp");
            Files.writeString(fresh, text);
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw problem(file.toString(), "cannot be written (" + e.getMessage() + ").", "check its permissions.");
        }
    }

    private static InputException problem(String place, String message, String maybe) {
        return new InputException(new Problem(place, 0, "", message, maybe));
    }
}
