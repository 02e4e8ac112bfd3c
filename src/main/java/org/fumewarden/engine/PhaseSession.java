package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
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
 * <p>After each task the session holds the rows alone, as if new: what the task brought is taken out. A match of rows
 * alone is spent once fired, so one of its rows is taken out and put back, which makes the match anew.
 */
final class PhaseSession {
    private final KieSession session;
    private final MatchListener listener;
    private final AgendaFilter filter;
    private final Map<Row, FactHandle> rows = new IdentityHashMap<>();
    private boolean asNew = true;

    PhaseSession(KieSession session, List<Row> rows, MatchListener listener, AgendaFilter filter) {
        this.session = session;
        this.listener = listener;
        this.filter = filter;
        rows.forEach(row -> this.rows.put(row, session.insert(row)));
        session.addEventListener((AgendaEventListener) listener);
        session.addEventListener((RuleRuntimeEventListener) listener);
    }

    /** True when nothing of the last task is left, so that the session may serve again. */
    boolean asNew() {
        return asNew;
    }

    /** What the rules conclude from the rows and these facts. */
    List<Firing> run(List<Fact> facts) {
        asNew = false;
        List<FactHandle> brought = new ArrayList<>();
        facts.forEach(f -> brought.add(session.insert(f)));
        session.fireAllRules(filter);
        List<Firing> firings = listener.firings();
        brought.forEach(session::delete);
        listener.inserted().forEach(session::delete);
        asNew = firings.stream().allMatch(this::madeAnew);
        listener.forget();
        return firings;
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
