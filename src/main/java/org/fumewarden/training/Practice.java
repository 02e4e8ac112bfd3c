package org.fumewarden.training;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.fumewarden.advice.Reason;
import org.fumewarden.model.Citation;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Term;
import org.fumewarden.report.html.Words;

/** What is right at the work place: one right way among wrong ones of other points. */
final class Practice {
    private static final String TABLE = "practices";

    private Practice() {}

    /** A question of a topic, about none of the points that were asked before; its point joins them. */
    static RoundItem about(Told told, String topic, Set<String> asked, Random random) {
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
        return new RoundItem(
                "practice",
                told.say("ask.practice"),
                Distractors.of("right:" + row.text("id"), wrong, random, id -> says(told, id), id -> mark(told, row, id)
                        .right()),
                RoundItem.Reads.CHOICE,
                told.say("hint.practice"),
                answer -> mark(told, row, answer));
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

    /** Only the right way that the question shows is right; a wrong one is answered with what is right at its own point as well. */
    private static Mark mark(Told told, WordTable.Row asked, String answer) {
        String language = told.words().language();
        String best = asked.row("right").says(language);
        if (answer.equals("right:" + asked.text("id")) || Plain.line(answer).equals(Plain.line(best))) {
            return Mark.right(answer).because(clause(told, asked));
        }
        for (WordTable.Row row : WordTable.rows(TABLE)) {
            if (answer.equals("wrong:" + row.text("id"))
                    || Plain.line(answer).equals(Plain.line(row.row("wrong").says(language)))) {
                Mark mark = Mark.wrong(answer, Mistake.of(row.text("mistake"), told.words()), best)
                        .because(clause(told, row));
                return row.equals(asked)
                        ? mark
                        : mark.saying(told.say("proper", row.row("right").says(language)));
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
                .map(t -> reason(t, told.words(), row.row("right")))
                .map(r -> told.clauses().foreign(r) ? own(told, row).orElse(r) : r);
    }

    /** The duty of this code about the same point. */
    private static Optional<Reason> own(Told told, WordTable.Row row) {
        return told.all(Duty.class).stream()
                .filter(d -> row.optional("deed").equals(Optional.of(d.doneBy())))
                .filter(d -> !DutyWords.PAPERS.contains(d.id()))
                .findFirst()
                .map(d -> reason(
                        d.ref().citation(),
                        d.id(),
                        told.words().ofRuleBase()
                                ? d.what()
                                : row.row("right").says(told.words().language())));
    }

    /** A row of a card as a reason; in another language by our own words for it. */
    static Reason reason(Term term, Words words, WordTable.Row own) {
        return reason(term, words.ofRuleBase() ? term.name() : own.says(words.language()));
    }

    private static Reason reason(Term term, String says) {
        return reason(term.ref().citation(), term.id(), says);
    }

    private static Reason reason(Citation cited, String id, String says) {
        return new Reason("", "", id, says, cited.source(), cited.clause(), cited.edition(), cited.confidence());
    }
}
