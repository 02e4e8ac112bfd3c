package org.fumewarden.training;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.fumewarden.advice.Reason;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.model.Term;
import org.fumewarden.report.html.Words;

/**
 * The checks before use, practised in the order of the card with faults thrown in. Order and act are marked against the card.
 */
public final class HandsOn {
    private static final String CARD = "before-use-powered";
    private static final String WORK = "work";
    private static final int FAULTS = 3;

    private final List<Term> terms;
    private final Words words;
    private final Random random;

    private HandsOn(List<Term> terms, Words words, Random random) {
        this.terms = terms;
        this.words = words;
        this.random = random;
    }

    /**
     * A practice.
     *
     * @param book whose card decides
     * @param seed picks the faults
     */
    public static Round round(CodeBook book, Words words, long seed) {
        List<Term> terms = book.tables().stream()
                .flatMap(t -> t.rows().stream())
                .map(r -> r.row())
                .filter(Term.class::isInstance)
                .map(Term.class::cast)
                .toList();
        return new HandsOn(terms, words, new Random(seed)).round(book.card().name());
    }

    private Round round(String code) {
        List<Term> card = terms.stream().filter(t -> t.catalogue().equals(CARD)).toList();
        List<WordTable.Row> faults = new ArrayList<>(
                rows("fault").stream().filter(r -> !r.text("at").equals(WORK)).toList());
        Collections.shuffle(faults, random);
        List<WordTable.Row> thrown = faults.subList(0, FAULTS);
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < card.size(); i++) {
            if (i < card.size() - 1) {
                items.add(next(card, i));
            }
            String check = card.get(i).id();
            Optional<Reason> reason = Optional.of(reason(card.get(i)));
            thrown.stream().filter(f -> f.text("at").equals(check)).forEach(f -> items.add(fault(f, reason)));
        }
        List<WordTable.Row> alarms =
                rows("fault").stream().filter(r -> r.text("at").equals(WORK)).toList();
        WordTable.Row alarm = alarms.get(random.nextInt(alarms.size()));
        String id = alarm.text("card").split("/")[1];
        items.add(fault(
                alarm,
                terms.stream()
                        .filter(t -> t.id().equals(id))
                        .findFirst()
                        .map(t -> Practice.reason(t, words, actRow(alarm.text("act"))))));
        return new Round(say("topic.before-use"), say("before-use.story"), List.of(), code, "before-use", items);
    }

    /** The check that comes next, among those that come later. */
    private Item next(List<Term> card, int at) {
        Term right = card.get(at);
        List<String> later = new ArrayList<>(
                card.subList(at + 1, card.size()).stream().map(Term::id).toList());
        Collections.shuffle(later, random);
        return new Item(
                "order",
                at == 0
                        ? say("ask.order")
                        : say("ask.order.after", check(card.get(at - 1).id())),
                Choices.of(right.id(), later, random, this::check, id -> id.equals(right.id())),
                false,
                say("hint.order"),
                answer -> order(card, right, answer));
    }

    private Mark order(List<Term> card, Term right, String answer) {
        Optional<Term> named = card.stream()
                .filter(t -> t.id().equals(answer) || Plain.line(check(t.id())).equals(Plain.line(answer)))
                .findFirst();
        if (named.isEmpty()) {
            return Mark.unread(answer, say("unread.number"));
        }
        return (named.get().equals(right)
                        ? Mark.right(answer)
                        : Mark.wrong(answer, Mistake.of("out-of-order", words), check(right.id())))
                .because(reason(right));
    }

    private Item fault(WordTable.Row fault, Optional<Reason> reason) {
        String right = fault.text("act");
        List<String> acts = new ArrayList<>(rows("act").stream()
                .filter(r -> r.optional("fault").isEmpty())
                .map(r -> r.text("act"))
                .filter(a -> !a.equals("go-on"))
                .toList());
        Collections.shuffle(acts, random);
        acts.add(0, "go-on");
        return new Item(
                "fault",
                fault.says(words.language()) + " " + say("ask.fault"),
                Choices.of(right, acts, random, this::act, id -> id.equals(right)),
                false,
                say("hint.fault"),
                answer -> act(fault, right, acts, answer).because(reason));
    }

    private Mark act(WordTable.Row fault, String right, List<String> acts, String answer) {
        Optional<String> named = acts.stream()
                .filter(a -> a.equals(answer) || Plain.line(act(a)).equals(Plain.line(answer)))
                .findFirst();
        if (named.isEmpty()) {
            return Mark.unread(answer, say("unread.number"));
        }
        return named.get().equals(right)
                ? Mark.right(answer)
                : Mark.wrong(
                        answer,
                        Mistake.of(
                                named.get().equals("go-on") ? fault.text("mistake") : "act-for-another-fault", words),
                        act(right));
    }

    private Reason reason(Term check) {
        return Practice.reason(check, words, row("check", check.id()));
    }

    private String check(String id) {
        return row("check", id).says(words.language());
    }

    private String act(String id) {
        return actRow(id).says(words.language());
    }

    private static WordTable.Row actRow(String id) {
        return rows("act").stream()
                .filter(r -> r.optional("fault").isEmpty() && r.text("act").equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static WordTable.Row row(String key, String id) {
        return rows(key).stream()
                .filter(r -> r.text(key).equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<WordTable.Row> rows(String key) {
        return WordTable.rows("card").stream()
                .filter(r -> r.optional(key).isPresent())
                .toList();
    }

    private String say(String key, Object... parts) {
        return words.say("ui.training." + key, parts);
    }
}
