package org.fumewarden.engine;

import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Input;
import org.fumewarden.model.Row;
import org.fumewarden.trail.Finding;
import org.fumewarden.trail.Premise;

/** Puts the firings of one decision into words. */
final class DraftWriter {
    private final Sentences sentences;
    private final RowsInForce rows;
    private final HeldFacts held;

    /** Inputs and conclusions already in words: many rules rest on the same few. */
    private final Map<Fact, Premise> inputs = new IdentityHashMap<>();

    private final Map<Conclusion, String> conclusions = new HashMap<>();

    DraftWriter(Sentences sentences, RowsInForce rows, HeldFacts held) {
        this.sentences = sentences;
        this.rows = rows;
        this.held = held;
    }

    /** One draft for each firing. */
    List<Draft> drafts(Collection<Firing> firings) {
        return firings.stream().map(this::draft).toList();
    }

    private Draft draft(Firing firing) {
        RuleCard card = firing.rule().card();
        Set<Premise> given = new TreeSet<>();
        Map<Conclusion, Draft.Earlier> concluded = new LinkedHashMap<>();
        for (Fact fact : firing.premises()) {
            if (fact instanceof Conclusion conclusion) {
                concluded.computeIfAbsent(
                        conclusion,
                        c -> new Draft.Earlier(held.of(c), conclusions.computeIfAbsent(c, sentences::describe)));
            } else if (fact instanceof Row row) {
                given.add(rows.premise(row, sentences));
            } else {
                given.add(inputs.computeIfAbsent(fact, f -> premise((Input) f)));
            }
        }
        Held conclusion = held.of(firing.conclusion());
        return new Draft(
                card,
                finding(firing, (Conclusion) conclusion.fact(), given),
                conclusion,
                Part.spelled(firing.conclusion()),
                List.copyOf(given),
                List.copyOf(concluded.values()));
    }

    private Finding finding(Firing firing, Conclusion conclusion, Set<Premise> given) {
        RuleCard card = firing.rule().card();
        Citation citation = rows.clause(card.id()).orElse(card.citation());
        Confidence weakest = citation.confidence();
        for (Premise premise : given) {
            if (premise.citation().isPresent()) {
                weakest = weakest.weaker(premise.citation().get().confidence());
            }
        }
        return new Finding(
                card.phase().key(),
                card.id(),
                card.title(),
                sentences.fill(firing.rule().sentence(), conclusion, firing.bindings()),
                citation,
                conclusion,
                weakest);
    }

    private Premise premise(Input input) {
        return new Premise("input", input.path(), sentences.describe(input), Optional.empty());
    }
}
