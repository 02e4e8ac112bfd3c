package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.model.Agent;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Row;
import org.fumewarden.model.Threshold;

/** Rows of the tables of one code that answer the same question, of which only one may hold on a day. */
public final class Overlaps {
    private Overlaps() {}

    /** A row with the table that holds it. */
    public record Placed(TableFile table, DatedRow row) {}

    /** Two rows that answer the same question on the same day. */
    public static List<Problem> in(List<TableFile> tables) {
        List<Problem> problems = new ArrayList<>();
        for (List<Placed> same : alike(tables)) {
            for (int i = 0; i < same.size(); i++) {
                for (int j = i + 1; j < same.size(); j++) {
                    overlap(same.get(i), same.get(j), problems);
                }
            }
        }
        return problems;
    }

    /** The rows by what they answer: those with one key in their table, and some across all tables. */
    public static Collection<List<Placed>> alike(List<TableFile> tables) {
        Map<String, List<Placed>> byKey = new LinkedHashMap<>();
        for (TableFile table : tables) {
            for (DatedRow row : table.rows()) {
                byKey.computeIfAbsent(key(table, row.row()), k -> new ArrayList<>())
                        .add(new Placed(table, row));
            }
        }
        return byKey.values();
    }

    private static String key(TableFile table, Row row) {
        if (row instanceof AssignedFactor factor) {
            return "factor " + factor.deviceClass() + "/" + factor.provided();
        }
        if (row instanceof Limit) {
            return "Limit of " + folder(table) + " " + row.ref().key();
        }
        boolean acrossTables = row instanceof Threshold
                || row instanceof Agent
                || row instanceof DeviceClass
                || row instanceof DangerLevel
                || row instanceof FilterMatch;
        String where = acrossTables ? row.getClass().getSimpleName() : table.file();
        return where + " " + row.getClass().getSimpleName() + " " + row.ref().key();
    }

    /** The folder of a table. A code's own limit and a borrowed one may both hold: both are compared, the stricter decides. */
    private static String folder(TableFile table) {
        int end = table.file().indexOf("/tables/");
        return end < 0 ? table.file() : table.file().substring(0, end);
    }

    private static void overlap(Placed first, Placed second, List<Problem> problems) {
        LocalDate from = first.row().from().isAfter(second.row().from())
                ? first.row().from()
                : second.row().from();
        boolean sameDays = first.row().inForce(from) && second.row().inForce(from);
        boolean sameThing = true;
        if (first.row().row() instanceof AssignedFactor a && second.row().row() instanceof AssignedFactor b) {
            sameThing = a.covers(b.against()) || b.covers(a.against());
        }
        if (sameDays && sameThing) {
            problems.add(new Problem(
                    second.table().file(),
                    second.row().line(),
                    second.row().row().ref().key(),
                    "holds at the same time as "
                            + first.row().row().ref().address() + " of "
                            + first.table().file()
                            + ":" + first.row().line() + ".",
                    "close the older row with until, or drop one."));
        }
    }
}
