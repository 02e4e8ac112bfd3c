package org.fumewarden.advice;

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
