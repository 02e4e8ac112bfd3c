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
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.model.Bound;
import org.fumewarden.model.Need;
import org.fumewarden.model.Settlement;

/** Rows of the table of the air that no stated level makes: floors, sums, and what other figures bound. */
record UntoldRows(Advice advice, Spoken spoken) {
    private static final MathContext PRINT = new MathContext(2, RoundingMode.CEILING);

    List<AirPart.Ranked> ranked() {
        return Stream.concat(needs(), bounds().map(this::row)).toList();
    }

    /** Of each level that nobody stated and that counts in a sum against a limit the lowest bound, where it matters. */
    Stream<Bound> bounds() {
        Map<String, Bound> lowest = new TreeMap<>();
        advice.trail().all(Bound.class).stream()
                .filter(b -> b.counted() && !b.benchmark() && !b.usual() && settled(b) && !hasRow(b))
                .forEach(b ->
                        lowest.merge(b.question(), b, BinaryOperator.minBy(Comparator.comparing(UntoldRows::ratio))));
        return lowest.values().stream().filter(b -> ratio(b).compareTo(AirPart.TENTH) >= 0);
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
                        Spoken.level(bound.limit()),
                        Spoken.figure(ratio(bound)),
                        spoken.say("air.kind.bounded"),
                        ""));
    }

    private static BigDecimal ratio(Bound bound) {
        return bound.level().divide(bound.limit(), PRINT).stripTrailingZeros();
    }

    /** Least factors that hold whatever was measured, and sums of like effect. */
    private Stream<AirPart.Ranked> needs() {
        return advice.trail().all(Need.class).stream()
                .filter(n -> Set.of("floor", "mixture").contains(n.basis()) && n.above(AirPart.TENTH))
                .map(n -> new AirPart.Ranked(spoken.agent(n.subject()), n.value(), cells(n)))
                .distinct();
    }

    private List<String> cells(Need need) {
        return List.of(
                Spoken.sentenceCase(spoken.agent(need.subject())),
                need.basis().equals("floor")
                        ? ""
                        : spoken.say("open." + (need.statistic().equals(Need.SHIFT_SUM) ? "twa" : "stel")),
                "",
                "",
                Spoken.figure(need.value()),
                spoken.say("air.basis." + need.basis()),
                "");
    }
}
