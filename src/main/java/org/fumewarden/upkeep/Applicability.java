package org.fumewarden.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fumewarden.model.DutyCondition;

/**
 * Whether a duty applies to a subject.
 *
 * @param assumed facts of the thing itself that nobody recorded and that are taken to hold
 * @param open circumstances around the thing that nobody recorded
 */
record Applicability(boolean applies, List<String> assumed, List<String> open) {

    static Applicability of(Duty duty, Subject subject, Map<String, List<String>> facts) {
        List<String> assumed = new ArrayList<>();
        List<String> open = new ArrayList<>();
        for (DutyCondition condition : duty.when()) {
            switch (condition.holds(facts)) {
                case NO:
                    return new Applicability(false, List.of(), List.of());
                case UNKNOWN:
                    (own(subject).contains(condition.circumstance()) ? assumed : open).add(condition.circumstance());
                    break;
                default:
                    break;
            }
        }
        return new Applicability(true, List.copyOf(assumed), List.copyOf(open));
    }

    private static java.util.Set<String> own(Subject subject) {
        return subject == Subject.WEARER_MASK
                ? ItemKind.MASK.ownFacts()
                : Keyed.find(ItemKind.class, subject.key())
                        .map(ItemKind::ownFacts)
                        .orElse(java.util.Set.of());
    }
}
