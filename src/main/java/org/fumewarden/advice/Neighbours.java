package org.fumewarden.advice;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.model.Band;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Figures;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Limit;
import org.fumewarden.model.QuantityRange;
import org.fumewarden.model.Row;
import org.fumewarden.model.Threshold;

/** What a row would be with the next step down or up of its value; a row without a number, left out. */
final class Neighbours {
    private static final int[] STEPS = {1, 2, 5};

    /**
     * A row as it might be.
     *
     * @param says the value in words
     * @param row none where it is left out
     */
    record Neighbour(String says, Optional<Row> row) {}

    private Neighbours() {}

    static List<Neighbour> of(Row row) {
        return value(row)
                .map(value -> Stream.of(step(value, false), step(value, true))
                        .map(next ->
                                new Neighbour("at " + Figures.shown(next) + unit(row), Optional.of(with(row, next))))
                        .toList())
                .orElse(List.of(new Neighbour("without it", Optional.empty())));
    }

    private static Optional<BigDecimal> value(Row row) {
        if (row instanceof Limit limit) {
            return Optional.of(limit.value());
        }
        if (row instanceof Benchmark benchmark) {
            return Optional.of(benchmark.value());
        }
        if (row instanceof Threshold threshold) {
            return Optional.of(threshold.value()).filter(v -> v.signum() > 0);
        }
        if (row instanceof Band band) {
            return Optional.of(band.value()).filter(v -> v.signum() > 0);
        }
        if (row instanceof DangerLevel danger) {
            return Optional.of(danger.value());
        }
        if (row instanceof QuantityRange range) {
            return Optional.of(range.high());
        }
        return row instanceof FilterMatch filter ? filter.highest() : Optional.empty();
    }

    private static String unit(Row row) {
        if (row instanceof Limit limit) {
            return " " + limit.unit().symbol();
        }
        if (row instanceof Benchmark benchmark) {
            return " " + benchmark.unit().symbol();
        }
        if (row instanceof Threshold threshold) {
            return threshold.unit().equals("factor") ? "" : " " + threshold.unit();
        }
        if (row instanceof DangerLevel danger) {
            return " " + danger.unit().symbol();
        }
        if (row instanceof QuantityRange range) {
            return " " + range.unit();
        }
        return row instanceof FilterMatch ? " ppm" : "";
    }

    private static Row with(Row row, BigDecimal value) {
        if (row instanceof Limit l) {
            Optional<BigDecimal> mass = l.inMass().map(m -> m.multiply(value).divide(l.value(), MathContext.DECIMAL64));
            return new Limit(l.ref(), l.agent(), l.averaging(), value, l.unit(), l.fraction(), mass);
        }
        if (row instanceof Benchmark b) {
            return new Benchmark(b.ref(), b.agent(), b.averaging(), value, b.unit(), b.fraction(), b.reason());
        }
        if (row instanceof Threshold t) {
            return new Threshold(t.ref(), t.id(), value, t.unit());
        }
        if (row instanceof Band b) {
            return new Band(b.ref(), b.band(), b.over(), b.upTo(), value);
        }
        if (row instanceof DangerLevel d) {
            return new DangerLevel(d.ref(), d.agent(), value, d.unit(), d.basis());
        }
        if (row instanceof QuantityRange r) {
            return new QuantityRange(
                    r.ref(), r.quantity(), r.of(), r.with(), r.low().min(value), value, r.unit());
        }
        FilterMatch f = (FilterMatch) row;
        return new FilterMatch(f.ref(), f.agent(), f.system(), f.type(), Optional.of(value));
    }

    /** The neighbour of a value among 1, 2 and 5 times the powers of ten. */
    private static BigDecimal step(BigDecimal value, boolean up) {
        int power = value.precision() - value.scale() - 1;
        List<BigDecimal> near = new ArrayList<>();
        for (int p = power - 1; p <= power + 1; p++) {
            for (int step : STEPS) {
                near.add(BigDecimal.valueOf(step).scaleByPowerOfTen(p));
            }
        }
        return up
                ? near.stream().filter(n -> n.compareTo(value) > 0).findFirst().orElseThrow()
                : near.stream()
                        .filter(n -> n.compareTo(value) < 0)
                        .reduce((a, b) -> b)
                        .orElseThrow();
    }
}
