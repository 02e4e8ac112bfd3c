package org.fumewarden.report.upkeep;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.apache.commons.text.WordUtils;

/** Writes a sheet as plain text. */
final class SheetText {
    private static final int WIDTH = 88;

    private SheetText() {}

    static String write(Sheet sheet) {
        StringBuilder out = new StringBuilder();
        out.append(plain(sheet.title()))
                .append('\n')
                .append("=".repeat(Math.min(WIDTH, Math.max(1, sheet.title().length()))))
                .append('\n');
        for (Sheet.Block block : sheet.blocks()) {
            out.append('\n').append(block(block));
        }
        return out.toString();
    }

    private static String block(Sheet.Block block) {
        if (block instanceof Sheet.Heading heading) {
            return plain(heading.text()) + "\n"
                    + "-".repeat(Math.max(1, heading.text().length())) + "\n";
        }
        if (block instanceof Sheet.Paragraph paragraph) {
            return wrapped("", paragraph.text());
        }
        if (block instanceof Sheet.Warning warning) {
            return wrapped("!! ", warning.text());
        }
        if (block instanceof Sheet.Points points) {
            return points.items().stream().map(i -> wrapped("  - ", i)).collect(Collectors.joining());
        }
        if (block instanceof Sheet.Ticks ticks) {
            return ticks.items().stream().map(i -> wrapped("  [ ] ", i)).collect(Collectors.joining());
        }
        if (block instanceof Sheet.Pairs pairs) {
            int width = pairs.pairs().stream()
                    .mapToInt(p -> p.name().length())
                    .max()
                    .orElse(0);
            return pairs.pairs().stream()
                    .map(p -> wrapped("  " + StringUtils.rightPad(plain(p.name()), width) + "  ", p.value()))
                    .collect(Collectors.joining());
        }
        if (block instanceof Sheet.Table table) {
            return table(table);
        }
        Sheet.Signatures signatures = (Sheet.Signatures) block;
        return signatures.names().stream()
                .map(n -> "  " + plain(n) + ": ______________________________  " + plain(signatures.day())
                        + ": ______________\n")
                .collect(Collectors.joining("\n"));
    }

    /** Each row as a small block: columns of unknown scripts cannot be lined up in text. */
    private static String table(Sheet.Table table) {
        StringBuilder out = new StringBuilder();
        for (List<String> row : table.rows()) {
            String rest = "";
            for (int i = 1; i < row.size(); i++) {
                if (!row.get(i).isEmpty()) {
                    rest += (rest.isEmpty() ? "" : "; ") + table.columns().get(i) + ": " + row.get(i);
                }
            }
            out.append(wrapped("  - ", row.get(0) + (rest.isEmpty() ? "" : " | " + rest)));
        }
        return out.toString();
    }

    private static String wrapped(String lead, String text) {
        String indent = " ".repeat(lead.length());
        String body = WordUtils.wrap(plain(text), Math.max(30, WIDTH - lead.length()), "\n" + indent, false);
        return (lead + body).stripTrailing() + "\n";
    }

    /** Line breaks and control characters become spaces, so that no value can forge a line of its own. */
    static String plain(String text) {
        return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ").strip();
    }
}
