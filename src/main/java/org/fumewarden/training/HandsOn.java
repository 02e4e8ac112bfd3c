package org.fumewarden.training;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.fumewarden.advice.Reason;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.model.Term;
import org.fumewarden.report.html.Words;

/**
 * The checks before use, practised in the order of the card with faults thrown in. Order and act are marked against the card.
 */
public final class HandsOn {
    /** What the topic of such a round begins with; the kind of device follows. */
    public static final String TOPIC = "before-use-";

    private static final String WORK = "work";
    private static final int FAULTS = 3;

    private final WordTable.Row kind;
    private final List<Term> terms;
    private final Words words;
    private final Random random;

    private HandsOn(WordTable.Row kind, List<Term> terms, Words words, Random random) {
        this.kind = kind;
        this.terms = terms;
        this.words = words;
        this.random = random;
    }

    /**
     * A practice.
     *
     * @param book whose card decides
     * @param day whose words count
     * @param kind of device, one of {@link #kinds()}
     * @param seed picks the faults
     */
    public static Round round(CodeBook book, LocalDate day, String kind, Words words, long seed) {
        List<Term> terms = book.rows(day).stream()
                .filter(Term.class::isInstance)
                .map(Term.class::cast)
                .toList();
        WordTable.Row device = rows("kind").stream()
                .filter(r -> r.text("kind").equals(kind))
                .findFirst()
                .orElseThrow(() -> new InputException(new Problem(
                        "training room",
                        0,
                        "before-use",
                        "cannot be \"" + kind + "\".",
                        Nearest.remedy(kind, kinds()))));
        Round round = new HandsOn(device, terms, words, new Random(seed))
                .round(book.card().name());
        return round.citing(new ClauseCitations(book.card().id(), words));
    }

    /** The kinds of device that have a sequence of checks, the powered hood first. */
    public static List<String> kinds() {
        return rows("kind").stream().map(r -> r.text("kind")).toList();
    }

    private Round round(String code) {
        List<Term> card = kind.words("checks").stream().map(this::term).toList();
        List<WordTable.Row> faults = new ArrayList<>(faults().stream()
                .filter(r -> kind.words("checks").contains(r.text("at")))
                .toList());
        Collections.shuffle(faults, random);
        List<WordTable.Row> thrown = faults.subList(0, FAULTS);
        List<RoundItem> items = new ArrayList<>();
        for (int i = 0; i < card.size(); i++) {
            if (i < card.size() - 1) {
                items.add(next(card, i));
            }
            String check = card.get(i).id();
            Optional<Reason> reason = Optional.of(reason(card.get(i)));
            thrown.stream().filter(f -> f.text("at").equals(check)).forEach(f -> items.add(fault(f, reason)));
        }
        List<WordTable.Row> alarms =
                faults().stream().filter(r -> r.text("at").equals(WORK)).toList();
        WordTable.Row alarm = alarms.get(random.nextInt(alarms.size()));
        String id = alarm.text("card").split("/")[1];
        items.add(fault(alarm, Optional.of(Practice.reason(term(id), words, actRow(alarm.text("act"))))));
        String topic = TOPIC + kind.text("kind");
        String story = say("before-use.story", kind.says(words.language()));
        return new Round(say("topic." + topic), story, List.of(), code, topic, items);
    }

    /** The faults of this kind of device. */
    private List<WordTable.Row> faults() {
        return rows("fault").stream()
                .filter(r -> r.words("kinds").isEmpty() || r.words("kinds").contains(kind.text("kind")))
                .toList();
    }

    private Term term(String id) {
        return terms.stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    }

    /** The check that comes next, among those that come later. */
    private RoundItem next(List<Term> card, int at) {
        Term right = card.get(at);
        List<String> later = new ArrayList<>(
                card.subList(at + 1, card.size()).stream().map(Term::id).toList());
        Collections.shuffle(later, random);
        return new RoundItem(
                "order",
                at == 0
                        ? say("ask.order")
                        : say("ask.order.after", check(card.get(at - 1).id())),
                Distractors.of(right.id(), later, random, this::check, id -> id.equals(right.id())),
                RoundItem.Reads.CHOICE,
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

    private RoundItem fault(WordTable.Row fault, Optional<Reason> reason) {
        String right = fault.text("act");
        List<String> acts = new ArrayList<>(rows("act").stream()
                .filter(r -> r.optional("fault").isEmpty())
                .map(r -> r.text("act"))
                .filter(a -> !a.equals("go-on"))
                .toList());
        Collections.shuffle(acts, random);
        acts.add(0, "go-on");
        return new RoundItem(
                "fault",
                fault.says(words.language()) + " " + say("ask.fault"),
                Distractors.of(right, acts, random, this::act, id -> id.equals(right)),
                RoundItem.Reads.CHOICE,
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
        return Practice.reason(check, words, check(check));
    }

    private String check(String id) {
        return check(term(id)).says(words.language());
    }

    /** The short words of a check, those for this kind of device first. */
    private WordTable.Row check(Term term) {
        List<WordTable.Row> all = rows("check").stream()
                .filter(r -> r.text("check").equals(term.id()))
                .toList();
        return all.stream()
                .filter(r -> r.words("for").contains(kind.text("kind")))
                .findFirst()
                .or(() -> all.stream().filter(r -> r.words("for").isEmpty()).findFirst())
                .orElseThrow();
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

    private static List<WordTable.Row> rows(String key) {
        return WordTable.rows("card").stream()
                .filter(r -> r.optional(key).isPresent())
                .toList();
    }

    private String say(String key, Object... parts) {
        return words.say("ui.training." + key, parts);
    }
}
