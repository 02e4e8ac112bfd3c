package org.fumewarden.engine;

import java.util.List;
import org.fumewarden.model.Conclusion;
import org.fumewarden.trail.Finding;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Sentence;

/**
 * A firing in words that has no number yet, for the numbers of earlier steps differ between tasks.
 *
 * @param held the conclusion
 * @param sortedAs the conclusion as text, by which the steps of a rule are put in order
 * @param given absences, inputs and table rows it rests on, in order
 * @param concluded earlier conclusions it rests on
 */
record StepDraft(
        RuleCard card, Finding finding, Held held, String sortedAs, List<Premise> given, List<Earlier> concluded) {

    /** An earlier conclusion with its words. */
    record Earlier(Held conclusion, Sentence words) {}

    Conclusion conclusion() {
        return finding.conclusion();
    }
}
