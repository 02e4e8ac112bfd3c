package org.fumewarden.advice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fumewarden.model.Confidence;
import org.fumewarden.trail.Step;

/**
 * A sentence with the rule and clause behind it.
 *
 * @param subject what the sentence is about
 */
public record Reason(
        String step,
        String rule,
        String subject,
        String says,
        String source,
        String clause,
        String edition,
        Confidence confidence) {

    /** One reason for each sentence of a rule: the first step that says it. */
    static List<Reason> once(List<Step> steps) {
        if (steps.size() == 1) {
            return List.of(of(steps.get(0)));
        }
        Set<List<String>> said = new HashSet<>();
        List<Reason> reasons = new ArrayList<>(steps.size());
        for (Step step : steps) {
            if (said.add(List.of(step.rule(), step.says()))) {
                reasons.add(of(step));
            }
        }
        return List.copyOf(reasons);
    }

    /** The reason that a step gives. */
    public static Reason of(Step step) {
        return new Reason(
                step.id(),
                step.rule(),
                step.conclusion().subject(),
                step.says(),
                step.citation().source(),
                step.citation().clause(),
                step.citation().edition(),
                step.confidence());
    }
}
