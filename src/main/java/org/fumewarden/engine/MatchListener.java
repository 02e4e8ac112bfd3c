package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
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
import org.kie.api.runtime.rule.Match;

/** Ties each conclusion to the match that inserted it. */
final class MatchListener extends DefaultAgendaEventListener implements RuleRuntimeEventListener {
    private final List<Firing> firings = new ArrayList<>();
    private Match current;

    List<Firing> firings() {
        return firings;
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
        Map<String, Object> bindings = new LinkedHashMap<>();
        for (String name : current.getDeclarationIds()) {
            bindings.put(name.replace("$", ""), current.getDeclarationValue(name));
        }
        firings.add(new Firing(current.getRule().getName(), premises, bindings, (Conclusion) event.getObject()));
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
        throw new IllegalStateException("rules may not change facts: " + event.getObject());
    }

    @Override
    public void objectDeleted(ObjectDeletedEvent event) {
        throw new IllegalStateException("rules may not delete facts: " + event.getOldObject());
    }
}
