package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.DatedRow;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.TableFile;
import org.fumewarden.model.Agent;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Limit;
import org.fumewarden.model.NoneListed;
import org.fumewarden.model.Row;

/** Silence of a table is never mild: each agent has a figure on each list, or a row that says that there is none. */
final class EveryAgent {
    static final Set<String> LISTS = Set.of(
            NoneListed.LIMITS, NoneListed.OF_MEMBERS, NoneListed.NOT_HELD, "limits-of-that-day", "danger-levels");

    private EveryAgent() {}

    static List<Problem> check(CodeBook book) {
        List<Problem> problems = new ArrayList<>();
        problems.addAll(list(
                book,
                Limit.class,
                Limit::agent,
                "limit",
                Set.of(NoneListed.LIMITS, NoneListed.OF_MEMBERS, NoneListed.NOT_HELD)));
        problems.addAll(list(book, DangerLevel.class, DangerLevel::agent, "danger level", Set.of("danger-levels")));
        return problems;
    }

    private static <R extends Row> List<Problem> list(
            CodeBook book, Class<R> kind, Function<R, String> agent, String what, Set<String> lists) {
        Set<String> held = rows(book, kind).stream().map(agent).collect(Collectors.toCollection(TreeSet::new));
        List<NoneListed> none = rows(book, NoneListed.class).stream()
                .filter(n -> lists.contains(n.list()))
                .toList();
        List<Problem> problems = new ArrayList<>();
        for (TableFile table : book.tables()) {
            for (DatedRow dated : table.rows()) {
                if (dated.row() instanceof Agent a
                        && !held.contains(a.id())
                        && none.stream().noneMatch(n -> n.covers(a.id()))) {
                    problems.add(new Problem(
                            table.file(),
                            dated.line(),
                            a.id(),
                            "has neither a " + what + " under " + book.card().id()
                                    + " nor a row that says there is none.",
                            "add the " + what + ", or a row of a none-listed table with the edition searched."));
                }
                if (dated.row() instanceof NoneListed n && lists.contains(n.list()) && held.contains(n.agent())) {
                    problems.add(new Problem(
                            table.file(),
                            dated.line(),
                            n.agent(),
                            "is said to have no " + what + ", and has one under "
                                    + book.card().id() + ".",
                            "drop one of the two."));
                }
            }
        }
        return problems;
    }

    private static <R extends Row> List<R> rows(CodeBook book, Class<R> kind) {
        return book.tables().stream()
                .flatMap(t -> t.rows().stream())
                .map(DatedRow::row)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }
}
