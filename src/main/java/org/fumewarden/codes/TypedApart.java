package org.fumewarden.codes;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.fumewarden.model.Citation;

/**
 * The file in which an organisation types its own values a second time: its lines, and what is wrong with it. Who typed them and on
 * which day may stand in two more columns.
 */
public record TypedApart(List<Line> lines, List<Problem> problems) {
    private static final List<String> COLUMNS = List.of("table", "row", "cell", "value", "source");
    private static final List<String> SIGNED = List.of("table", "row", "cell", "value", "source", "by", "on");

    /** One value. */
    public record Line(
            int line, String table, String row, String cell, String value, String source, String by, String on) {
        /** The name of the cell, as {@link WrittenCell#key} has it. */
        public String key() {
            return WrittenCell.rowKey(table, row) + " / " + cell;
        }

        /** Where a value of the organisation stands, and who answers for it, for a citation. */
        public String place() {
            return Citation.OF_ORGANISATION + ", typed apart" + (by.isEmpty() ? "" : " on " + on + ", " + by) + ", "
                    + RuleFolder.TYPED + " line " + line;
        }
    }

    public TypedApart {
        lines = List.copyOf(lines);
        problems = List.copyOf(problems);
    }

    /** The file beside a folder of rules; empty when there is none. */
    public static TypedApart beside(RuleFolder folder) {
        return folder.bytesBeside(RuleFolder.TYPED)
                .map(bytes -> read(YamlFiles.text(RuleFolder.TYPED, bytes)))
                .orElseGet(() -> new TypedApart(List.of(), List.of()));
    }

    /** The lines that are dated after today. */
    Stream<Problem> toCome(LocalDate today) {
        return lines.stream()
                .filter(typed -> typed.on().compareTo(today.toString()) > 0)
                .map(typed -> problem(
                        typed.line(),
                        typed.key(),
                        "was typed on a day to come: " + typed.on() + ".",
                        "give the day on which it was typed; until then nothing of this file counts."));
    }

    /** The lines of a file of this form. */
    public static TypedApart read(String text) {
        List<Line> lines = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        long line = 0;
        int width = COLUMNS.size();
        try (CSVParser records =
                CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(false).get().parse(new StringReader(text))) {
            for (CSVRecord cells : records) {
                int own = (int) line + 1;
                line = records.getCurrentLineNumber();
                if (cells.getRecordNumber() == 1) {
                    head(own, cells.toList(), problems);
                    width = cells.size() == SIGNED.size() ? SIGNED.size() : width;
                } else {
                    line(own, cells.toList(), width, lines, problems);
                }
            }
        } catch (UncheckedIOException | IOException e) {
            problems.add(problem(
                    (int) line + 1, "", "has a quote that is not closed, or text after one.", "close it in its line."));
        }
        return new TypedApart(lines, problems);
    }

    private static void head(int line, List<String> cells, List<Problem> problems) {
        if (!cells.equals(COLUMNS) && !cells.equals(SIGNED)) {
            problems.add(problem(
                    line,
                    "",
                    "begins with \"" + Located.shown(String.join(",", cells)) + "\".",
                    "its first line is " + String.join(",", COLUMNS) + ", with by,on where you sign each."));
        }
    }

    private static void line(int line, List<String> cells, int width, List<Line> lines, List<Problem> problems) {
        if (cells.equals(List.of(""))) {
            return;
        }
        if (cells.size() != width || cells.stream().anyMatch(String::isBlank)) {
            problems.add(problem(
                    line,
                    cells.get(0),
                    "has " + cells.stream().filter(c -> !c.isBlank()).count() + " cells with words: \""
                            + Located.shown(String.join(",", cells)) + "\".",
                    "write " + String.join(",", SIGNED.subList(0, width))
                            + "; a cell that holds a comma stands in quotes."));
            return;
        }
        boolean signed = width == SIGNED.size();
        String on = signed ? cells.get(6) : "";
        if (signed && !on.matches("\\d{4}-\\d{2}-\\d{2}")) {
            problems.add(problem(
                    line,
                    cells.get(0),
                    "was typed on \"" + Located.shown(on) + "\".",
                    "write the day such as 2026-03-02."));
        }
        lines.add(new Line(
                line,
                cells.get(0),
                cells.get(1),
                cells.get(2),
                cells.get(3),
                cells.get(4),
                signed ? cells.get(5) : "",
                on));
    }

    private static Problem problem(int line, String row, String message, String maybe) {
        return new Problem(RuleFolder.TYPED, line, row, message, maybe);
    }
}
