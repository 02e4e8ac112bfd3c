package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.CodeSummary;
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
            NoneListed.LIMITS,
            NoneListed.OF_MEMBERS,
            NoneListed.NOT_HELD,
            NoneListed.THAT_DAY,
            NoneListed.NO_FACTORS,
            "danger-levels");

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
        Map<String, List<DatedRow>> held = dated(book)
                .filter(d -> kind.isInstance(d.row()))
                .collect(Collectors.groupingBy(d -> agent.apply(kind.cast(d.row()))));
        List<DatedRow> none = dated(book)
                .filter(d -> d.row() instanceof NoneListed n && lists.contains(n.list()))
                .toList();
        List<Problem> problems = new ArrayList<>();
        for (TableFile table : book.tables()) {
            for (DatedRow dated : table.rows()) {
                if (dated.row() instanceof Agent a
                        && !held.containsKey(a.id())
                        && none.stream().noneMatch(n -> covers(n, a.id()))) {
                    problems.add(silent(book, table, dated, a.id(), "", what));
                }
                if (kind.isInstance(dated.row()) && dated.until().isBefore(CodeSummary.NEVER)) {
                    String of = agent.apply(kind.cast(dated.row()));
                    if (Stream.concat(held.get(of).stream(), none.stream().filter(n -> covers(n, of)))
                            .noneMatch(next -> next.inForce(dated.until()))) {
                        problems.add(silent(book, table, dated, of, "from " + dated.until() + " ", what));
                    }
                }
                if (dated.row() instanceof NoneListed n
                        && lists.contains(n.list())
                        && held.getOrDefault(n.agent(), List.of()).stream().anyMatch(row -> sameDay(row, dated))) {
                    problems.add(new Problem(
                            table.file(),
                            dated.line(),
                            n.agent(),
                            "is said to have no " + what + ", and has one under "
                                    + book.card().id() + ".",
                            "drop one of the two, or close one with until."));
                }
            }
        }
        return problems;
    }

    private static Problem silent(
            CodeBook book, TableFile table, DatedRow row, String agent, String since, String what) {
        return new Problem(
                table.file(),
                row.line(),
                agent,
                since + "has neither a " + what + " under " + book.card().id() + " nor a row that says there is none.",
                "add the " + what + ", or a row of a none-listed table with the edition searched.");
    }

    private static boolean covers(DatedRow none, String agent) {
        return ((NoneListed) none.row()).covers(agent);
    }

    private static boolean sameDay(DatedRow some, DatedRow other) {
        return some.from().isBefore(other.until()) && other.from().isBefore(some.until());
    }

    private static Stream<DatedRow> dated(CodeBook book) {
        return book.tables().stream().flatMap(t -> t.rows().stream());
    }
}
