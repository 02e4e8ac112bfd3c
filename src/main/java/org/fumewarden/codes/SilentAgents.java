package org.fumewarden.codes;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.model.Agent;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Limit;
import org.fumewarden.model.NoneListed;
import org.fumewarden.model.Row;
import org.fumewarden.model.RowRef;

/** Agents of which no row of the day says anything: whether the law has a limit is not known then, which is not the same as none. */
final class SilentAgents {
    private static final Set<String> SAID = Set.of(NoneListed.LIMITS, NoneListed.OF_MEMBERS, NoneListed.NOT_HELD);

    private SilentAgents() {}

    /**
     * The rows that are missing, one for each.
     *
     * @param day the rows of the day
     * @param all the rows of every day, which say what an agent had on others
     */
    static Stream<Row> of(List<Row> day, List<DatedRow> all) {
        Set<String> said = new HashSet<>();
        for (Row row : day) {
            if (row instanceof Limit limit) {
                said.add(limit.agent());
            } else if (row instanceof NoneListed none && SAID.contains(none.list())) {
                said.add(none.agent());
            }
        }
        List<String> silent = day.stream()
                .filter(Agent.class::isInstance)
                .map(agent -> ((Agent) agent).id())
                .filter(agent -> !said.contains(agent) && !said.contains(NoneListed.EVERY_OTHER))
                .toList();
        if (silent.isEmpty()) {
            return Stream.empty();
        }
        Map<String, Limit> others = all.stream()
                .map(DatedRow::row)
                .filter(Limit.class::isInstance)
                .map(Limit.class::cast)
                .collect(Collectors.toMap(Limit::agent, Function.identity(), (some, other) -> some));
        return silent.stream().map(agent -> row(agent, others));
    }

    private static Row row(String agent, Map<String, Limit> others) {
        boolean known = others.containsKey(agent);
        RowRef other = known ? others.get(agent).ref() : null;
        Citation cited = known
                ? new Citation(
                        other.citation().source(),
                        other.citation().clause(),
                        other.citation().edition(),
                        Confidence.PRACTICE)
                : new Citation("fumewarden", "a gap of ours is open", "-", Confidence.PRACTICE);
        return new NoneListed(
                new RowRef(known ? other.table() : "limits", NoneListed.NOT_HELD + "/" + agent, cited),
                NoneListed.NOT_HELD,
                agent,
                "no row for it holds on this day");
    }
}
