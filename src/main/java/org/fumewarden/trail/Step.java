package org.fumewarden.trail;

import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Confidence;

/**
 * One application of one rule.
 *
 * @param id number of the step, for example {@code s12}
 * @param says the conclusion as a sentence
 * @param overriddenBy id of the rule that lifted the conclusion
 */
public record Step(
        String id,
        String phase,
        String rule,
        String title,
        String says,
        Citation citation,
        List<Premise> premises,
        Conclusion conclusion,
        Optional<String> overriddenBy) {
    public Step {
        premises = List.copyOf(premises);
    }

    /** The weakest confidence among the rule and the table rows it read. */
    public Confidence confidence() {
        Confidence weakest = citation.confidence();
        for (Premise premise : premises) {
            if (premise.citation().isPresent()) {
                weakest = weakest.weaker(premise.citation().get().confidence());
            }
        }
        return weakest;
    }

    /** True when the conclusion still stands. */
    public boolean stands() {
        return overriddenBy.isEmpty();
    }
}
