package org.fumewarden.training;

import java.time.Period;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.advice.Check;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Frequency;

/** How often a duty is due. */
final class IntervalQuestion {
    private static final List<String> USUAL = List.of("P1D", "P7D", "P1M", "P3M", "P6M", "P1Y", "P2Y", "P3Y", "P5Y");

    private final Told told;
    private final Duty duty;
    private final Check check;

    private IntervalQuestion(Told told, Duty duty, Check check) {
        this.told = told;
        this.duty = duty;
        this.check = check;
    }

    /** A question about a duty of this task that comes back after a fixed time; none of those that were asked before. */
    static Optional<RoundItem> about(Told told, Set<String> asked, Random random) {
        Map<String, Check> checks =
                told.said().checks().stream().collect(Collectors.toMap(Check::id, c -> c, (a, b) -> a));
        List<Duty> duties = told.all(Duty.class).stream()
                .filter(d -> checks.containsKey(d.id()))
                .filter(d ->
                        d.frequency() == Frequency.MAX_INTERVAL && d.period().isPresent())
                .filter(d -> !checks.get(d.id()).force().equals("practice") && !DutyWords.FOR_SOME.contains(d.id()))
                .filter(d -> !d.doneBy().equals("replacement"))
                .toList();
        List<Duty> clear = new ArrayList<>(duties.stream()
                .filter(d -> duties.stream()
                        .filter(o -> o.doneBy().equals(d.doneBy()))
                        .allMatch(o -> o.period().equals(d.period())))
                .filter(d -> !asked.contains(d.doneBy()))
                .toList());
        Collections.shuffle(clear, random);
        return clear.stream().findFirst().map(d -> {
            asked.add(d.doneBy());
            return new IntervalQuestion(told, d, checks.get(d.id())).item(random);
        });
    }

    private RoundItem item(Random random) {
        List<String> wrong = new ArrayList<>(USUAL);
        wrong.sort((a, b) -> Double.compare(far(a), far(b)));
        return new RoundItem(
                "interval",
                told.say("ask.interval", deed()),
                Distractors.of(period(), wrong, random, this::says, id -> mark(id).right()),
                RoundItem.Reads.WORDS,
                told.say("hint.interval"),
                this::mark);
    }

    private String period() {
        return duty.period().orElseThrow().toString();
    }

    private double far(String period) {
        return Math.abs(Math.log((double) days(period) / days(period())));
    }

    private String deed() {
        String plain = told.deed(duty.doneBy());
        return duty.appliesTo().isEmpty()
                ? plain
                : told.words()
                        .sayOr(
                                "done." + duty.doneBy() + "."
                                        + duty.appliesTo().get(0).key(),
                                plain);
    }

    private String says(String period) {
        Period parsed = Period.parse(period);
        String key = parsed.getDays() > 0 ? "days" : parsed.toTotalMonths() % 12 > 0 ? "months" : "years";
        long count = key.equals("days")
                ? parsed.getDays()
                : key.equals("months") ? parsed.toTotalMonths() : parsed.toTotalMonths() / 12;
        return count == 1 ? told.words().say("when.each." + key) : told.words().say("when.every." + key, count);
    }

    private Mark mark(String answer) {
        Optional<String> named = answer.matches("P[0-9]+[DMY]") ? Optional.of(answer) : IntervalWords.read(answer);
        if (named.isEmpty()) {
            return Mark.unread(answer, told.say("unread.interval"));
        }
        long late = days(named.get()) - days(period());
        int compared = Math.abs(late) * 50 <= days(period()) ? 0 : Long.signum(late);
        Mark mark = compared == 0
                ? Mark.right(answer)
                : Mark.wrong(
                        answer,
                        Mistake.of(compared > 0 ? "too-seldom" : "sooner-than-needed", told.words()),
                        says(period()));
        return mark.because(told.what(check), check.source() + " " + check.clause());
    }

    private static long days(String period) {
        if (!period.matches("P(\\d+[YMD])+")) {
            return 0;
        }
        Period parsed = Period.parse(period);
        return parsed.getDays() + Math.round(parsed.toTotalMonths() * 365.25 / 12);
    }
}
