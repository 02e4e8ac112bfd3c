package org.fumewarden.report.upkeep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes comma-separated values (RFC 4180) that a spreadsheet opens without running them.
 *
 * <p>A cell that begins like a formula gets an apostrophe in front. Plain numbers stay numbers. A byte order mark tells the
 * spreadsheet that the text is UTF-8.
 */
public final class CsvSheet {
    private static final char APOSTROPHE = '\'';
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+(\\.[0-9]+)?");
    private static final Pattern FORMULA =
            Pattern.compile("^[\\s\\p{Cntrl}\\p{Cf}]*[=+\\-@\\uFF1D\\uFF0B\\uFF0D\\uFF20|%].*", Pattern.DOTALL);
    private static final Pattern LEADING_CONTROL = Pattern.compile("^[\\t\\r\\n].*", Pattern.DOTALL);

    private CsvSheet() {}

    /** The table with its head. */
    public static String write(List<String> columns, List<List<String>> rows) {
        StringBuilder out = new StringBuilder("\uFEFF");
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
            printer.printRecord(columns.stream().map(CsvSheet::safe).toList());
            for (List<String> row : rows) {
                printer.printRecord(row.stream().map(CsvSheet::safe).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a string cannot fail to be written", e);
        }
        return out.toString();
    }

    /** The cell with nothing a spreadsheet would run. */
    static String safe(String cell) {
        boolean runs = !NUMBER.matcher(cell).matches()
                && (FORMULA.matcher(cell).matches()
                        || LEADING_CONTROL.matcher(cell).matches());
        return runs ? APOSTROPHE + cell : cell;
    }

    /** The cell as it was before {@link #safe}. */
    public static String original(String cell) {
        boolean guarded = cell.length() > 1 && cell.charAt(0) == APOSTROPHE;
        return guarded && !safe(cell.substring(1)).equals(cell.substring(1)) ? cell.substring(1) : cell;
    }
}
