package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.trail.Finding;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;

/** Numbers drafts, phase by phase, in an order that depends on nothing but their content. */
final class StepWriter {
    private static final String NO_NUMBER_YET = "?";

    /** Conclusions of a task of which little is known. */
    static final int EXPECTED = 1_000;

    private final List<Step> steps = new ArrayList<>(EXPECTED);

    /** The conclusions that stand, each with the first step that concludes it. */
    private final Map<Held, Step> standing = new HashMap<>(EXPECTED);

    /** A draft whose premises have the numbers of the steps of earlier phases. */
    private record Open(StepDraft draft, List<Premise> premises) {
        boolean rereads() {
            if (draft.concluded().isEmpty()) {
                return false;
            }
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

    /**
     * Takes in the drafts of a phase: sorted by content, numbered, each once, with overrides applied. Returns the conclusions
     * that stand and did not before, in the order of their steps.
     */
    List<Held> add(Collection<StepDraft> drafts) {
        List<Open> sorted = new ArrayList<>(drafts.size());
        for (StepDraft draft : drafts) {
            sorted.add(new Open(draft, premises(draft)));
        }
        sorted.sort(StepWriter::byContent);
        List<Open> once = new ArrayList<>(drafts.size());
        for (Open open : sorted) {
            if (once.isEmpty() || byContent(once.get(once.size() - 1), open) != 0) {
                once.add(open);
            }
        }
        return number(once);
    }

    private List<Held> number(List<Open> once) {
        List<StepDraft> lifting = once.stream()
                .map(Open::draft)
                .filter(d -> d.card().overrides().isPresent())
                .toList();
        List<Held> concluded = new ArrayList<>();
        int first = steps.size();
        for (Open open : once) {
            StepDraft draft = open.draft();
            Optional<String> lifted = lifted(draft, lifting);
            Step before = standing.get(draft.held());
            Finding finding = before == null ? draft.finding() : draft.finding().concluding(before.conclusion());
            Step step = new Step("s" + (steps.size() + 1), finding, open.premises(), lifted);
            if (lifted.isEmpty() && before == null) {
                standing.put(draft.held(), step);
                concluded.add(draft.held());
            }
            steps.add(step);
        }
        for (int i = 0; i < once.size(); i++) {
            // A rule may read what its own phase concluded, and only now do those conclusions have numbers.
            if (once.get(i).rereads()) {
                Step step = steps.get(first + i);
                List<Premise> premises = premises(once.get(i).draft());
                steps.set(first + i, new Step(step.id(), step.finding(), premises, step.overriddenBy()));
            }
        }
        return concluded;
    }

    /** The order of drafts as far as it is the same in every task. */
    static int byDraft(StepDraft some, StepDraft other) {
        int byRule = some.card() == other.card()
                ? 0
                : some.card().id().compareTo(other.card().id());
        return byRule != 0 ? byRule : some.sortedAs().compareTo(other.sortedAs());
    }

    private static int byContent(Open some, Open other) {
        int order = byDraft(some.draft, other.draft);
        order = order != 0 ? order : inOrder(some.premises, other.premises);
        return order != 0
                ? order
                : some.draft.finding().says().compareTo(other.draft.finding().says());
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

    private List<Premise> premises(StepDraft draft) {
        if (draft.concluded().isEmpty()) {
            return draft.given();
        }
        List<Premise> premises = new ArrayList<>(draft.given());
        for (StepDraft.Earlier earlier : draft.concluded()) {
            Step step = standing.get(earlier.conclusion());
            String number = step == null ? NO_NUMBER_YET : step.id();
            Premise premise = new Premise("step", number, earlier.words(), Optional.empty());
            // Only those without a number can say the same.
            if (step != null || premises.stream().noneMatch(p -> p.compareTo(premise) == 0)) {
                premises.add(premise);
            }
        }
        // Absences, inputs and rows come before steps in the order of premises too, and are in order.
        if (draft.concluded().size() > 1) {
            premises.subList(draft.given().size(), premises.size()).sort(Comparator.naturalOrder());
        }
        return List.copyOf(premises);
    }

    /** The rule that lifts a conclusion of the same phase, if one does. */
    private static Optional<String> lifted(StepDraft draft, List<StepDraft> lifting) {
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
