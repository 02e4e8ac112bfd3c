package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Member;

/**
 * What a code holds, how well it is known and what it lacks.
 *
 * @param rows how many rows of its own and borrowed tables there are by confidence
 * @param borrowedRows how many of them are borrowed
 * @param changes addresses of the rows that begin or end on a day, by day
 * @param notCovered items of the set {@code not-covered}, in the words people read
 */
public record CodeSummary(
        CodeCard card,
        int tables,
        Map<Confidence, Integer> rows,
        int borrowedRows,
        Map<LocalDate, List<String>> changes,
        List<String> notCovered) {
    private static final String NOT_COVERED = "not-covered";

    /** First day of what has no beginning. */
    public static final LocalDate ALWAYS = LocalDate.of(1900, 1, 1);

    /** Last day of what has no end. */
    public static final LocalDate NEVER = LocalDate.of(9999, 12, 31);

    /** Sums up the tables of a code without those that all codes share. */
    public static CodeSummary of(RuleFolder folder, CodeBook book) {
        Map<Confidence, Integer> rows = new EnumMap<>(Confidence.class);
        Map<LocalDate, TreeSet<String>> changes = new TreeMap<>();
        TreeSet<String> missing = new TreeSet<>();
        int tables = 0;
        int borrowed = 0;
        for (TableFile table : book.tables()) {
            if (within(folder, table, List.of("shared"))) {
                continue;
            }
            tables++;
            borrowed +=
                    within(folder, table, book.card().borrows()) ? table.rows().size() : 0;
            for (DatedRow dated : table.rows()) {
                rows.merge(dated.row().ref().citation().confidence(), 1, Integer::sum);
                note(changes, dated);
                if (dated.row() instanceof Member member && member.set().equals(NOT_COVERED)) {
                    missing.add(book.vocabulary().name(member.item()));
                }
            }
        }
        Map<LocalDate, List<String>> days = new TreeMap<>();
        changes.forEach((day, what) -> days.put(day, List.copyOf(what)));
        return new CodeSummary(book.card(), tables, rows, borrowed, days, List.copyOf(missing));
    }

    private static boolean within(RuleFolder folder, TableFile table, List<String> parts) {
        return parts.stream().anyMatch(part -> table.file().startsWith(folder.origin() + "/" + part + "/"));
    }

    private static void note(Map<LocalDate, TreeSet<String>> changes, DatedRow dated) {
        String address = dated.row().ref().address();
        for (LocalDate day : List.of(dated.from(), dated.until())) {
            if (!day.equals(ALWAYS) && !day.equals(NEVER)) {
                changes.computeIfAbsent(day, k -> new TreeSet<>()).add(address);
            }
        }
    }
}
