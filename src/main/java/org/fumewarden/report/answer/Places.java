package org.fumewarden.report.answer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.AccountLine;
import org.fumewarden.advice.Advice;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.FactorInForce;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Ratio;
import org.fumewarden.model.Row;
import org.fumewarden.model.Threshold;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Sign;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;

/** Where the limits, danger levels and factors stand that an advice compared with: document, clause and edition, as notes. */
final class Places {
    private final Advice advice;
    private final Spoken spoken;
    private final Notes notes;

    /** The rows of the day by address. */
    private final Map<String, Row> rows;

    Places(Advice advice, List<Row> rows, Spoken spoken, Notes notes) {
        this.advice = advice;
        this.spoken = spoken;
        this.notes = notes;
        this.rows = rows.stream().collect(Collectors.toMap(r -> r.ref().address(), r -> r, (a, b) -> a));
    }

    /** The notes of the value that a level was held against, and of what the code derives it with; empty for one that the task states. */
    String of(AccountLine line) {
        Row held = rows.get(line.account().by());
        if (held == null) {
            return "";
        }
        boolean asListed =
                line.account().against().stream().anyMatch(a -> listed(held).anyMatch(v -> v.compareTo(a) == 0));
        Stream<Row> by = asListed
                ? Stream.empty()
                : advice.trail().step(line.reason().step()).stream()
                        .flatMap(account -> account.premises().stream())
                        .flatMap(p -> advice.trail().step(p.address()).stream())
                        .filter(s -> s.conclusion() instanceof Ratio ratio
                                && ratio.limitRow().equals(line.account().by()))
                        .flatMap(s -> read(s, Threshold.class::isInstance));
        return noted(Stream.concat(Stream.of(held), by));
    }

    /** The limits whose clause says that they are no law of this code. */
    static Set<String> notLaw(List<Row> rows) {
        return rows.stream()
                .filter(r -> r instanceof Limit && r.ref().citation().clause().contains("no law in "))
                .map(r -> r.ref().address())
                .collect(Collectors.toSet());
    }

    private static Stream<BigDecimal> listed(Row held) {
        return held instanceof Limit limit
                ? Stream.concat(Stream.of(limit.value()), limit.inMass().stream())
                : held instanceof Benchmark benchmark ? Stream.of(benchmark.value()) : Stream.empty();
    }

    /** The notes of the factor that a class has here; empty for one without. */
    String ofFactor(String deviceClass) {
        return noted(advice.trail()
                .concluding(FactorInForce.class)
                .filter(s -> s.conclusion().subject().equals(deviceClass))
                .flatMap(s -> read(s, AssignedFactor.class::isInstance)));
    }

    private Stream<Row> read(Step step, Predicate<Row> which) {
        return step.premises().stream()
                .map(Premise::address)
                .flatMap(a -> Optional.ofNullable(rows.get(a)).stream())
                .filter(which);
    }

    private String noted(Stream<Row> read) {
        return read.map(r -> notes.of(r.ref())).distinct().collect(Collectors.joining(", "));
    }

    /** The danger levels of the agents in the air, those of one place together. */
    List<Line> dangerous() {
        Set<String> agents =
                advice.accounts().stream().map(l -> l.account().agent()).collect(Collectors.toSet());
        Map<String, List<String>> byPlace = new LinkedHashMap<>();
        rows.values().stream()
                .filter(DangerLevel.class::isInstance)
                .map(DangerLevel.class::cast)
                .filter(d -> agents.contains(d.agent()))
                .sorted(Comparator.comparing(DangerLevel::agent))
                .forEach(d -> byPlace.computeIfAbsent(notes.of(d.ref()), n -> new ArrayList<>())
                        .add(spoken.agent(d.agent()) + " " + Spoken.level(d.value()) + " "
                                + d.unit().symbol()
                                + StringUtils.prependIfMissing(
                                                spoken.told(d.basis().after().strip()), " ")
                                        .stripTrailing()));
        List<Line> lines = new ArrayList<>();
        if (!byPlace.isEmpty()) {
            lines.add(new Line.Head(spoken.say("air.dangerous")));
        }
        byPlace.forEach((note, said) -> lines.add(new Line.Says(Sign.ITEM, "", String.join("; ", said), note, "")));
        return lines;
    }
}
