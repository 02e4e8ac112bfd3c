package org.fumewarden.training;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.fumewarden.advice.Respirator;
import org.fumewarden.report.html.Words;
import org.fumewarden.training.Changes.Change;

/** What would have to change so that a closed class may be used: the counter-example of the rule that closes it. */
final class ChangeQuestion {
    private final Told told;
    private final Changes changes;
    private final Respirator closed;
    private final List<Change> offered;

    private ChangeQuestion(Told told, Changes changes, Respirator closed) {
        this.told = told;
        this.changes = changes;
        this.closed = closed;
        this.offered = new ArrayList<>(changes.all());
        offered.addAll(Changes.idle(told.words()));
    }

    /** The question about some class that one change opens; none where no single change does. */
    static Optional<RoundItem> about(Told told, Random random) {
        Changes changes = Changes.of(told);
        List<Respirator> closed = new ArrayList<>(told.said().respirators().stream()
                .filter(r -> !Told.suitable(r))
                .filter(r -> changes.making(r.deviceClass()).isPresent())
                .toList());
        Collections.shuffle(closed, random);
        return closed.stream().findFirst().map(r -> new ChangeQuestion(told, changes, r).item(random));
    }

    private RoundItem item(Random random) {
        Words words = told.words();
        String right = changes.making(closed.deviceClass()).orElseThrow().id();
        List<String> wrong = new ArrayList<>(offered.stream().map(Change::id).toList());
        Collections.shuffle(wrong, random);
        return new RoundItem(
                "change",
                told.say("ask.change", told.name(closed)),
                Distractors.of(
                        right, wrong, random, id -> change(id).orElseThrow().says(words), id -> mark(id).right()),
                RoundItem.Reads.CHOICE,
                closed.reasons().get(0).says(),
                this::mark);
    }

    private Optional<Change> change(String id) {
        return offered.stream().filter(c -> c.id().equals(id)).findFirst();
    }

    private Mark mark(String answer) {
        Optional<Change> named = change(answer).or(() -> offered.stream()
                .filter(c -> Plain.line(c.says(told.words())).equals(Plain.line(answer)))
                .findFirst());
        if (named.isEmpty()) {
            return Mark.unread(answer, told.say("unread.number"));
        }
        boolean right = !named.get().path().isEmpty() && changes.makes(named.get(), closed.deviceClass());
        String best = changes.making(closed.deviceClass()).orElseThrow().says(told.words());
        Mark mark = right
                ? Mark.right(answer)
                : Mark.wrong(answer, Mistake.of("changes-what-does-not-matter", told.words()), best);
        return mark.because(closed.reasons().get(0));
    }
}
