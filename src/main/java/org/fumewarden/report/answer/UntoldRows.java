package org.fumewarden.report.answer;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.model.Agent;
import org.fumewarden.model.Bound;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Figures;
import org.fumewarden.model.Need;
import org.fumewarden.model.OpenNeed;
import org.fumewarden.model.Settlement;
import org.fumewarden.trail.Step;

/** Rows of the table of the air that no stated level makes: floors, sums, and what other figures bound. */
record UntoldRows(Advice advice, Spoken spoken) {
    private static final MathContext PRINT = new MathContext(2, RoundingMode.CEILING);

    /**
     * The rows.
     *
     * @param annex true for all that a sum adds up, false for what matters
     */
    List<AirPart.Ranked> ranked(boolean annex) {
        return Stream.concat(needs(), bounds(annex).map(this::row)).toList();
    }

    /** Of each level that nobody stated and that counts in a sum the lowest bound. */
    Stream<Bound> bounds(boolean annex) {
        Set<Bound> summed = summed();
        Map<String, Bound> lowest = new TreeMap<>();
        advice.trail().all(Bound.class).stream()
                .filter(b -> b.counted() && !b.usual())
                .filter(b -> summed.contains(b) || !b.benchmark() && settled(b))
                .filter(b -> annex && summed.contains(b) || !hasRow(b))
                .forEach(b ->
                        lowest.merge(b.question(), b, BinaryOperator.minBy(Comparator.comparing(UntoldRows::ratio))));
        return lowest.values().stream()
                .filter(b -> annex && summed.contains(b) || ratio(b).compareTo(AirPart.TENTH) >= 0);
    }

    /** Agents that have a row since a floor of the code is worn for them. */
    Stream<String> floors() {
        return advice.trail().all(Need.class).stream()
                .filter(n -> n.basis().equals("floor"))
                .map(Need::subject);
    }

    /** What the sums behind the answer were reckoned from. */
    private Set<Bound> summed() {
        return advice.trail()
                .concluding(Need.class)
                .filter(s -> s.stands() && ((Need) s.conclusion()).basis().equals("mixture"))
                .flatMap(s -> s.premises().stream())
                .flatMap(p -> advice.trail().step(p.address()).stream())
                .map(Step::conclusion)
                .filter(Bound.class::isInstance)
                .map(Bound.class::cast)
                .collect(Collectors.toSet());
    }

    private boolean settled(Bound bound) {
        return advice.accounts().stream()
                .map(l -> l.account())
                .anyMatch(a -> a.kind() == Settlement.BOUNDED
                        && a.agent().equals(bound.agent())
                        && bound.question().endsWith("." + a.averaging()));
    }

    /** True where another averaging time of the agent stands in the table already. */
    private boolean hasRow(Bound bound) {
        return advice.accounts().stream()
                .filter(l -> l.account().agent().equals(bound.agent()))
                .anyMatch(AirPart::matters);
    }

    private AirPart.Ranked row(Bound bound) {
        String averaging = bound.question().substring(bound.question().lastIndexOf('.') + 1);
        String agent = spoken.agent(bound.agent());
        return new AirPart.Ranked(
                agent,
                ratio(bound),
                List.of(
                        Spoken.sentenceCase(agent),
                        spoken.say("open." + averaging),
                        Spoken.level(bound.level()) + " " + bound.unit(),
                        Figures.limit(bound.limit()),
                        Spoken.figure(ratio(bound)),
                        spoken.say(isAssumedPeak(bound) ? "air.kind.peak" : "air.kind.bounded"),
                        ""));
    }

    /** True for a multiple of a shift average, which the highest quarter of an hour can still pass. */
    private boolean isAssumedPeak(Bound bound) {
        return advice.trail()
                .concluding(Bound.class)
                .filter(s -> s.conclusion().equals(bound))
                .anyMatch(s -> Agent.PEAKS.stream().anyMatch(t -> restsOn(s, t)));
    }

    private static BigDecimal ratio(Bound bound) {
        return bound.level().divide(bound.limit(), PRINT).stripTrailingZeros();
    }

    /** Least factors that hold whatever was measured, and sums of like effect. */
    private Stream<AirPart.Ranked> needs() {
        return advice.trail().all(Need.class).stream()
                .filter(n -> !n.basis().equals("ratio") && n.above(AirPart.TENTH) && !bounded(n))
                .filter(n -> !isKept(n)
                        || kept().noneMatch(o -> o.value().compareTo(n.value()) > 0 && name(o).equals(name(n))))
                // What a filter needs for the gases it lets through is told where it decides.
                .filter(n -> n.ofEveryClass() || n.above(advice.requiredFactor().value()))
                .map(n -> new AirPart.Ranked(name(n), n.value(), cells(n)))
                .distinct();
    }

    /** What a least factor rests on: the code, the code that orders a respirator without a factor, memory, or only our tables. */
    private String basis(Need need) {
        if (need.statistic().equals(Need.UNTIL_MEASURED)) {
            return "kept";
        }
        if (!need.basis().equals("floor")) {
            return "mixture";
        }
        List<Step> steps = advice.trail()
                .concluding(Need.class)
                .filter(s -> s.conclusion().equals(need))
                .toList();
        if (steps.stream().allMatch(s -> s.citation().source().equals(Notes.DEFINITIONS))) {
            return "practice";
        }
        if (steps.stream().anyMatch(s -> restsOn(s, "smallest-factor"))) {
            return "ordered";
        }
        return steps.stream().allMatch(s -> s.citation().confidence() == Confidence.MEMORY) ? "memory" : "floor";
    }

    /** True for what is worn until a level is measured, where the row of its bound tells the same figure. */
    private boolean bounded(Need need) {
        return isKept(need)
                && bounds(false)
                        .anyMatch(b ->
                                b.agent().equals(need.subject()) && need.level().equals(b.level()));
    }

    /** What a factor is kept for until it is measured: its agents, not the fume that the code names. */
    String waitsFor(Need need) {
        return open(need)
                .map(OpenNeed::subject)
                .distinct()
                .map(spoken::agent)
                .sorted()
                .collect(Collectors.joining("; "));
    }

    /** The factors that are kept until something is measured. */
    Stream<Need> kept() {
        return advice.trail().all(Need.class).stream()
                .filter(UntoldRows::isKept)
                .distinct();
    }

    private static boolean isKept(Need need) {
        return need.statistic().equals(Need.UNTIL_MEASURED);
    }

    private Stream<OpenNeed> open(Need need) {
        return advice.trail()
                .concluding(Need.class)
                .filter(s -> s.conclusion().equals(need))
                .flatMap(s -> s.premises().stream())
                .flatMap(p -> advice.trail().step(p.address()).stream())
                .map(Step::conclusion)
                .filter(OpenNeed.class::isInstance)
                .map(OpenNeed.class::cast);
    }

    /** The times that a least factor is kept for; none where the code orders it. */
    private String times(Need need) {
        return open(need)
                .map(OpenNeed::question)
                .map(q -> q.substring(q.lastIndexOf('.') + 1))
                .distinct()
                .sorted()
                .map(t -> spoken.say("open." + t))
                .collect(Collectors.joining(", "));
    }

    private static boolean restsOn(Step step, String threshold) {
        return step.premises().stream().anyMatch(p -> p.address().matches(".*[#/]" + threshold));
    }

    private String name(Need need) {
        return isKept(need) ? waitsFor(need) : spoken.agent(need.subject());
    }

    private List<String> cells(Need need) {
        return List.of(
                Spoken.sentenceCase(name(need)),
                need.basis().equals("floor")
                        ? times(need)
                        : spoken.say("open." + (need.statistic().equals(Need.SHIFT_SUM) ? "twa" : "stel")),
                "",
                "",
                Spoken.figure(need.value()),
                spoken.say("air.basis." + basis(need)),
                "");
    }
}
