package org.fumewarden.engine;

import java.lang.ref.Cleaner;
import java.time.LocalDate;
import java.util.BitSet;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Row;
import org.kie.api.runtime.rule.AgendaFilter;

/** Sessions in which some rules of a phase fire on one day. Safe to share between threads: each run has a session to itself. */
final class PhaseSessions {
    /** Compiled rules hold on to their sessions until these are closed, so whoever is let go must close its own. */
    private static final Cleaner CLEANER = Cleaner.create();

    private final PhaseRules rules;
    private final List<Row> rows;
    private final AgendaFilter filter;
    private final Queue<PhaseSession> idle = new ConcurrentLinkedQueue<>();

    /**
     * Sessions that are made when needed.
     *
     * @param firing places of the rules that fire; the others stay silent
     */
    PhaseSessions(PhaseRules rules, RowsInForce rows, LocalDate day, Set<String> switchedOff, BitSet firing) {
        this.rules = rules;
        this.rows = rows.readBy(rules, firing);
        CLEANER.register(this, new Closing(idle));
        this.filter = match -> {
            SpokenRule rule = rules.spoken().get(match.getRule().getName());
            return firing.get(rules.place(rule.card()))
                    && rule.card().inForce(day)
                    && !switchedOff.contains(rule.card().id());
        };
    }

    /** What the rules conclude from the rows and these facts. */
    List<Firing> run(List<Fact> facts) {
        PhaseSession session = idle.poll();
        if (session == null) {
            session = session();
        }
        boolean asNew = false;
        try {
            List<Firing> firings = session.run(facts);
            asNew = session.renew();
            return firings;
        } finally {
            if (asNew) {
                idle.add(session);
            } else {
                session.close();
            }
        }
    }

    /** The same in a session of its own that serves only once. */
    List<Firing> runOnce(List<Fact> facts) {
        PhaseSession session = session();
        try {
            return session.run(facts);
        } finally {
            session.close();
        }
    }

    private PhaseSession session() {
        return new PhaseSession(rules.base().newKieSession(), rows, new MatchListener(rules.spoken()), filter);
    }

    /** Closes the sessions of an owner that is gone. */
    private record Closing(Queue<PhaseSession> idle) implements Runnable {
        @Override
        public void run() {
            idle.forEach(PhaseSession::close);
        }
    }
}
