package org.fumewarden.training;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;

/** Which respirator may be used. */
final class ClassQuestion {
    private static final String NONE = "none";
    private final Told told;
    private final ClassWords words;
    /** Tried out when the first wrong answer asks for it. */
    private Changes changes;

    private ClassQuestion(Told told) {
        this.told = told;
        this.words = new ClassWords(
                told.devices(), d -> told.name(told.respirator(d.id()).orElseThrow()));
    }

    /** The question; none while the advice is open, and none where the air asks for no respirator. */
    static Optional<RoundItem> about(Told told, Random random) {
        boolean sure = !told.suitable().isEmpty() || told.said().status() == Status.DO_NOT_ENTER;
        return sure && told.said().byChoice().isEmpty()
                ? Optional.of(new ClassQuestion(told).item(random))
                : Optional.empty();
    }

    private RoundItem item(Random random) {
        String right = told.best().map(Respirator::deviceClass).orElse(NONE);
        return new RoundItem(
                "class",
                told.say(emergency() ? "ask.class.entry" : "ask.class"),
                Distractors.of(right, wrong(random), random, this::says, id -> mark(id).right()),
                RoundItem.Reads.WORDS,
                told.say("hint.class"),
                this::mark);
    }

    private String says(String id) {
        return id.equals(NONE)
                ? told.say("class.none")
                : told.name(told.respirator(id).orElseThrow());
    }

    /** Closed classes, each for another mistake as far as there are such, then "none". */
    private List<String> wrong(Random random) {
        List<Respirator> closed = new ArrayList<>(told.said().respirators().stream()
                .filter(r -> !Told.suitable(r))
                .toList());
        Collections.shuffle(closed, random);
        Set<String> mistakes = new HashSet<>();
        List<String> first = new ArrayList<>();
        List<String> then = new ArrayList<>();
        closed.forEach(r -> (mistakes.add(mistake(r).id()) ? first : then).add(r.deviceClass()));
        List<String> wrong = new ArrayList<>(first.subList(0, Math.min(first.size(), Distractors.COUNT - 1)));
        wrong.addAll(then);
        wrong.add(Math.min(wrong.size(), Distractors.COUNT - 2), NONE);
        return wrong;
    }

    /** True when nobody should go in, and the advice still names what is worn where entry cannot be avoided. */
    private boolean emergency() {
        return told.said().status() == Status.DO_NOT_ENTER && !told.suitable().isEmpty();
    }

    private Mistake mistake(Respirator closed) {
        return Mistake.behind(closed.reasons(), told.device(closed.deviceClass()), told.words())
                .orElseGet(() -> Mistake.of("factor-too-low", told.words()));
    }

    private Mark mark(String answer) {
        String best = told.best().map(told::name).orElse(told.say("class.none"));
        if (ClassWords.NONE.contains(Plain.line(answer)) || ClassWords.OUT.contains(Plain.line(answer))) {
            return told.said().status() == Status.DO_NOT_ENTER
                    ? Mark.right(answer)
                            .saying(emergency() ? told.say("entry", best) : "")
                            .because(told.stop())
                    : Mark.wrong(answer, Mistake.of("gives-up-too-early", told.words()), best)
                            .because(told.best()
                                    .flatMap(r -> r.reasons().stream().findFirst()));
        }
        ClassWords.Read read = words.read(answer);
        if (read.foreign()) {
            return told.said().respirators().stream()
                    .filter(r -> told.device(r.deviceClass()).filters())
                    .filter(r -> r.reasons().stream()
                            .anyMatch(told.noFilter().stream().toList()::contains))
                    .findFirst()
                    .map(r -> wrong(answer, List.of(r), best))
                    .orElseGet(() -> Mark.wrong(answer, Mistake.of("class-of-other-rules", told.words()), best));
        }
        List<Respirator> named = read.classes().stream()
                .flatMap(d -> told.respirator(d.id()).stream())
                .toList();
        if (named.isEmpty()) {
            return Mark.unread(answer, told.say("unread.class"));
        }
        List<Respirator> open = named.stream().filter(Told::suitable).toList();
        if (!open.isEmpty() && open.size() < named.size()) {
            return Mark.unread(
                    answer,
                    told.say(
                            "unread.class.which", named.stream().map(told::name).collect(Collectors.joining("; "))));
        }
        Optional<Mark> filter = FilterQuestion.besides(told, named.get(0), read.mark());
        if (!open.isEmpty()) {
            return filter.filter(f -> !f.right()).map(f -> f.of(answer)).orElseGet(() -> Mark.right(answer)
                    .saying(besides(open.get(0), filter))
                    .because(open.get(0).reasons().stream().findFirst()));
        }
        Mark wrong = wrong(answer, named, best);
        return filter.flatMap(Mark::mistake)
                .filter(f -> Mistake.first(List.of(f.id(), mistake(named.get(0)).id()), told.words())
                        .equals(Optional.of(f)))
                .map(f -> filter.get().of(answer).instead(best))
                .orElse(wrong);
    }

    /** What the trainer adds to a right class: what stops the work all the same, the filter to fit, or that lighter kit is enough. */
    private String besides(Respirator named, Optional<Mark> filter) {
        List<String> says = new ArrayList<>();
        if (emergency()) {
            told.stop().map(Reason::says).ifPresent(says::add);
        }
        boolean heavier = told.best()
                .map(b -> told.device(b.deviceClass()).filters()
                        && !told.device(named.deviceClass()).filters())
                .orElse(false);
        if (heavier || filter.filter(f -> !f.says().isEmpty()).isPresent()) {
            says.add(told.say("more"));
        }
        if (filter.isEmpty()
                && told.device(named.deviceClass()).gas().equals("fits")
                && !named.filter().isEmpty()) {
            says.add(told.say("filter", named.filter()));
        }
        return String.join(" ", says);
    }

    private Mark wrong(String answer, List<Respirator> all, String best) {
        Respirator named = all.get(0);
        Mistake mistake = mistake(named);
        Optional<Reason> reason = Mistake.decisive(named.reasons(), mistake, told.device(named.deviceClass()))
                .or(() -> named.reasons().stream().findFirst());
        changes = changes == null ? Changes.of(told) : changes;
        String change = changes.all().stream()
                .filter(c -> all.stream().allMatch(r -> changes.makes(c, r.deviceClass())))
                .findFirst()
                .map(c -> told.say("instead.change", c.says(told.words())))
                .orElse("");
        return Mark.wrong(answer, mistake, change.isEmpty() ? best : best + ". " + change)
                .because(reason);
    }
}
