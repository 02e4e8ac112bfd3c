package org.fumewarden.training;

import java.util.List;

/**
 * A task and its questions, as a room hears them.
 *
 * @param story what happens, in a sentence or two
 * @param facts what is known, one line each
 * @param code name of the code that decides
 * @param topic key of the topic; empty when the task came from a file
 */
public record Round(String title, String story, List<String> facts, String code, String topic, List<RoundItem> items) {
    /** So many questions a round asks. */
    public static final int QUESTIONS = 5;

    public Round {
        facts = List.copyOf(facts);
        items = List.copyOf(items);
    }

    Round citing(ClauseCitations clauses) {
        return new Round(
                title,
                story,
                facts,
                code,
                topic,
                items.stream().map(i -> i.citing(m -> m.citing(clauses::of))).toList());
    }
}
