package org.fumewarden.trail;

import org.fumewarden.model.Citation;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Confidence;

/**
 * What a rule concluded, in words: all of a step that is the same in every task in which the rule meets the same facts.
 *
 * @param phase key of the phase
 * @param rule id of the rule
 * @param sentence the conclusion as a sentence
 * @param confidence the weakest among the rule and the table rows it read
 */
public record Finding(
        String phase,
        String rule,
        String title,
        Sentence sentence,
        Citation citation,
        Conclusion conclusion,
        Confidence confidence) {

    /** The conclusion in words. */
    public String says() {
        return sentence.text();
    }

    /** The same with an equal conclusion in place of its own, so that equal ones are one object. */
    public Finding concluding(Conclusion equal) {
        return equal == conclusion ? this : new Finding(phase, rule, title, sentence, citation, equal, confidence);
    }
}
