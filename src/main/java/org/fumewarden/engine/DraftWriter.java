package org.fumewarden.engine;

import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
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
    private final Function<Fact, Held> held;

    /** Inputs and conclusions already in words: many rules rest on the same few. */
    private final Map<Fact, Premise> inputs = new IdentityHashMap<>();

    private final Map<Conclusion, StepDraft.Earlier> conclusions = new IdentityHashMap<>();

    DraftWriter(Sentences sentences, RowsInForce rows, Function<Fact, Held> held) {
        this.sentences = sentences;
        this.rows = rows;
        this.held = held;
    }

    /** One draft for each firing, but for those about a class that gets no verdict. */
    List<StepDraft> drafts(Collection<Firing> firings) {
        return firings.stream()
                .filter(firing -> rows.judge(firing.conclusion()))
                .map(this::draft)
                .toList();
    }

    private StepDraft draft(Firing firing) {
        RuleCard card = firing.rule().card();
        Held conclusion = held.apply(firing.conclusion());
        Set<Premise> given = new TreeSet<>();
        Map<Held, StepDraft.Earlier> concluded = new LinkedHashMap<>();
        for (Fact fact : firing.premises()) {
            if (fact instanceof Conclusion premise) {
                StepDraft.Earlier earlier = conclusions.computeIfAbsent(premise, this::earlier);
                concluded.putIfAbsent(earlier.conclusion(), earlier);
            } else if (fact instanceof Row row) {
                given.add(rows.premise(row, sentences));
            } else {
                given.add(inputs.computeIfAbsent(fact, f -> premise((Input) f)));
            }
        }
        String subject = ((Conclusion) conclusion.fact()).subject();
        firing.absences().forEach(a -> given.add(sentences.absent(a, subject)));
        return new StepDraft(
                card,
                finding(firing, (Conclusion) conclusion.fact(), given),
                conclusion,
                conclusion.spelled(),
                List.copyOf(given),
                List.copyOf(concluded.values()));
    }

    private StepDraft.Earlier earlier(Conclusion conclusion) {
        return new StepDraft.Earlier(held.apply(conclusion), sentences.describe(conclusion));
    }

    private Finding finding(Firing firing, Conclusion conclusion, Set<Premise> given) {
        RuleCard card = firing.rule().card();
        Citation clause = rows.citation(card);
        Confidence weakest = clause.confidence();
        for (Premise premise : given) {
            if (premise.citation().isPresent()) {
                weakest = weakest.weaker(premise.citation().get().confidence());
            }
        }
        return new Finding(
                card.phase().key(),
                card.id(),
                card.title(),
                sentences.fill(firing.rule(), conclusion, firing.bindings()),
                rows.citation(card, given),
                conclusion,
                weakest);
    }

    private Premise premise(Input input) {
        return new Premise("input", input.path(), sentences.describe(input), Optional.empty());
    }
}
