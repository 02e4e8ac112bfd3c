package org.fumewarden.engine;

import java.lang.ref.SoftReference;
import java.time.LocalDate;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Row;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionConfiguration;
import org.kie.api.runtime.conf.KeepReferenceOption;
import org.kie.api.runtime.rule.AgendaFilter;

/** Sessions in which some rules of a phase fire on one day. Safe to share between threads: each run has a session to itself. */
final class PhaseSessions {
    /** Compiled rules do not hold on to their sessions, so one that nobody uses goes when memory is short. */
    private static final KieSessionConfiguration FREE = free();

    private final PhaseRules rules;
    private final KieBase base;
    private final List<Row> rows;
    private final AgendaFilter filter;
    private final Queue<SoftReference<PhaseSession>> idle = new ConcurrentLinkedQueue<>();

    /**
     * Sessions that are made when needed.
     *
     * @param firing places of the rules that fire; the others stay silent
     */
    PhaseSessions(PhaseRules rules, RowsInForce rows, LocalDate day, Set<String> switchedOff, BitSet firing) {
        this.rules = rules;
        this.base = rules.base(firing);
        this.rows = rows.readBy(rules, firing);
        this.filter = match -> {
            SpokenRule rule = rules.spoken().get(match.getRule().getName());
            return firing.get(rules.place(rule.card()))
                    && rule.card().inForce(day)
                    && !switchedOff.contains(rule.card().id());
        };
    }

    /** What the rules conclude from the rows and these facts. */
    List<Firing> run(List<Fact> facts) {
        return run(facts, session -> {}, session -> {});
    }

    /** The same if a row held something else, or were not there. */
    List<Firing> run(List<Fact> facts, Row row, Optional<Row> instead) {
        Optional<Row> held =
                rows.stream().filter(r -> r.ref().isSameRow(row.ref())).findFirst();
        return run(facts, session -> session.replace(row, instead), session -> session.replace(row, held));
    }

    private List<Firing> run(List<Fact> facts, Consumer<PhaseSession> before, Consumer<PhaseSession> after) {
        PhaseSession session = waiting();
        boolean asNew = false;
        try {
            before.accept(session);
            List<Firing> firings = session.run(facts);
            boolean renewed = session.renew();
            after.accept(session);
            asNew = renewed;
            return firings;
        } finally {
            if (asNew) {
                idle.add(new SoftReference<>(session));
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

    /** A session that waits to be used again, or a new one. */
    private PhaseSession waiting() {
        for (SoftReference<PhaseSession> one = idle.poll(); one != null; one = idle.poll()) {
            PhaseSession session = one.get();
            if (session != null) {
                return session;
            }
        }
        return session();
    }

    private PhaseSession session() {
        return new PhaseSession(session(base), rows, new MatchListener(rules.spoken()), filter);
    }

    /** A session of compiled rules, which holds nothing yet. */
    static KieSession session(KieBase base) {
        return base.newKieSession(FREE, null);
    }

    private static KieSessionConfiguration free() {
        KieSessionConfiguration configuration = KieServices.get().newKieSessionConfiguration();
        configuration.setOption(KeepReferenceOption.NO);
        return configuration;
    }
}
