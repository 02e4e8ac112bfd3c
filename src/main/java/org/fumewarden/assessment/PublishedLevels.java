package org.fumewarden.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fumewarden.exposure.Compliance;
import org.fumewarden.exposure.StandardNormal;
import org.fumewarden.model.Member;
import org.fumewarden.model.PublishedExposure;
import org.fumewarden.model.QuantityRange;

/**
 * What published studies say of the air at a kind of work, joined on the logarithms.
 *
 * <p>Fume of a process: a straight line of published levels over emission rates, then the studies of that very process. A
 * metal: its share of the fume in the laboratory, corrected by what field studies found of that metal, then the studies of
 * the metal itself. Each is weighted by its variance; a study counts once.
 */
final class PublishedLevels {
    private static final int FEWEST_POINTS = 3;
    static final String FUME = "welding-fume";
    private static final double TAIL = StandardNormal.quantile(Compliance.COVERAGE);

    private final List<PublishedExposure> rows;
    private final List<QuantityRange> ranges;
    private final Set<String> solidWire = new TreeSet<>();

    PublishedLevels(Figures figures) {
        rows = figures.all(PublishedExposure.class).toList();
        ranges = figures.all(QuantityRange.class).toList();
        figures.all(Member.class)
                .filter(m -> m.set().equals("solid-wire-processes"))
                .forEach(m -> solidWire.add(m.item()));
    }

    /**
     * A level with its doubt.
     *
     * @param log natural logarithm of the level
     * @param variance of that logarithm, for the mean of many places
     * @param studies of this very process and agent
     */
    record Joined(double log, double variance, Set<String> studies) {

        /** Both, weighted by variance. */
        Joined with(Joined other) {
            double weight = 1 / variance;
            double second = 1 / other.variance;
            Set<String> all = new TreeSet<>(studies);
            all.addAll(other.studies);
            return new Joined((weight * log + second * other.log) / (weight + second), 1 / (weight + second), all);
        }

        Joined moved(double by, double more) {
            return new Joined(log + by, variance + more, studies);
        }
    }

    /** A figure of the spreads that the joining rests on, as a variance of logarithms. */
    double variance(String quantity) {
        double log = Math.log(figure(quantity));
        return log * log;
    }

    double figure(String quantity) {
        return range(quantity, "any", "any")
                .map(r -> r.high().doubleValue())
                .orElseThrow(() -> new IllegalStateException("No row for " + quantity + "."));
    }

    Optional<QuantityRange> range(String quantity, String of, String with) {
        return ranges.stream()
                .filter(r -> r.quantity().equals(quantity)
                        && r.of().equals(of)
                        && r.with().equals(with))
                .findFirst();
    }

    /** Fume of a process in open places; empty when nothing at all is held. */
    Optional<Joined> fume(String process) {
        Optional<Joined> base = byEmission(process).or(() -> range("usual-level", process, "any")
                .map(r -> new Joined(middle(r), variance("trade-spread"), Set.of())));
        return join(base, open(process, FUME));
    }

    /** Fume in enclosed places: that of open ones with more doubt, and the studies of enclosed ones. */
    Optional<Joined> enclosedFume(String process) {
        return join(
                fume(process).map(f -> f.moved(0, variance("place-spread"))),
                studies(rows.stream().filter(r -> r.place().equals("enclosed") && is(r, process, FUME))));
    }

    /** A metal or a gas; the share of the fume by the consumable when one is known. */
    Optional<Joined> agent(Optional<Joined> fume, String process, String agent, Optional<String> consumable) {
        OptionalDouble share = consumable.map(c -> share(agent, c, process)).orElse(OptionalDouble.empty());
        if (share.isEmpty()) {
            share = range("fume-share", metal(agent), "any")
                    .map(r -> OptionalDouble.of(Math.exp(middle(r))))
                    .orElse(OptionalDouble.empty());
        }
        Optional<Joined> byShare = Optional.empty();
        if (share.isPresent() && fume.isPresent()) {
            Joined field = fieldOverLaboratory(agent);
            byShare = Optional.of(new Joined(
                    fume.get().log() + Math.log(share.getAsDouble()) + field.log(),
                    fume.get().variance() + variance("share-spread") + field.variance(),
                    Set.of()));
        }
        return join(byShare, open(process, agent));
    }

    /** How far field studies of an agent lie from laboratory shares; nothing known is a wide spread around one. */
    private Joined fieldOverLaboratory(String agent) {
        Joined found = new Joined(0, variance("agent-spread"), Set.of());
        double doubt = variance("study-spread") + variance("share-spread");
        for (PublishedExposure row : rows) {
            OptionalDouble share = share(row.agent(), row.consumable(), row.process());
            Optional<Joined> fume = fume(row.process());
            if (metal(row.agent()).equals(metal(agent)) && share.isPresent() && fume.isPresent()) {
                double off = log(row) - fume.get().log() - Math.log(share.getAsDouble());
                found = found.with(new Joined(off, doubt, Set.of()));
            }
        }
        return found;
    }

    /** The highest published 95th percentile of fume in enclosed places, whatever the process. */
    OptionalDouble highestEnclosed() {
        return rows.stream()
                .filter(r -> r.place().equals("enclosed") && r.agent().equals(FUME))
                .mapToDouble(
                        r -> r.centre().doubleValue() * Math.pow(r.deviation().doubleValue(), TAIL))
                .max();
    }

    /** The share of an agent in the fume by laboratory figures of its consumable; solid wires stand for each other. */
    OptionalDouble share(String agent, String consumable, String process) {
        List<String> with = new ArrayList<>(List.of(process));
        if (solidWire.contains(process)) {
            with.addAll(solidWire);
        }
        String metal = metal(agent).equals("chromium-iii") ? "chromium" : metal(agent);
        for (String each : with) {
            Optional<Double> whole = value("fume-per-consumable", consumable, each);
            Optional<Double> part = value(metal + "-per-consumable", consumable, each)
                    .or(() -> metal.equals("chromium-vi")
                            ? value("chromium-per-consumable", consumable, each)
                                    .flatMap(c -> value("chromium-vi-share-of-chromium", each, "any")
                                            .map(s -> s * c))
                            : Optional.empty());
            if (whole.isPresent() && part.isPresent()) {
                return OptionalDouble.of(part.get() / whole.get());
            }
        }
        return OptionalDouble.empty();
    }

    private Optional<Double> value(String quantity, String of, String with) {
        return range(quantity, of, with).map(r -> r.high().doubleValue());
    }

    /** Published levels over emission rates, as a straight line of logarithms through all processes that have both. */
    private Optional<Joined> byEmission(String process) {
        OptionalDouble x = emission(process);
        List<double[]> points = new ArrayList<>();
        Map<String, List<PublishedExposure>> byProcess = new TreeMap<>();
        rows.stream()
                .filter(r -> !r.place().equals("enclosed") && r.agent().equals(FUME))
                .forEach(r -> byProcess
                        .computeIfAbsent(r.process(), p -> new ArrayList<>())
                        .add(r));
        byProcess.forEach((p, found) -> emission(p)
                .ifPresent(e -> means(found.stream()).values().forEach(level -> points.add(new double[] {e, level}))));
        // Where no arc time is held the line, which comes from arcs, says less than what the trade usually finds.
        boolean noArc = range("usual-level", process, "any").isPresent()
                && range("arc-time", process, "any").isEmpty();
        if (x.isEmpty() || points.size() < FEWEST_POINTS || noArc) {
            return Optional.empty();
        }
        double mx = points.stream().mapToDouble(p -> p[0]).average().orElseThrow();
        double my = points.stream().mapToDouble(p -> p[1]).average().orElseThrow();
        double xx = points.stream().mapToDouble(p -> (p[0] - mx) * (p[0] - mx)).sum();
        double xy = points.stream().mapToDouble(p -> (p[0] - mx) * (p[1] - my)).sum();
        double slope = xx > 0 ? xy / xx : 0;
        return Optional.of(new Joined(my + slope * (x.getAsDouble() - mx), variance("line-spread"), Set.of()));
    }

    /** Logarithm of the usual emission over the working time. */
    private OptionalDouble emission(String process) {
        Optional<QuantityRange> rate = range("fume-rate", process, "any");
        return rate.isPresent() ? OptionalDouble.of(middle(rate.get()) + middle(arc(process))) : OptionalDouble.empty();
    }

    /** The share of the time that the arc usually burns. */
    QuantityRange arc(String process) {
        return range("arc-time", process, "any")
                .or(() -> range("arc-time", "any-other", "any"))
                .orElseThrow();
    }

    static double middle(QuantityRange range) {
        return (Math.log(range.low().doubleValue()) + Math.log(range.high().doubleValue())) / 2;
    }

    private Optional<Joined> open(String process, String agent) {
        return studies(rows.stream().filter(r -> !r.place().equals("enclosed") && is(r, process, agent)));
    }

    private static boolean is(PublishedExposure row, String process, String agent) {
        return row.process().equals(process) && metal(row.agent()).equals(metal(agent));
    }

    static String metal(String agent) {
        return agent.replaceFirst("-(inhalable|respirable)$", "");
    }

    private Optional<Joined> studies(Stream<PublishedExposure> found) {
        return means(found).entrySet().stream()
                .map(e -> new Joined(e.getValue(), variance("study-spread"), Set.of(e.getKey())))
                .sorted(Comparator.comparingDouble(Joined::log))
                .reduce(Joined::with);
    }

    private Map<String, Double> means(Stream<PublishedExposure> found) {
        Map<String, List<Double>> byStudy = new LinkedHashMap<>();
        found.forEach(
                r -> byStudy.computeIfAbsent(r.study(), s -> new ArrayList<>()).add(log(r)));
        Map<String, Double> means = new TreeMap<>();
        byStudy.forEach((study, logs) -> means.put(
                study, logs.stream().mapToDouble(Double::doubleValue).average().orElseThrow()));
        return means;
    }

    /** The centre of a row, as it would be indoors. */
    private double log(PublishedExposure row) {
        double log = Math.log(row.centre().doubleValue());
        return row.place().equals("outdoors") ? log - Math.log(figure("outdoors-over-indoors")) : log;
    }

    private static Optional<Joined> join(Optional<Joined> one, Optional<Joined> two) {
        return one.isPresent() && two.isPresent() ? Optional.of(one.get().with(two.get())) : one.or(() -> two);
    }
}
