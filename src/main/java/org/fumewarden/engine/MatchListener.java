package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Fact;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.ObjectDeletedEvent;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.event.rule.ObjectUpdatedEvent;
import org.kie.api.event.rule.RuleRuntimeEventListener;
import org.kie.api.runtime.rule.FactHandle;
import org.kie.api.runtime.rule.Match;

/** Ties each conclusion to the match that inserted it. */
final class MatchListener extends DefaultAgendaEventListener implements RuleRuntimeEventListener {
    private final Map<String, SpokenRule> rules;
    private final List<Firing> firings = new ArrayList<>();
    private final List<FactHandle> inserted = new ArrayList<>();
    private Match current;

    MatchListener(Map<String, SpokenRule> rules) {
        this.rules = rules;
    }

    List<Firing> firings() {
        return List.copyOf(firings);
    }

    /** Handles of the conclusions. */
    List<FactHandle> inserted() {
        return List.copyOf(inserted);
    }

    void forget() {
        firings.clear();
        inserted.clear();
    }

    @Override
    public void beforeMatchFired(BeforeMatchFiredEvent event) {
        current = event.getMatch();
    }

    @Override
    public void afterMatchFired(AfterMatchFiredEvent event) {
        current = null;
    }

    @Override
    public void objectInserted(ObjectInsertedEvent event) {
        if (current == null) {
            return;
        }
        List<Fact> premises = new ArrayList<>();
        current.getObjects().forEach(o -> collect(o, premises));
        SpokenRule rule = rules.get(current.getRule().getName());
        inserted.add(event.getFactHandle());
        firings.add(
                new Firing(rule, premises, bindings(rule.sentence()), absences(rule), (Conclusion) event.getObject()));
    }

    private Map<String, Object> bindings(Template sentence) {
        Map<String, Object> bindings = new HashMap<>();
        if (!sentence.names().isEmpty()) {
            for (String name : current.getDeclarationIds()) {
                String bare = name.replace("$", "");
                if (sentence.names().contains(bare)) {
                    bindings.put(bare, current.getDeclarationValue(name));
                }
            }
        }
        return bindings;
    }

    private List<Absence> absences(SpokenRule rule) {
        List<String> bound = current.getDeclarationIds();
        return rule.absences(current.getRule()).stream()
                .map(a -> a.in(name -> bound.contains(name) ? current.getDeclarationValue(name) : null))
                .toList();
    }

    private static void collect(Object object, List<Fact> into) {
        if (object instanceof Fact fact) {
            into.add(fact);
        } else if (object instanceof Collection<?> many) {
            many.forEach(o -> collect(o, into));
        }
    }

    @Override
    public void objectUpdated(ObjectUpdatedEvent event) {
        if (current != null) {
            throw new IllegalStateException("rules may not change facts: " + event.getObject());
        }
    }

    @Override
    public void objectDeleted(ObjectDeletedEvent event) {
        if (current != null) {
            throw new IllegalStateException("rules may not delete facts: " + event.getOldObject());
        }
    }
}
