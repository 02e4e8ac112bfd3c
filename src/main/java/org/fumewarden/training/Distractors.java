package org.fumewarden.training;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/** Puts one right answer among plausible wrong ones, in an order that a seed decides. */
final class Distractors {
    /** So many answers fit the number keys and one look. */
    static final int COUNT = 4;

    private Distractors() {}

    /**
     * The choices of a question.
     *
     * @param wrong candidates, best first; those that read like the right one or are right as well are left out
     * @param says id to words
     * @param isRight marks an id as the question would
     */
    static List<RoundItem.Choice> of(
            String right, List<String> wrong, Random random, Function<String, String> says, Predicate<String> isRight) {
        if (!isRight.test(right)) {
            throw new IllegalStateException("the right answer is marked wrong: " + right);
        }
        List<RoundItem.Choice> choices = new ArrayList<>();
        Set<String> shown = new LinkedHashSet<>();
        choices.add(new RoundItem.Choice(right, says.apply(right)));
        shown.add(Plain.line(says.apply(right)));
        for (String candidate : wrong) {
            String words = says.apply(candidate);
            if (choices.size() < COUNT && !isRight.test(candidate) && shown.add(Plain.line(words))) {
                choices.add(new RoundItem.Choice(candidate, words));
            }
        }
        Collections.shuffle(choices, random);
        return choices;
    }
}
