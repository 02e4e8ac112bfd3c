package org.fumewarden.training;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.fumewarden.advice.Reason;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Term;

/** What is right at the work place: one right way among wrong ones of other points. */
final class Practice {
    private static final String TABLE = "practices";

    private Practice() {}

    /** A question of a topic, about none of the points that were asked before; its point joins them. */
    static Item about(Told told, String topic, Set<String> asked, Random random) {
        List<WordTable.Row> mine = new ArrayList<>(WordTable.rows(TABLE).stream()
                .filter(r -> r.words("topics").contains(topic) && !asked.contains(r.text("id")))
                .toList());
        if (mine.isEmpty()) {
            mine.addAll(WordTable.rows(TABLE).stream()
                    .filter(r -> !asked.contains(r.text("id")))
                    .toList());
        }
        WordTable.Row row = mine.get(random.nextInt(mine.size()));
        asked.add(row.text("id"));
        List<WordTable.Row> others = new ArrayList<>(WordTable.rows(TABLE));
        others.remove(row);
        Collections.shuffle(others, random);
        others.sort((a, b) -> Boolean.compare(
                b.words("topics").contains(topic), a.words("topics").contains(topic)));
        List<String> wrong = others.stream().map(r -> "wrong:" + r.text("id")).toList();
        return new Item(
                "practice",
                told.say("ask.practice"),
                Choices.of("right:" + row.text("id"), wrong, random, id -> says(told, id), id -> mark(told, id)
                        .right()),
                false,
                told.say("hint.practice"),
                answer -> mark(told, answer));
    }

    private static String says(Told told, String id) {
        String[] parts = id.split(":");
        return row(parts[1]).orElseThrow().row(parts[0]).says(told.words().language());
    }

    private static Optional<WordTable.Row> row(String id) {
        return WordTable.rows(TABLE).stream()
                .filter(r -> r.text("id").equals(id))
                .findFirst();
    }

    private static Mark mark(Told told, String answer) {
        for (WordTable.Row row : WordTable.rows(TABLE)) {
            String right = row.row("right").says(told.words().language());
            if (answer.equals("right:" + row.text("id")) || Plain.line(answer).equals(Plain.line(right))) {
                return Mark.right(answer).because(clause(told, row));
            }
            if (answer.equals("wrong:" + row.text("id"))) {
                return Mark.wrong(answer, Mistake.of(row.text("mistake"), told.words()), right)
                        .because(clause(told, row));
            }
        }
        return Mark.unread(answer, told.say("unread.number"));
    }

    /** The row of the card behind a practice, as a reason. */
    static Optional<Reason> clause(Told told, WordTable.Row row) {
        String[] card = row.text("card").split("/");
        return told.all(Term.class).stream()
                .filter(t -> t.catalogue().equals(card[0]) && t.id().equals(card[1]))
                .findFirst()
                .map(Practice::reason);
    }

    static Reason reason(Term term) {
        Citation cited = term.ref().citation();
        return new Reason(
                "", "", term.id(), term.name(), cited.source(), cited.clause(), cited.edition(), cited.confidence());
    }
}
