package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.model.Agent;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.Concentrations;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Member;
import org.fumewarden.model.QuantityRange;
import org.fumewarden.model.Row;
import org.fumewarden.model.Threshold;
import org.fumewarden.model.Unit;

/** The rows in force as the arithmetic of exposure asks for them. */
public final class ExposureTables {
    /** Digits of a reckoned level; rounded up, so that it is never understated. */
    private static final MathContext LEVEL = new MathContext(12, RoundingMode.CEILING);

    private static final MathContext LIMIT = new MathContext(9, RoundingMode.FLOOR);

    private final List<Row> every;

    private final Map<Class<?>, List<Row>> rows = new HashMap<>();

    private final Map<String, Set<Unit>> units = new HashMap<>();

    private final Map<String, Row> byAddress = new HashMap<>();

    private volatile List<Row> doubtful;

    private volatile PublishedLevels published;

    private volatile Map<List<String>, QuantityRange> ranges;

    public ExposureTables(List<Row> rows) {
        this.every = List.copyOf(rows);
        for (Row row : rows) {
            this.rows.computeIfAbsent(row.getClass(), kind -> new ArrayList<>()).add(row);
            byAddress.put(row.ref().address(), row);
        }
        all(Limit.class).forEach(l -> unitsOf(l.agent()).add(l.unit()));
        all(Benchmark.class).forEach(b -> unitsOf(b.agent()).add(b.unit()));
        all(DangerLevel.class).forEach(d -> unitsOf(d.agent()).add(d.unit()));
    }

    private Set<Unit> unitsOf(String agent) {
        return units.computeIfAbsent(agent, a -> EnumSet.noneOf(Unit.class));
    }

    /** The units of all levels that a level of the agent is compared with. */
    public Set<Unit> units(String agent) {
        return Collections.unmodifiableSet(units.getOrDefault(agent, Set.of()));
    }

    /** All rows, in the order of tables and rows. */
    public List<Row> every() {
        return every;
    }

    /**
     * The rows that nobody compared with their text, on which documents differ or that somebody changed, in the order of their
     * addresses; found once, since each advice asks for them.
     */
    public List<Row> doubtful() {
        if (doubtful == null) {
            doubtful = byAddress.values().stream()
                    .filter(row -> row.ref().citation().confidence() == Confidence.MEMORY
                            || !row.ref().beside().isEmpty()
                            || !row.ref().changed().isEmpty())
                    .sorted(Comparator.comparing(row -> row.ref().address()))
                    .toList();
        }
        return doubtful;
    }

    /** The rows of a kind, in the order of tables and rows. */
    public <R extends Row> Stream<R> all(Class<R> kind) {
        return rows.getOrDefault(kind, List.of()).stream().map(kind::cast);
    }

    /** What published studies say by these rows; pooled once, since an estimate asks for it many times. */
    PublishedLevels published() {
        if (published == null) {
            published = new PublishedLevels(this);
        }
        return published;
    }

    /** The row at an address, if one is in force. */
    public Optional<Row> at(String address) {
        return Optional.ofNullable(byAddress.get(address));
    }

    /**
     * A single number of the tables.
     *
     * @throws InputException when no table has it on the day
     */
    double value(String threshold) {
        return all(Threshold.class)
                .filter(t -> t.id().equals(threshold))
                .mapToDouble(t -> t.value().doubleValue())
                .findFirst()
                .orElseThrow(() -> absent(threshold));
    }

    /** Whether a set of the tables has a member. */
    boolean isMember(String set, String item) {
        return all(Member.class).anyMatch(m -> m.set().equals(set) && m.item().equals(item));
    }

    /** The smallest of these thresholds; one that the code does not have is left out. */
    double least(String... thresholds) {
        return all(Threshold.class)
                .filter(t -> List.of(thresholds).contains(t.id()))
                .mapToDouble(t -> t.value().doubleValue())
                .min()
                .orElseThrow(() -> absent(thresholds[0]));
    }

    /** What a quantity of an estimate may be. */
    Optional<QuantityRange> range(String quantity, String of, String with) {
        if (ranges == null) {
            ranges = all(QuantityRange.class)
                    .collect(Collectors.toMap(
                            r -> List.of(r.quantity(), r.of(), r.with()), Function.identity(), (first, next) -> first));
        }
        return Optional.ofNullable(ranges.get(List.of(quantity, of, with)));
    }

    /** Without this number nothing can be reckoned: its table ended, and none follows. */
    static InputException absent(String row) {
        return new InputException(new Problem(
                "rules", 0, row, "is in no table on the day of the task.", "add a row that is in force on that day."));
    }

    /** The lowest limit of an averaging time that can be told in the unit. */
    public Optional<BigDecimal> lowestLimit(String agent, Averaging averaging, Unit unit) {
        return all(Limit.class)
                .filter(l -> l.agent().equals(agent) && l.averaging() == averaging)
                .flatMap(l -> in(unit, l.value(), l.unit(), agent).stream())
                .min(Comparator.naturalOrder());
    }

    /** A concentration in another unit; empty when the agent has no molar mass. */
    public Optional<BigDecimal> in(Unit to, BigDecimal level, Unit from, String agent) {
        if (to == from) {
            return Optional.of(level);
        }
        Optional<Agent> about = all(Agent.class)
                .filter(a -> a.id().equals(agent) && a.molarMass().isPresent())
                .findFirst();
        Optional<Threshold> volume =
                all(Threshold.class).filter(t -> t.id().equals("molar-volume")).findFirst();
        return about.flatMap(a -> volume.map(v -> Concentrations.convert(level, from, to, a, v)));
    }

    /** A reckoned level as a decimal, rounded up. */
    public static BigDecimal level(double value) {
        return BigDecimal.valueOf(value).round(LEVEL);
    }

    /** A level; one that is a limit itself is rounded down, so that its unit turned to and fro never puts it above. */
    static BigDecimal level(double value, boolean aLimit) {
        return aLimit ? BigDecimal.valueOf(value).round(LIMIT) : level(value);
    }
}
