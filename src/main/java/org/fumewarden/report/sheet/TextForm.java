package org.fumewarden.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.report.html.Glued;

/** A sheet as plain text: the names of the parts of the page stand in a margin, so that the eye finds them. */
public final class TextForm {
    /** Characters in a line. */
    public static final int WIDTH = 90;

    private static final int MARGIN = 12;
    private static final int BODY = WIDTH - MARGIN;
    private static final int LEAST_CELL = 6;
    private static final String GAP = "  ";

    private TextForm() {}

    /** Writes the sheet. */
    public static String write(Sheet sheet) {
        List<String> lines = new ArrayList<>(wrapped(sheet.title(), WIDTH));
        if (!sheet.under().isEmpty()) {
            lines.addAll(wrapped(sheet.under(), WIDTH));
        }
        boolean paper = sheet.state().equals(Sheet.PAPER);
        if (!paper) {
            for (Part part : sheet.page()) {
                lines.add("");
                lines.addAll(beside(part));
            }
        }
        for (Part part : paper ? sheet.page() : sheet.annex()) {
            lines.add("");
            if (!part.title().isEmpty()) {
                lines.add(plain(part.title()).toUpperCase());
            }
            body(part.lines(), WIDTH - GAP.length()).forEach(l -> lines.add(GAP + l));
        }
        lines.add("");
        lines.addAll(wrapped(sheet.closing(), WIDTH));
        return lines.stream().map(String::stripTrailing).collect(Collectors.joining("\n", "", "\n"));
    }

    /** How many lines a part of the page takes, the one between it and its neighbour counted in. */
    public static int height(Part part) {
        return beside(part).size() + 1;
    }

    private static List<String> beside(Part part) {
        List<String> names = wrapped(part.title().toUpperCase(), MARGIN - 1);
        List<String> body = body(part.lines(), BODY);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < Math.max(names.size(), body.size()); i++) {
            String name = i < names.size() ? names.get(i) : "";
            lines.add(StringUtils.rightPad(name, MARGIN) + (i < body.size() ? body.get(i) : ""));
        }
        return lines;
    }

    private static List<String> body(List<Line> lines, int width) {
        return lines.stream().flatMap(l -> line(l, width).stream()).toList();
    }

    private static List<String> line(Line line, int width) {
        if (line instanceof Line.State state) {
            return wrapped(state.word() + ". " + state.says(), width);
        }
        if (line instanceof Line.Says says) {
            return says(says, width);
        }
        if (line instanceof Line.Head head) {
            return wrapped(head.text(), width);
        }
        if (line instanceof Line.Table table) {
            return table(table, width);
        }
        if (line instanceof Line.Blanks blanks) {
            return blanks(blanks, width);
        }
        if (line instanceof Line.Scan scan) {
            return wrapped(scan.words(), width);
        }
        return wrapped(((Line.Drawing) line).words(), width);
    }

    private static List<String> says(Line.Says says, int width) {
        String lead = says.lead().isEmpty() ? "" : says.lead() + " ";
        String notes = says.notes().isEmpty() ? "" : " [" + says.notes() + "]";
        String sign = says.sign().text().isEmpty() ? "" : says.sign().text() + " ";
        List<String> words = wrapped(lead + says.says() + notes, width - sign.length());
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            lines.add((i == 0 ? sign : " ".repeat(sign.length())) + words.get(i));
        }
        return lines;
    }

    private static List<String> blanks(Line.Blanks blanks, int width) {
        int each = width / blanks.names().size();
        return List.of(blanks.names().stream()
                .map(n -> n + " " + StringUtils.repeat('_', Math.max(LEAST_CELL, each - n.length() - GAP.length() - 1)))
                .collect(Collectors.joining(GAP)));
    }

    /** The first column gives way when the others need the room; a cell of its own wraps. */
    private static List<String> table(Line.Table table, int width) {
        if (table.heads().size() * (LEAST_CELL + GAP.length()) > width) {
            return table.rows().stream()
                    .flatMap(row -> says(new Line.Says(Sign.ITEM, inWords(table.heads(), row)), width).stream())
                    .toList();
        }
        List<List<String>> rows = new ArrayList<>();
        if (table.headed()) {
            rows.add(table.heads());
        }
        rows.addAll(table.rows());
        int[] wide = new int[table.heads().size()];
        for (List<String> row : rows) {
            for (int i = 0; i < wide.length; i++) {
                wide[i] = Math.max(wide[i], plain(row.get(i)).length());
            }
        }
        narrow(wide, width - GAP.length() * (wide.length - 1), table.headed() ? 0 : 1);
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            lines.addAll(row(row, wide, table.numbers()));
        }
        return lines;
    }

    /** A row of more columns than a line holds. */
    private static String inWords(List<String> heads, List<String> row) {
        String rest = IntStream.range(1, row.size())
                .filter(i -> !row.get(i).isEmpty())
                .mapToObj(i -> heads.get(i) + ": " + row.get(i))
                .collect(Collectors.joining("; "));
        return row.get(0) + (rest.isEmpty() ? "" : " | " + rest);
    }

    /** Takes from the widest column until all fit; names of fields, which stand before the first one that gives way, stay whole. */
    private static void narrow(int[] wide, int room, int first) {
        int all = 0;
        for (int each : wide) {
            all += each;
        }
        while (all > room) {
            int widest = first;
            for (int i = first; i < wide.length; i++) {
                widest = wide[i] > wide[widest] ? i : widest;
            }
            if (wide[widest] <= LEAST_CELL) {
                return;
            }
            wide[widest]--;
            all--;
        }
    }

    private static List<String> row(List<String> cells, int[] wide, List<Integer> numbers) {
        List<List<String>> wrapped = new ArrayList<>();
        int high = 1;
        for (int i = 0; i < wide.length; i++) {
            wrapped.add(wrapped(cells.get(i), wide[i]));
            high = Math.max(high, wrapped.get(i).size());
        }
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < high; line++) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < wide.length; i++) {
                String cell = line < wrapped.get(i).size() ? wrapped.get(i).get(line) : "";
                text.append(i == 0 ? "" : GAP)
                        .append(
                                numbers.contains(i)
                                        ? StringUtils.leftPad(cell, wide[i])
                                        : StringUtils.rightPad(cell, wide[i]));
            }
            lines.add(text.toString());
        }
        return lines;
    }

    private static List<String> wrapped(String text, int width) {
        // A word that no line holds is parted behind its last hyphen that one holds.
        String words = plain(text)
                .replaceAll("(?<=^|\\s)(?=\\S{" + (width + 1) + "})(\\S{1," + (width - 1) + "}-)(?=\\S)", "$1 ");
        return List.of(Glued.wrapped(words, width, "\n").split("\n"));
    }

    /** Line breaks and control characters become spaces, so that no value can forge a line of its own. */
    private static String plain(String text) {
        return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ").strip();
    }
}
