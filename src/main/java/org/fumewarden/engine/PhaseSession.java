package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Row;
import org.kie.api.event.rule.AgendaEventListener;
import org.kie.api.event.rule.RuleRuntimeEventListener;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.AgendaFilter;
import org.kie.api.runtime.rule.FactHandle;

/**
 * A session of one phase that keeps the table rows of a day while tasks come and go. For one thread at a time.
 *
 * <p>Renewed after a task, the session holds the rows alone: what the task brought is taken out. A match of rows
 * alone is spent once fired, so one of its rows is taken out and put back, which makes the match anew.
 */
final class PhaseSession {
    private final KieSession session;
    private final MatchListener listener;
    private final AgendaFilter filter;
    private final Map<Row, FactHandle> rows = new IdentityHashMap<>();
    private final List<FactHandle> brought = new ArrayList<>();

    PhaseSession(KieSession session, List<Row> rows, MatchListener listener, AgendaFilter filter) {
        this.session = session;
        this.listener = listener;
        this.filter = filter;
        rows.forEach(row -> this.rows.put(row, session.insert(row)));
        session.addEventListener((AgendaEventListener) listener);
        session.addEventListener((RuleRuntimeEventListener) listener);
    }

    /** What the rules conclude from the rows and these facts. Before it may run again it must be renewed. */
    List<Firing> run(List<Fact> facts) {
        facts.forEach(f -> brought.add(session.insert(f)));
        session.fireAllRules(filter);
        return listener.firings();
    }

    /** Takes out what the last task brought. False when something of it stays, so that the session cannot serve again. */
    boolean renew() {
        brought.forEach(session::delete);
        brought.clear();
        listener.inserted().forEach(session::delete);
        boolean asNew = listener.firings().stream().allMatch(this::madeAnew);
        listener.forget();
        return asNew;
    }

    /** Takes the row of an address out, and puts another in where there is one. */
    void replace(Row row, Optional<Row> instead) {
        List<Row> out =
                rows.keySet().stream().filter(r -> r.ref().isSameRow(row.ref())).toList();
        out.forEach(r -> session.delete(rows.remove(r)));
        instead.ifPresent(r -> rows.put(r, session.insert(r)));
    }

    private boolean madeAnew(Firing firing) {
        for (Fact fact : firing.premises()) {
            if (!(fact instanceof Row)) {
                return true;
            }
        }
        for (Fact fact : firing.premises()) {
            Row row = (Row) fact;
            session.delete(rows.get(row));
            rows.put(row, session.insert(row));
            return true;
        }
        // Made from nothing at all: there is no fact to take out.
        return false;
    }

    void close() {
        session.dispose();
    }
}
