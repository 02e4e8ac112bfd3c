package org.fumewarden.shift;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;

/** One table of figures that arithmetic reads. */
final class FigureTable {
    private final Located root;
    private final Map<String, Located> head;
    private final List<FigureRow> rows;

    private FigureTable(Located root) {
        this.root = root;
        this.head = root.entries();
        this.rows = Optional.ofNullable(head.get("rows")).map(Located::items).orElse(List.of()).stream()
                .map(FigureRow::new)
                .toList();
        if (rows.isEmpty()) {
            root.complain("has no rows.", "add a line \"rows:\" and the figures below it.");
        }
    }

    /** Reads a shared table by its name. */
    static FigureTable read(RuleFolder folder, String name) {
        String file = "shared/tables/" + name + ".yaml";
        if (folder.names(file, "").isEmpty()) {
            throw new InputException(
                    new Problem(folder.origin() + "/" + file, 0, "", "does not exist.", "it was moved or renamed."));
        }
        return new FigureTable(folder.located(file));
    }

    /** Every row as a record; a row that its record refuses is complained about. */
    <T> List<T> map(Function<FigureRow, T> make) {
        List<T> made = new ArrayList<>();
        for (FigureRow row : rows) {
            try {
                made.add(make.apply(row));
            } catch (IllegalArgumentException e) {
                row.complain(e.getMessage());
            }
        }
        root.settle();
        return List.copyOf(made);
    }

    /** The row whose id is given. */
    FigureRow row(String id) {
        Optional<FigureRow> found =
                rows.stream().filter(row -> row.text("id").equals(id)).findFirst();
        if (found.isEmpty()) {
            root.complain("has no row with the id \"" + id + "\".", "the row was renamed.");
            root.settle();
        }
        return found.orElseThrow();
    }

    /** The value of the row whose id is given. */
    double value(String id) {
        double value = row(id).number("value");
        root.settle();
        return value;
    }

    /** Stops when anything was found wrong, and turns the refusal of a record into a complaint about the table. */
    <T> T whole(java.util.function.Supplier<T> make) {
        try {
            T made = make.get();
            root.settle();
            return made;
        } catch (IllegalArgumentException e) {
            root.complain("cannot be used: " + e.getMessage(), "a figure was changed by mistake.");
            root.settle();
            throw e;
        }
    }

    String source() {
        return text("source");
    }

    String clause() {
        return text("clause");
    }

    /** Source and clause, for a sentence. */
    String document() {
        return text("source") + " " + text("clause");
    }

    boolean crossChecked() {
        return text("confidence").equals("cross-checked");
    }

    private String text(String name) {
        return Optional.ofNullable(head.get(name)).map(Located::text).orElse("?");
    }
}
