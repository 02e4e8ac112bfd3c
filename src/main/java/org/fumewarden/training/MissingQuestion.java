package org.fumewarden.training;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.codes.Question;

/** What must be found out before anybody decides. */
final class MissingQuestion {
    private final Told told;

    private MissingQuestion(Told told) {
        this.told = told;
    }

    /** The question; none where nothing is open. */
    static Optional<RoundItem> about(Told told, Random random) {
        return told.said().questions().isEmpty()
                ? Optional.empty()
                : Optional.of(new MissingQuestion(told).item(random));
    }

    private RoundItem item(Random random) {
        List<OpenQuestion> open = told.said().questions();
        List<String> known = new ArrayList<>(told.vocabulary().questions().stream()
                .filter(q ->
                        told.said().inputs().stream().anyMatch(i -> i.path().equals(q.path())))
                .map(Question::id)
                .toList());
        Collections.shuffle(known, random);
        return new RoundItem(
                "missing",
                told.say("ask.missing"),
                Distractors.of(
                        open.get(random.nextInt(open.size())).question(),
                        known,
                        random,
                        this::says,
                        id -> mark(id).right()),
                RoundItem.Reads.CHOICE,
                told.say("hint.missing"),
                this::mark);
    }

    private String says(String id) {
        String own = told.said().questions().stream()
                .filter(q -> q.question().equals(id))
                .map(OpenQuestion::ask)
                .findFirst()
                .or(() -> told.vocabulary().question(id).map(Question::ask))
                .orElse(id);
        return told.words().sayOr("ask." + id, own);
    }

    private Mark mark(String answer) {
        Optional<OpenQuestion> named = told.said().questions().stream()
                .filter(q -> q.question().equals(answer)
                        || Plain.line(says(q.question())).equals(Plain.line(answer)))
                .findFirst();
        if (named.isPresent()) {
            return Mark.right(answer).because(named.get().reasons().stream().findFirst());
        }
        if (told.vocabulary().question(answer).isEmpty()) {
            return Mark.unread(answer, told.say("unread.number"));
        }
        OpenQuestion first = told.said().questions().get(0);
        return Mark.wrong(answer, Mistake.of("asks-what-is-known", told.words()), says(first.question()))
                .because(first.reasons().stream().findFirst());
    }
}
