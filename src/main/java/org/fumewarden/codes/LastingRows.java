package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Threshold;

/**
 * Rows whose absence would make an advice milder unseen: an immediately dangerous level, and the molar volume without which no
 * ppm is held against mg/m3. One that ended, and that nothing follows yet, still counts; the check of the rules names it.
 */
final class LastingRows {
    private LastingRows() {}

    /**
     * Those that ended on or before the day and that no other row replaces on it.
     *
     * @param ending the rows that end at all, among others
     */
    static Stream<DatedRow> on(LocalDate day, List<DatedRow> ending, List<DatedRow> rows) {
        return ending.stream()
                .filter(LastingRows::lasts)
                .filter(row -> !row.until().isAfter(day))
                .filter(row -> rows.stream()
                        .filter(other -> same(row, other))
                        .noneMatch(other -> other.inForce(day) || later(row, other)));
    }

    /** True when the row may not fall away without another in its place. */
    private static boolean lasts(DatedRow row) {
        return row.row() instanceof DangerLevel || row.row() instanceof Threshold t && t.id().equals("molar-volume");
    }

    private static boolean same(DatedRow row, DatedRow other) {
        return other.row().getClass() == row.row().getClass()
                && other.row().ref().key().equals(row.row().ref().key());
    }

    private static boolean later(DatedRow row, DatedRow other) {
        return other.until().isAfter(row.until()) && other.until().isBefore(CodeSummary.NEVER);
    }
}
