package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Citation;
import org.fumewarden.model.ClauseFor;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Input;
import org.fumewarden.model.Row;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;

/** Turns firings into numbered steps whose order depends on nothing but their content. */
final class StepWriter {
    private static final String NO_NUMBER_YET = "?";
    private static final Comparator<Step> BY_CONTENT = Comparator.comparing(Step::rule)
            .thenComparing(s -> s.conclusion().toString())
            .thenComparing(s -> s.premises().toString());

    private final RuleBase base;
    private final Sentences sentences;
    private final Map<String, Citation> clauses;
    private final List<Step> steps = new ArrayList<>();

    /** Inputs and rows already in words: many rules rest on the same few. */
    private final Map<Fact, Premise> given = new IdentityHashMap<>();

    private final Map<Conclusion, String> concludedBy = new HashMap<>();
    private final Set<Conclusion> standing = new LinkedHashSet<>();

    StepWriter(RuleBase base, Vocabulary vocabulary, List<Row> rows) {
        this.base = base;
        this.clauses = new HashMap<>();
        for (Row row : rows) {
            if (row instanceof ClauseFor clause) {
                clauses.put(clause.rule(), clause.ref().citation());
            }
        }
        this.sentences = new Sentences(vocabulary);
    }

    List<Step> steps() {
        return Collections.unmodifiableList(steps);
    }

    /** The conclusions that stand, each once, in the order of their steps. */
    Collection<Conclusion> standingConclusions() {
        return Collections.unmodifiableSet(standing);
    }

    /** Takes in the firings of a phase: sorted by content, numbered, each once, with overrides applied. */
    void add(Phase phase, List<Firing> firings) {
        Map<Step, Firing> drafts = new HashMap<>();
        firings.forEach(f -> drafts.putIfAbsent(draft(phase, f), f));
        List<Step> sorted = drafts.keySet().stream().sorted(BY_CONTENT).toList();
        List<Step> numbered = new ArrayList<>();
        for (Step step : sorted) {
            Step next =
                    with(step, "s" + (steps.size() + numbered.size() + 1), step.premises(), overridden(step, sorted));
            numbered.add(next);
            if (next.stands()) {
                concludedBy.putIfAbsent(next.conclusion(), next.id());
                standing.add(next.conclusion());
            }
        }
        // A rule may read what its own phase concluded, and only now do those conclusions have numbers.
        for (int i = 0; i < sorted.size(); i++) {
            Step step = numbered.get(i);
            boolean open = step.premises().stream().anyMatch(p -> p.address().equals(NO_NUMBER_YET));
            List<Premise> premises = open ? premises(drafts.get(sorted.get(i))) : step.premises();
            steps.add(with(step, step.id(), premises, step.overriddenBy()));
        }
    }

    private static Step with(Step step, String id, List<Premise> premises, Optional<String> overriddenBy) {
        return new Step(
                id,
                step.phase(),
                step.rule(),
                step.title(),
                step.says(),
                step.citation(),
                premises,
                step.conclusion(),
                overriddenBy);
    }

    /** Writes one firing as a step that has no number yet. */
    private Step draft(Phase phase, Firing firing) {
        RuleCard card = base.cards().get(CardReader.id(firing.rule()));
        return new Step(
                "",
                phase.key(),
                card.id(),
                card.title(),
                sentences.fill(card.says(), firing),
                clauses.getOrDefault(card.id(), card.citation()),
                premises(firing),
                firing.conclusion(),
                Optional.empty());
    }

    private List<Premise> premises(Firing firing) {
        TreeSet<Premise> premises = new TreeSet<>();
        for (Fact fact : firing.premises()) {
            premises.add(premise(fact));
        }
        return List.copyOf(premises);
    }

    private Premise premise(Fact fact) {
        if (fact instanceof Conclusion conclusion) {
            return premise(conclusion);
        }
        return given.computeIfAbsent(fact, this::describe);
    }

    private Premise describe(Fact fact) {
        if (fact instanceof Row row) {
            return new Premise(
                    "row",
                    row.ref().address(),
                    sentences.describe(row),
                    Optional.of(row.ref().citation()));
        }
        Input input = (Input) fact;
        return new Premise("input", input.path(), sentences.describe(input), Optional.empty());
    }

    private Premise premise(Conclusion conclusion) {
        return new Premise(
                "step",
                concludedBy.getOrDefault(conclusion, NO_NUMBER_YET),
                sentences.describe(conclusion),
                Optional.empty());
    }

    private Optional<String> overridden(Step step, List<Step> peers) {
        return peers.stream()
                .filter(p -> base.cards()
                        .get(p.rule())
                        .overrides()
                        .filter(step.rule()::equals)
                        .isPresent())
                .filter(p -> p.conclusion().subject().equals(step.conclusion().subject()))
                .map(Step::rule)
                .findFirst();
    }
}
