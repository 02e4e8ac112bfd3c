package org.fumewarden.training;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Status;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Need;
import org.fumewarden.model.Ratio;

/** Which protection factor is the least that is enough. */
final class FactorQuestion {
    /** A given factor is right within this share above the required one: people round up. Our own choice. */
    private static final BigDecimal ROUNDING = new BigDecimal("1.05");

    private static final Set<String> NOT_AT_ALL =
            Set.of("none", "do not start", "must not start", "keiner", "nicht beginnen");

    private final Told told;
    private final BigDecimal required;
    private final TreeSet<BigDecimal> steps = new TreeSet<>();

    private FactorQuestion(Told told) {
        this.told = told;
        this.required =
                closed(told) ? BigDecimal.ZERO : told.said().requiredFactor().value();
        told.all(AssignedFactor.class).stream()
                .filter(f -> told.respirator(f.deviceClass()).isPresent())
                .map(f -> f.factor().stripTrailingZeros())
                .forEach(steps::add);
    }

    /** The question; none while the factor is open, or nothing asks for one. */
    static Optional<Item> about(Told told, Random random) {
        Advice advice = told.said();
        FactorQuestion question = new FactorQuestion(told);
        boolean sure = closed(told)
                || advice.status() == Status.COMPLETE && advice.requiredFactor().asksForOne();
        return sure && (closed(told) || question.steps.ceiling(question.required) != null)
                ? Optional.of(question.item(random))
                : Optional.empty();
    }

    /** True when the work must not start whatever is worn. */
    private static boolean closed(Told told) {
        return told.said().status() == Status.DO_NOT_ENTER && told.suitable().isEmpty();
    }

    private Item item(Random random) {
        BigDecimal right = right();
        List<BigDecimal> wrong = new ArrayList<>(steps);
        wrong.sort(Comparator.comparing(s -> Math.abs(Math.log((s.doubleValue() + 1) / (right.doubleValue() + 1)))));
        List<String> others = new ArrayList<>(
                misreadings().stream().map(m -> step(m.value()).toPlainString()).toList());
        wrong.forEach(w -> others.add(w.toPlainString()));
        others.add("0");
        return new Item(
                "factor",
                told.say("ask.factor"),
                Choices.of(right.toPlainString(), others, random, this::says, id -> mark(id).right()),
                true,
                told.say("hint.factor"),
                this::mark);
    }

    private String says(String factor) {
        return factor.equals("0") ? told.say("factor.none") : factor;
    }

    private BigDecimal right() {
        return required.signum() == 0 ? BigDecimal.ZERO : steps.ceiling(required);
    }

    private BigDecimal step(BigDecimal value) {
        BigDecimal step = steps.ceiling(value);
        return step == null ? value : step;
    }

    private Mark mark(String answer) {
        Optional<BigDecimal> read =
                NOT_AT_ALL.contains(Plain.line(answer)) ? Optional.of(BigDecimal.ZERO) : FactorWords.read(answer);
        if (read.isEmpty()) {
            return Mark.unread(answer, told.say("unread.factor"));
        }
        BigDecimal given = read.get();
        String shown = says(right().toPlainString());
        Optional<Reason> because = required.signum() == 0
                ? told.stop()
                : told.said().requiredFactor().reasons().stream().findFirst();
        if (given.compareTo(required) < 0) {
            return Mark.wrong(answer, Mistake.of(behind(given), told.words()), shown)
                    .because(because);
        }
        if (required.signum() == 0 && given.signum() > 0) {
            return Mark.wrong(answer, Mistake.of("starts-what-must-not-start", told.words()), shown)
                    .because(because);
        }
        boolean near = given.compareTo(required.multiply(ROUNDING).max(required.add(BigDecimal.ONE))) <= 0;
        return near || given.compareTo(right()) == 0
                ? Mark.right(answer).because(because)
                : Mark.wrong(answer, Mistake.of("more-than-needed", told.words()), shown)
                        .because(because);
    }

    /** A way to get the number wrong: what remains when one thing is left out. */
    private record Misreading(String mistake, BigDecimal value) {}

    private String behind(BigDecimal given) {
        if (given.signum() == 0) {
            return "number-too-low";
        }
        return misreadings().stream()
                .filter(m -> step(m.value()).compareTo(given) == 0
                        || given.compareTo(m.value()) >= 0
                                && given.compareTo(m.value().add(BigDecimal.ONE)) <= 0)
                .map(Misreading::mistake)
                .findFirst()
                .orElse("number-too-low");
    }

    /** The factors that people get who leave the floor, the sum or the peak out; only those that are too low. */
    private List<Misreading> misreadings() {
        List<Misreading> all = new ArrayList<>();
        String basis = told.said().requiredFactor().basis();
        if (basis.equals("floor")) {
            without(all, "forgets-the-floor", n -> !n.basis().equals("floor"));
        } else if (basis.equals("mixture")) {
            without(all, "one-substance-for-the-sum", n -> n.basis().equals("ratio"));
        }
        told.said().trail().all(Ratio.class).stream()
                .filter(r -> r.averaging() == Averaging.TWA)
                .map(r -> Need.of(r).value())
                .max(Comparator.naturalOrder())
                .filter(v -> peakDecides())
                .filter(v -> step(v).compareTo(required) < 0)
                .ifPresent(v -> all.add(new Misreading("average-for-peak", v)));
        return all;
    }

    /** What remains without the needs that are forgotten; every reading of it when those alone decide. */
    private void without(List<Misreading> all, String mistake, Predicate<Need> left) {
        told.said().trail().all(Need.class).stream()
                .filter(left)
                .map(Need::value)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .filter(v -> step(v).compareTo(required) < 0)
                .forEach(v -> all.add(new Misreading(mistake, v)));
    }

    private boolean peakDecides() {
        return told.said().trail().all(Ratio.class).stream()
                .anyMatch(r ->
                        r.averaging() != Averaging.TWA && Need.of(r).value().compareTo(required) == 0);
    }
}
