package org.fumewarden.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fumewarden.model.Duty;
import org.fumewarden.model.DutyCondition;
import org.fumewarden.model.Subject;

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

    private static Set<String> own(Subject subject) {
        ItemKind kind = subject == Subject.WEARER_MASK ? ItemKind.MASK : ItemKind.valueOf(subject.name());
        return kind.ownFacts();
    }
}
