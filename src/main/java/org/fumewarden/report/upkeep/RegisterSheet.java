package org.fumewarden.report.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fumewarden.report.sheet.HtmlForm;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;
import org.fumewarden.report.sheet.TextForm;

/**
 * A paper of the register, block by block; it takes its forms as the sheet of advice does.
 *
 * @param language tag of its language
 */
record RegisterSheet(String title, List<Block> blocks, String language) {
    private static final int WIDEST = 4;

    RegisterSheet {
        blocks = List.copyOf(blocks);
    }

    /** A part of a sheet. */
    sealed interface Block {}

    record Heading(String text) implements Block {}

    record Paragraph(String text) implements Block {}

    /** A warning that must not be overlooked. */
    record Warning(String text) implements Block {}

    record Points(List<String> items) implements Block {
        Points {
            items = List.copyOf(items);
        }
    }

    /** Points with a box to tick. */
    record Ticks(List<String> items) implements Block {
        Ticks {
            items = List.copyOf(items);
        }
    }

    record Pair(String name, String value) {}

    record Pairs(List<Pair> pairs) implements Block {
        Pairs {
            pairs = List.copyOf(pairs);
        }
    }

    record Table(List<String> columns, List<List<String>> rows) implements Block {
        Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }
    }

    /**
     * Lines to sign on.
     *
     * @param day the word for the date beside them
     */
    record Signatures(List<String> names, String day) implements Block {
        Signatures {
            names = List.copyOf(names);
        }
    }

    String text() {
        List<Block> narrow = blocks.stream().map(RegisterSheet::narrow).toList();
        return TextForm.write(new RegisterSheet(title, narrow, language).whole());
    }

    /** A table that is too wide for lines of text: a point for each row, with the names of its columns. */
    private static Block narrow(Block block) {
        return block instanceof Table table && table.columns().size() > WIDEST
                ? new Points(table.rows().stream()
                        .map(r -> point(table.columns(), r))
                        .toList())
                : block;
    }

    private static String point(List<String> columns, List<String> row) {
        return row.get(0) + " | "
                + IntStream.range(1, row.size())
                        .filter(i -> !row.get(i).isEmpty())
                        .mapToObj(i -> columns.get(i) + ": " + row.get(i))
                        .collect(Collectors.joining("; "));
    }

    String html() {
        return HtmlForm.write(whole());
    }

    /** Each heading begins a part; the last paragraph closes the sheet. */
    private org.fumewarden.report.sheet.Sheet whole() {
        List<Part> parts = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        String head = "";
        Optional<Block> closing =
                blocks.stream().filter(Paragraph.class::isInstance).reduce((a, b) -> b);
        for (Block block : blocks) {
            if (block instanceof Heading next) {
                part(parts, head, lines);
                head = next.text();
                lines = new ArrayList<>();
            } else if (closing.filter(c -> c == block).isEmpty()) {
                lines.addAll(lines(block));
            }
        }
        part(parts, head, lines);
        return new org.fumewarden.report.sheet.Sheet(
                "Fumewarden",
                title,
                "",
                org.fumewarden.report.sheet.Sheet.PAPER,
                parts,
                List.of(),
                closing.map(c -> ((Paragraph) c).text()).orElse(""),
                language);
    }

    private static void part(List<Part> parts, String head, List<Line> lines) {
        if (!lines.isEmpty()) {
            parts.add(new Part("part-" + (parts.size() + 1), head, lines));
        }
    }

    private static List<? extends Line> lines(Block block) {
        if (block instanceof Warning warning) {
            return said(Sign.LEAVE, List.of(warning.text()));
        } else if (block instanceof Points points) {
            return said(Sign.ITEM, points.items());
        } else if (block instanceof Ticks ticks) {
            return said(Sign.ACT, ticks.items());
        } else if (block instanceof Pairs fields) {
            List<List<String>> rows = fields.pairs().stream()
                    .map(p -> List.of(p.name(), p.value()))
                    .toList();
            return List.of(new Line.Table(List.of("", ""), rows, List.of()));
        } else if (block instanceof Table table) {
            return List.of(new Line.Table(table.columns(), table.rows(), List.of()));
        } else if (block instanceof Signatures signatures) {
            return signatures.names().stream()
                    .map(name -> new Line.Blanks(List.of(name, signatures.day())))
                    .toList();
        }
        return said(Sign.NONE, List.of(((Paragraph) block).text()));
    }

    private static List<Line.Says> said(Sign sign, List<String> sentences) {
        return sentences.stream().map(s -> new Line.Says(sign, s)).toList();
    }
}
