package org.fumewarden.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.DatedRow;
import org.fumewarden.codes.TableFile;
import org.fumewarden.model.Agent;
import org.fumewarden.model.Emitter;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Row;

/**
 * What the tables of a code leave without an answer: agents that work gives off and no limit holds, gases without a filter row.
 * The rules keep such advice open; here an editor of tables sees where.
 */
final class Gaps {
    private final CodeBook book;
    private final LocalDate today;
    private final List<String> lines = new ArrayList<>();
    private final List<String> counts = new ArrayList<>();

    Gaps(CodeBook book, LocalDate today) {
        this.book = book;
        this.today = today;
        ExposureTables figures = new ExposureTables(book.rows(today));
        List<String> emitted =
                figures.all(Emitter.class).map(Emitter::agent).distinct().toList();
        List<String> limited = figures.all(Limit.class).map(Limit::agent).toList();
        List<String> filtered =
                figures.all(FilterMatch.class).map(FilterMatch::agent).toList();
        look(
                Agent.class,
                a -> emitted.contains(a.id()),
                a -> limited.contains(a.id()),
                "limit",
                "given off by some work");
        look(
                Agent.class,
                a -> a.form().equals("gas") && (emitted.contains(a.id()) || limited.contains(a.id())),
                a -> filtered.contains(a.id()),
                "filter row",
                "a gas that is given off or limited");
    }

    /** Each row that lacks something, with its file and line. */
    List<String> lines() {
        return lines;
    }

    /** How many of how many, for each kind. */
    List<String> counts() {
        return counts;
    }

    private <R extends Row> void look(
            Class<R> kind, Predicate<R> asked, Predicate<R> answered, String what, String why) {
        int all = 0;
        int open = 0;
        for (TableFile table : book.tables()) {
            for (DatedRow dated : table.rows()) {
                if (!kind.isInstance(dated.row()) || !dated.inForce(today)) {
                    continue;
                }
                R row = kind.cast(dated.row());
                if (asked.test(row)) {
                    all++;
                    if (!answered.test(row)) {
                        open++;
                        lines.add(table.file() + ":" + dated.line() + " "
                                + row.ref().address() + ", " + why + ", has no " + what + " under "
                                + book.card().id() + ".");
                    }
                }
            }
        }
        counts.add("gaps " + book.card().id() + ": " + open + " without a " + what + " of " + all);
    }
}
