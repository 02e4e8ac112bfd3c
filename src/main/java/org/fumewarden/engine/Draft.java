package org.fumewarden.engine;

import java.util.List;
import java.util.Map;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Conclusion;
import org.fumewarden.trail.Premise;

/**
 * A firing in words that has no number yet, for the numbers of earlier steps differ between tasks.
 *
 * @param sortedAs the conclusion as text, by which the steps of a rule are put in order
 * @param given inputs and table rows it rests on
 * @param concluded earlier conclusions it rests on, with their words
 */
record Draft(
        RuleCard card,
        String says,
        Citation citation,
        Conclusion conclusion,
        String sortedAs,
        List<Premise> given,
        Map<Conclusion, String> concluded) {}
