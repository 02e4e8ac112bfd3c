package org.fumewarden.report.upkeep;

import java.util.ArrayList;
import java.util.List;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.report.sheet.Sign;

/** A paper of the register while it is put together. */
final class PaperParts {
    private final List<Part> parts = new ArrayList<>();
    private String title = "";
    private List<Line> lines = new ArrayList<>();

    /** Begins a part. */
    PaperParts head(String next) {
        end();
        title = next;
        return this;
    }

    PaperParts says(String text) {
        lines.add(new Line.Says(Sign.NONE, text));
        return this;
    }

    /** A warning that must not be overlooked. */
    PaperParts warns(String text) {
        lines.add(new Line.Says(Sign.LEAVE, text));
        return this;
    }

    PaperParts points(List<String> items) {
        items.forEach(i -> lines.add(new Line.Says(Sign.ITEM, i)));
        return this;
    }

    /** Points with a box to tick. */
    PaperParts ticks(List<String> items) {
        items.forEach(i -> lines.add(new Line.Says(Sign.ACT, i)));
        return this;
    }

    PaperParts pairs(List<Pair> pairs) {
        return table(
                List.of("", ""),
                pairs.stream().map(p -> List.of(p.name(), p.value())).toList());
    }

    PaperParts table(List<String> heads, List<List<String>> rows) {
        lines.add(new Line.Table(heads, rows, List.of()));
        return this;
    }

    /** Lines to sign on. */
    PaperParts signedBy(String... names) {
        for (String name : names) {
            lines.add(new Line.Blanks(List.of(name, "Date")));
        }
        return this;
    }

    Sheet sheet(String kind, String named, String under) {
        end();
        return new Sheet(kind, named, under, Sheet.PAPER, parts, List.of(), Closing.WORDS, "en");
    }

    private void end() {
        if (!lines.isEmpty()) {
            parts.add(new Part("part-" + (parts.size() + 1), title, lines));
        }
        lines = new ArrayList<>();
    }
}
