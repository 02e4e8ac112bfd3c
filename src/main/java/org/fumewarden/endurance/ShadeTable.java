package org.fumewarden.endurance;

import java.util.List;
import java.util.OptionalInt;

/**
 * Filter shades of one document.
 *
 * @param document title and clause
 * @param crossChecked true when the table was seen in two independent places
 * @param rows in the document's order
 */
public record ShadeTable(String document, boolean crossChecked, List<Row> rows) {

    /** What a row goes by. */
    public enum By {
        /** Arc current in amperes. */
        CURRENT,
        /** Plate thickness in millimetres. */
        THICKNESS,
        /** Nothing: one shade for the process. */
        ANY
    }

    /** One line; both ends belong to it. */
    public record Row(String process, By by, double from, double to, int shade) {
        boolean covers(double size) {
            return by == By.ANY || size > 0 && size >= from && size <= to;
        }
    }

    public ShadeTable {
        rows = List.copyOf(rows);
    }

    /** True when the table has a line for the process. */
    public boolean has(String process) {
        return rows.stream().anyMatch(row -> row.process().equals(process));
    }

    /** What the lines of a process go by; any when it has none. */
    public By by(String process) {
        return rows.stream()
                .filter(row -> row.process().equals(process))
                .map(Row::by)
                .findFirst()
                .orElse(By.ANY);
    }

    /** The darkest shade whose row covers the size; rows that touch both count. */
    OptionalInt shade(String process, double size) {
        return rows.stream()
                .filter(row -> row.process().equals(process) && row.covers(size))
                .mapToInt(Row::shade)
                .max();
    }

    /**
     * Minimum shade with a suggestion from a second table.
     *
     * @param suggestions shown beside the minimum when not lighter than it
     * @param process id of the process
     * @param size amperes or millimetres, by the process
     */
    public ShadeAdvice advise(ShadeTable suggestions, String process, double size) {
        OptionalInt minimum = crossChecked ? shade(process, size) : OptionalInt.empty();
        if (minimum.isEmpty()) {
            return new ShadeAdvice.SeeStandard("No cross-checked shade for " + process + " at " + size
                    + ". See the standard in force, and look up process and size in " + document + ".");
        }
        OptionalInt suggested = suggestions.shade(process, size);
        boolean useful = suggested.isPresent() && suggested.getAsInt() >= minimum.getAsInt();
        String more = useful
                ? " Suggested " + suggested.getAsInt() + " (" + suggestions.document()
                        + (suggestions.crossChecked() ? ")." : ", read once).")
                : "";
        return new ShadeAdvice.Shade(
                minimum.getAsInt(),
                useful ? suggested : OptionalInt.empty(),
                "Shade " + minimum.getAsInt() + " or darker (" + document + ")." + more
                        + " Start too dark, go lighter until the weld can be seen, never below the minimum.");
    }
}
