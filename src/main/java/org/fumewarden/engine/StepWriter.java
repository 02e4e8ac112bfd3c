package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.model.Conclusion;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;

/** Numbers drafts, phase by phase, in an order that depends on nothing but their content. */
final class StepWriter {
    private static final String NO_NUMBER_YET = "?";
    private static final Comparator<Open> BY_CONTENT = Comparator.comparing(
                    (Open o) -> o.draft.card().id())
            .thenComparing(o -> o.draft.sortedAs())
            .thenComparing(o -> o.premises, StepWriter::inOrder)
            .thenComparing(o -> o.draft.says());

    private final List<Step> steps = new ArrayList<>();
    private final Map<Conclusion, String> concludedBy = new HashMap<>();
    private final Set<Conclusion> standing = new LinkedHashSet<>();

    /** A draft whose premises have the numbers of the steps of earlier phases. */
    private record Open(Draft draft, List<Premise> premises) {
        boolean rereads() {
            for (Premise premise : premises) {
                if (premise.address().equals(NO_NUMBER_YET)) {
                    return true;
                }
            }
            return false;
        }
    }

    List<Step> steps() {
        return Collections.unmodifiableList(steps);
    }

    /** The conclusions that stand, each once, in the order of their steps. */
    Collection<Conclusion> standingConclusions() {
        return Collections.unmodifiableSet(standing);
    }

    /** Takes in the drafts of a phase: sorted by content, numbered, each once, with overrides applied. */
    void add(Collection<Draft> drafts) {
        List<Open> sorted = new ArrayList<>();
        drafts.forEach(d -> sorted.add(new Open(d, premises(d))));
        sorted.sort(BY_CONTENT);
        List<Open> once = new ArrayList<>();
        for (Open open : sorted) {
            if (once.isEmpty() || BY_CONTENT.compare(once.get(once.size() - 1), open) != 0) {
                once.add(open);
            }
        }
        number(once);
    }

    private void number(List<Open> once) {
        List<Draft> lifting = once.stream()
                .map(Open::draft)
                .filter(d -> d.card().overrides().isPresent())
                .toList();
        int first = steps.size() + 1;
        List<Optional<String>> lifted = new ArrayList<>();
        for (int i = 0; i < once.size(); i++) {
            Draft draft = once.get(i).draft();
            lifted.add(lifted(draft, lifting));
            if (lifted.get(i).isEmpty()) {
                concludedBy.putIfAbsent(draft.conclusion(), "s" + (first + i));
                standing.add(draft.conclusion());
            }
        }
        for (int i = 0; i < once.size(); i++) {
            Open open = once.get(i);
            // A rule may read what its own phase concluded, and only now do those conclusions have numbers.
            List<Premise> premises = open.rereads() ? premises(open.draft()) : open.premises();
            steps.add(step("s" + (first + i), open.draft(), premises, lifted.get(i)));
        }
    }

    private static int inOrder(List<Premise> some, List<Premise> others) {
        for (int i = 0; i < Math.min(some.size(), others.size()); i++) {
            int order = some.get(i).compareTo(others.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(some.size(), others.size());
    }

    private static Step step(String id, Draft draft, List<Premise> premises, Optional<String> overriddenBy) {
        RuleCard card = draft.card();
        return new Step(
                id,
                card.phase().key(),
                card.id(),
                card.title(),
                draft.says(),
                draft.citation(),
                premises,
                draft.conclusion(),
                overriddenBy);
    }

    private List<Premise> premises(Draft draft) {
        TreeSet<Premise> premises = new TreeSet<>(draft.given());
        draft.concluded()
                .forEach((conclusion, words) -> premises.add(new Premise(
                        "step", concludedBy.getOrDefault(conclusion, NO_NUMBER_YET), words, Optional.empty())));
        return List.copyOf(premises);
    }

    /** The rule that lifts a conclusion of the same phase, if one does. */
    private static Optional<String> lifted(Draft draft, List<Draft> lifting) {
        return lifting.isEmpty()
                ? Optional.empty()
                : lifting.stream()
                        .filter(l ->
                                l.card().overrides().get().equals(draft.card().id()))
                        .filter(l -> l.conclusion()
                                .subject()
                                .equals(draft.conclusion().subject()))
                        .map(l -> l.card().id())
                        .findFirst();
    }
}
