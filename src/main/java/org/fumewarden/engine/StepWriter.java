package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private static final Comparator<Step> BY_CONTENT = Comparator.comparing(Step::rule)
            .thenComparing(s -> s.conclusion().toString())
            .thenComparing(s -> s.premises().toString());

    private final RuleBase base;
    private final Sentences sentences;
    private final Map<String, Citation> clauses;
    private final List<Step> steps = new ArrayList<>();
    private final Map<Conclusion, String> concludedBy = new HashMap<>();

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

    List<Step> standing() {
        return steps.stream().filter(Step::stands).toList();
    }

    /** Writes one firing as a step that has no number yet. */
    Step write(Phase phase, Firing firing) {
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
        if (fact instanceof Input input) {
            return new Premise("input", input.path(), sentences.describe(input), Optional.empty());
        }
        if (fact instanceof Row row) {
            return new Premise(
                    "row",
                    row.ref().address(),
                    sentences.describe(row),
                    Optional.of(row.ref().citation()));
        }
        Conclusion conclusion = (Conclusion) fact;
        return new Premise(
                "step", concludedBy.getOrDefault(conclusion, "?"), sentences.describe(conclusion), Optional.empty());
    }

    /** Takes in the steps of a phase: sorted, numbered, each once, with overrides applied. */
    void add(List<Step> phaseSteps) {
        List<Step> sorted = phaseSteps.stream().distinct().sorted(BY_CONTENT).toList();
        for (Step step : sorted) {
            Step numbered = new Step(
                    "s" + (steps.size() + 1),
                    step.phase(),
                    step.rule(),
                    step.title(),
                    step.says(),
                    step.citation(),
                    step.premises(),
                    step.conclusion(),
                    overridden(step, sorted));
            steps.add(numbered);
            if (numbered.stands()) {
                concludedBy.putIfAbsent(numbered.conclusion(), numbered.id());
            }
        }
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
