package org.fumewarden.engine;

import java.lang.ref.Cleaner;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Row;
import org.kie.api.runtime.rule.AgendaFilter;

/**
 * Runs the rules of one phase on one day. What they conclude depends on nothing but the facts that they can match, so
 * the drafts for the facts met lately are kept. Safe to share between threads: each run has a session to itself.
 */
final class PhaseRunner {
    private static final int DRAFTS_KEPT = 128;

    /** Compiled rules hold on to their sessions until these are closed, so a runner that is let go must close its own. */
    private static final Cleaner CLEANER = Cleaner.create();

    private final PhaseRules rules;
    private final List<Row> rows;
    private final AgendaFilter filter;
    private final boolean reuses;
    private final Queue<PhaseSession> idle = new ConcurrentLinkedQueue<>();
    private final Kept<List<Fact>, List<Draft>> kept = new Kept<>(DRAFTS_KEPT);

    PhaseRunner(PhaseRules rules, RowsInForce rows, LocalDate day, Set<String> switchedOff) {
        this.rules = rules;
        this.rows = rows.readBy(rules);
        this.reuses = switchedOff.isEmpty();
        CLEANER.register(this, new Closing(idle));
        this.filter = match -> {
            RuleCard card = rules.card(match.getRule().getName());
            return card.inForce(day) && !switchedOff.contains(card.id());
        };
    }

    /** What the rules conclude from the rows in force and these facts. */
    List<Draft> run(Collection<? extends Fact> facts, DraftWriter writer) {
        List<Fact> matched = new ArrayList<>();
        for (Fact fact : facts) {
            if (rules.read().contain(fact)) {
                matched.add(fact);
            }
        }
        return kept.of(matched, m -> writer.drafts(firings(m)));
    }

    private List<Firing> firings(List<Fact> facts) {
        PhaseSession session = idle.poll();
        if (session == null) {
            session = new PhaseSession(rules.base().newKieSession(), rows, new MatchListener(rules.spoken()), filter);
        }
        try {
            return session.run(facts);
        } finally {
            if (reuses && session.asNew()) {
                idle.add(session);
            } else {
                session.close();
            }
        }
    }

    /** Closes the sessions of a runner that is gone. */
    private record Closing(Queue<PhaseSession> idle) implements Runnable {
        @Override
        public void run() {
            idle.forEach(PhaseSession::close);
        }
    }
}
