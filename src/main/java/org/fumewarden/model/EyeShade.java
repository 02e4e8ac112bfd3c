package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * One line of a table of eye filter shades; both ends belong to it.
 *
 * @param table id of the table
 * @param process as the table names it, which is a set of processes of the task file
 * @param by what the line goes by: current in A, thickness in mm, or any for one shade of the process
 * @param shade number of the filter, never lighter
 */
public record EyeShade(
        RowRef ref, String table, String process, String by, BigDecimal from, BigDecimal to, BigDecimal shade)
        implements Row {
    private static final BigDecimal MILLIMETRES = BigDecimal.valueOf(1000);

    /** True when the line goes by the question of the measure and covers its amount; thickness is asked in metres. */
    public boolean covers(Measure measure) {
        boolean current = by.equals("current") && measure.question().equals("welding-current");
        boolean thickness = by.equals("thickness") && measure.question().equals("plate-thickness");
        BigDecimal size = thickness ? measure.value().multiply(MILLIMETRES) : measure.value();
        return (current || thickness) && size.signum() > 0 && size.compareTo(from) >= 0 && size.compareTo(to) <= 0;
    }

    /** True when this line is of the same process of the same table and asks for a darker filter. */
    public boolean darkerThan(EyeShade other) {
        return table.equals(other.table) && process.equals(other.process) && shade.compareTo(other.shade) > 0;
    }
}
