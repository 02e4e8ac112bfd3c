package org.fumewarden.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Input;
import org.fumewarden.trail.Trail;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/** Decides a task: one fresh session a phase, over the inputs, the rows in force and all earlier conclusions. */
public final class Engine {
    private final RuleBase base;
    private final Set<String> switchedOff;

    public Engine(RuleBase base) {
        this(base, Set.of());
    }

    /** An engine in which some rules are silent, for proving that each of them matters. */
    public Engine(RuleBase base, Set<String> switchedOff) {
        this.base = base;
        this.switchedOff = Set.copyOf(switchedOff);
    }

    /** Runs all phases and returns every step. */
    public Trail decide(List<Input> inputs, LocalDate day) {
        RowsInForce rows = base.rows(day);
        StepWriter writer = new StepWriter(base, base.book().vocabulary(), rows.all());
        for (Phase phase : Phase.values()) {
            KieBase rules = base.rules().get(phase);
            if (rules == null) {
                continue;
            }
            List<Fact> facts = new ArrayList<>(inputs);
            facts.addAll(rows.byPhase().get(phase));
            facts.addAll(writer.standingConclusions());
            writer.add(phase, run(rules, facts, day));
        }
        return new Trail(writer.steps());
    }

    private List<Firing> run(KieBase rules, List<Fact> facts, LocalDate day) {
        KieSession session = rules.newKieSession();
        try {
            MatchListener listener = new MatchListener();
            session.addEventListener((org.kie.api.event.rule.AgendaEventListener) listener);
            facts.forEach(session::insert);
            // Only what rules insert is of interest, so the listener comes after the facts.
            session.addEventListener((org.kie.api.event.rule.RuleRuntimeEventListener) listener);
            session.fireAllRules(match -> {
                String id = CardReader.id(match.getRule().getName());
                return !switchedOff.contains(id) && base.cards().get(id).inForce(day);
            });
            return listener.firings();
        } finally {
            session.dispose();
        }
    }
}
