package org.fumewarden.training;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Status;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Need;
import org.fumewarden.model.Ratio;
import org.fumewarden.trail.Step;

/** Which protection factor is the least that is enough. */
final class FactorQuestion {
    private static final String TOO_LOW = "number-too-low";
    private static final String OF_THE_SUM = "one-substance-for-the-sum";

    /** A given factor meets a need within this share below it: people round. Our own choice. */
    private static final BigDecimal ROUNDING = new BigDecimal("1.05");

    private static final String STAY_OUT = "stay out";

    private final Told told;
    private final BigDecimal required;
    private final TreeSet<BigDecimal> steps = new TreeSet<>();

    private FactorQuestion(Told told) {
        this.told = told;
        this.required =
                closed(told) ? BigDecimal.ZERO : told.said().requiredFactor().value();
        told.all(AssignedFactor.class).stream()
                .filter(f -> closed(told) || mayServe(told, f.deviceClass()))
                .map(f -> f.factor().stripTrailingZeros())
                .forEach(steps::add);
    }

    /** The question; none while the factor is open, or nothing asks for one. */
    static Optional<RoundItem> about(Told told, Random random) {
        Advice advice = told.said();
        FactorQuestion question = new FactorQuestion(told);
        boolean sure = closed(told)
                || advice.status() == Status.COMPLETE
                        && advice.requiredFactor().asksForOne()
                        && !question.isWhatEveryClassHas();
        return sure && (closed(told) || question.steps.ceiling(question.required) != null)
                ? Optional.of(question.item(random))
                : Optional.empty();
    }

    /** True for a least factor that any class has: it asks nothing of a room. */
    private boolean isWhatEveryClassHas() {
        return told.said().requiredFactor().basis().equals("floor")
                && told.all(AssignedFactor.class).stream()
                        .allMatch(f -> f.factor().compareTo(required) >= 0);
    }

    /** True unless what is in the air closes the class: a factor that only such classes have is no answer. */
    private static boolean mayServe(Told told, String deviceClass) {
        return told.respirator(deviceClass)
                .filter(r -> r.reasons().stream().noneMatch(one -> Mistake.ofTheAir(one, told.device(deviceClass))))
                .isPresent();
    }

    /** True when the work must not start whatever is worn. */
    private static boolean closed(Told told) {
        return told.said().status() == Status.DO_NOT_ENTER && told.suitable().isEmpty();
    }

    private RoundItem item(Random random) {
        BigDecimal right = right();
        Set<BigDecimal> known = new TreeSet<>(steps);
        told.all(AssignedFactor.class).forEach(f -> known.add(f.factor().stripTrailingZeros()));
        List<BigDecimal> wrong = new ArrayList<>(known);
        wrong.sort(Comparator.comparing(s -> Math.abs(Math.log((s.doubleValue() + 1) / (right.doubleValue() + 1)))));
        List<String> others = new ArrayList<>(misreadings().values().stream()
                .map(this::step)
                .filter(s -> s.compareTo(required) < 0)
                .map(BigDecimal::toPlainString)
                .toList());
        wrong.forEach(w -> others.add(w.toPlainString()));
        others.add(Math.min(others.size(), Distractors.COUNT - 2), STAY_OUT);
        return new RoundItem(
                "factor",
                told.say("ask.factor"),
                Distractors.of(
                        required.signum() == 0 ? STAY_OUT : right.toPlainString(),
                        others,
                        random,
                        this::says,
                        id -> mark(id).right()),
                RoundItem.Reads.NUMBER,
                told.say("hint.factor"),
                this::mark);
    }

    private String says(String factor) {
        return factor.equals("0") || factor.equals(STAY_OUT) ? told.say("factor.none") : told.say("factor.of", factor);
    }

    private BigDecimal right() {
        return required.signum() == 0 ? BigDecimal.ZERO : steps.ceiling(required);
    }

    private BigDecimal step(BigDecimal value) {
        BigDecimal step = steps.ceiling(value);
        return step == null ? value : step;
    }

    private Mark mark(String answer) {
        String line = Plain.line(answer);
        boolean out = ClassWords.OUT.contains(line) || line.equals(Plain.line(says(STAY_OUT)));
        Optional<BigDecimal> read =
                out || ClassWords.NONE.contains(line) ? Optional.of(BigDecimal.ZERO) : FactorWords.read(answer);
        return read.map(given -> mark(answer, given, out))
                .orElseGet(() -> Mark.unread(answer, told.say("unread.factor")));
    }

    private Mark mark(String answer, BigDecimal given, boolean out) {
        boolean least = given.compareTo(required) >= 0 && given.compareTo(right()) <= 0;
        String mistake = given.compareTo(required) < 0
                ? out ? "gives-up-too-early" : behind(given)
                : required.signum() == 0 ? "starts-what-must-not-start" : "not-the-least";
        boolean right = required.signum() == 0 ? given.signum() == 0 : least;
        Mark mark = (right
                        ? Mark.right(answer)
                        : Mark.wrong(answer, Mistake.of(mistake, told.words()), says(right().toPlainString())))
                .because(
                        required.signum() == 0
                                ? told.stop()
                                : told.said().requiredFactor().reasons().stream()
                                        .findFirst());
        return mistake.equals(TOO_LOW)
                ? measured(given)
                        .map(s -> mark.because(
                                s.says(),
                                s.citation().source() + " " + s.citation().clause()))
                        .orElse(mark)
                : mark;
    }

    /** The step that asks for more than a factor because of one level alone. */
    private Optional<Step> measured(BigDecimal given) {
        return told.said().trail().steps().stream()
                .filter(s -> s.conclusion() instanceof Need n
                        && n.basis().equals("ratio")
                        && n.value().compareTo(given) > 0)
                .max(Comparator.comparing(s -> ((Need) s.conclusion()).value()));
    }

    /**
     * What is behind a factor that is too low: the first of these needs that it does not meet. A factor below what the levels ask for is
     * told as such, before anything that is forgotten besides.
     */
    private String behind(BigDecimal given) {
        return misreadings().entrySet().stream()
                .filter(m -> given.multiply(ROUNDING).compareTo(m.getValue()) < 0)
                .map(Map.Entry::getKey)
                .findFirst()
                .map(m -> m.equals(TOO_LOW) && theSumDecides() ? "number-too-low-for-the-sum" : m)
                .orElse("forgets-the-floor");
    }

    private boolean theSumDecides() {
        Map<String, BigDecimal> needs = misreadings();
        return needs.get(OF_THE_SUM).compareTo(needs.get("average-for-peak")) > 0;
    }

    /** Mistake to the need that whoever makes it does not meet, each at least as high as the one before: average, peak, sum. */
    private Map<String, BigDecimal> misreadings() {
        List<Ratio> ratios = told.said().trail().all(Ratio.class);
        Map<String, BigDecimal> needs = new LinkedHashMap<>();
        needs.put(
                TOO_LOW,
                most(ratios.stream().filter(r -> r.averaging() == Averaging.TWA).map(r -> Need.of(r)
                        .value())));
        needs.put("average-for-peak", most(ratios.stream().map(r -> Need.of(r).value())));
        needs.put(
                OF_THE_SUM,
                most(told.said().trail().all(Need.class).stream()
                        .filter(n -> n.ofEveryClass() && !n.basis().equals("floor"))
                        .map(Need::value)));
        return needs;
    }

    /** The highest of some needs, and never more than what is required. */
    private BigDecimal most(Stream<BigDecimal> values) {
        return values.max(Comparator.naturalOrder()).orElse(BigDecimal.ONE).min(required);
    }
}
