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
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.fumewarden.exposure.BestPrediction;
import org.fumewarden.exposure.Compliance;
import org.fumewarden.exposure.StandardNormal;
import org.fumewarden.model.Member;
import org.fumewarden.model.PublishedExposure;
import org.fumewarden.model.QuantityRange;

/**
 * What published studies say of the air at a kind of work, pooled on the logarithms.
 *
 * <p>Fume and what has a share of it, by {@link Pooling}. What has none, such as a gas, by its own studies alone, each of
 * which counts once.
 */
final class PublishedLevels {
    static final String FUME = "welding-fume";
    static final String PART_OF_FUME = "part-of-" + FUME;
    private static final double TAIL = StandardNormal.quantile(Compliance.COVERAGE);

    private final ExposureTables figures;
    private final List<PublishedExposure> rows;
    private final Consumables consumables;
    /** Asked for over and over, by many threads. */
    private final Map<String, Double> singles = new ConcurrentHashMap<>();

    private final Map<String, Optional<Pooling.Base>> bases = new ConcurrentHashMap<>();
    private final Map<Asked, Optional<Joined>> directs = new ConcurrentHashMap<>();
    private final Map<Asked, Joined> pools = new ConcurrentHashMap<>();

    /** Whether an estimate or the samples joined to published levels ask for this member of a set. */
    static boolean reads(Member member) {
        return Set.of(Consumables.SOLID_WIRE, PART_OF_FUME).contains(member.set());
    }

    PublishedLevels(ExposureTables figures) {
        rows = figures.all(PublishedExposure.class).toList();
        this.figures = figures;
        consumables = new Consumables(figures);
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

        Joined moved(double by) {
            return new Joined(log + by, variance, studies);
        }
    }

    private record Asked(String process, String agent, boolean enclosed) {}

    Consumables consumables() {
        return consumables;
    }

    /** A figure of the spreads that the joining rests on, as a variance of logarithms. */
    double variance(String quantity) {
        double log = Math.log(figure(quantity));
        return log * log;
    }

    /** How far one place may lie from the mean of many, as a variance. */
    double between() {
        return variance("study-spread") + variance("row-spread");
    }

    double figure(String quantity) {
        return singles.computeIfAbsent(quantity, q -> range(q, "any", "any")
                .map(r -> r.high().doubleValue())
                .orElseThrow(() -> ExposureTables.absent(q)));
    }

    Optional<QuantityRange> range(String quantity, String of, String with) {
        return figures.range(quantity, of, with);
    }

    /** The level of an agent where a process is done; empty when nothing at all is held. */
    Optional<Joined> level(String process, String agent, boolean enclosed, Optional<String> named, String base) {
        OptionalDouble share = agent.equals(FUME) ? OptionalDouble.of(1) : shareOf(agent, process, named, base);
        Optional<Joined> direct = directs.computeIfAbsent(new Asked(process, agent, false), this::direct);
        if (share.isEmpty() || base(process).isEmpty()) {
            return direct;
        }
        double log = Math.log(share.getAsDouble());
        Joined open = pooled(new Asked(process, agent, false)).moved(log);
        if (!enclosed) {
            return join(Optional.of(open), direct);
        }
        Joined inside = pooled(new Asked(process, agent, true)).moved(log);
        return join(Optional.of(inside.moved(Math.max(0, open.log() - inside.log()))), direct);
    }

    /** What studies of this process and agent alone say, where it has no share of the fume. */
    private Optional<Joined> direct(Asked asked) {
        return studies(rows.stream()
                .filter(r -> !r.place().equals("enclosed")
                        && is(r, asked.process(), asked.agent())
                        && shareOf(r).isEmpty()));
    }

    /** The level of the fume where the agent is what counts, before its share. */
    private Joined pooled(Asked asked) {
        return pools.computeIfAbsent(asked, this::pool);
    }

    private Joined pool(Asked asked) {
        List<Pooling.Point> points = new ArrayList<>();
        rows.stream()
                .filter(r -> base(r.process()).isPresent()
                        && (asked.enclosed() || !r.place().equals("enclosed")))
                .forEach(r -> shareOf(r)
                        .ifPresent(s -> points.add(new Pooling.Point(
                                r.process(),
                                pooledAs(r.agent()),
                                r.place().equals("enclosed"),
                                r.study(),
                                r.id(),
                                log(r) - Math.log(s)))));
        BestPrediction found = new Pooling(points, p -> base(p).orElseThrow(), this::variance)
                .at(
                        new Pooling.Point(asked.process(), pooledAs(asked.agent()), asked.enclosed(), "", "", 0),
                        Math.log(figure("start-level")),
                        figure("start-slope"));
        Set<String> own = new TreeSet<>();
        rows.stream()
                .filter(r -> is(r, asked.process(), asked.agent())
                        && (asked.enclosed() || !r.place().equals("enclosed")))
                .forEach(r -> own.add(r.study()));
        return new Joined(found.off(), found.variance(), own);
    }

    private static String pooledAs(String agent) {
        return agent.equals(FUME) ? "" : metal(agent);
    }

    /** The share by the consumable named, else by the usual one, else by those of the studies, else as the fume usually has. */
    private OptionalDouble shareOf(String agent, String process, Optional<String> named, String base) {
        OptionalDouble share = named.or(() -> consumables.usual(process, base))
                .map(c -> consumables.share(agent, c, process))
                .orElse(OptionalDouble.empty());
        if (share.isEmpty() && named.isEmpty()) {
            share = rows.stream()
                    .filter(r -> is(r, process, agent) && r.metal().equals(base))
                    .flatMapToDouble(r -> consumables.share(r.agent(), r.consumable(), r.process()).stream())
                    .map(Math::log)
                    .average();
            share = share.isPresent() ? OptionalDouble.of(Math.exp(share.getAsDouble())) : share;
        }
        return share.isPresent()
                ? share
                : range("fume-share", metal(agent), process)
                        .or(() -> range("fume-share", metal(agent), "any"))
                        .map(r -> OptionalDouble.of(Math.exp(middle(r))))
                        .orElse(OptionalDouble.empty());
    }

    private OptionalDouble shareOf(PublishedExposure row) {
        return row.agent().equals(FUME)
                ? OptionalDouble.of(1)
                : consumables.share(row.agent(), row.consumable(), row.process());
    }

    /** The highest published 95th percentile of fume in enclosed places, whatever the process. */
    OptionalDouble highestEnclosed() {
        return rows.stream()
                .filter(r -> r.place().equals("enclosed") && r.agent().equals(FUME))
                .mapToDouble(
                        r -> r.centre().doubleValue() * Math.pow(r.deviation().doubleValue(), TAIL))
                .max();
    }

    /**
     * The line over emission, or what the trade usually finds where no arc time is held: the line, which comes from arcs,
     * says less there.
     */
    private Optional<Pooling.Base> base(String process) {
        return bases.computeIfAbsent(process, this::baseOf);
    }

    private Optional<Pooling.Base> baseOf(String process) {
        Optional<QuantityRange> usual = range("usual-level", process, "any");
        boolean arc = range("arc-time", process, "any").isPresent();
        OptionalDouble emission = emission(process);
        return emission.isPresent() && (arc || usual.isEmpty())
                ? Optional.of(new Pooling.Base(true, emission.getAsDouble()))
                : usual.map(r -> new Pooling.Base(false, middle(r)));
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

    private static boolean is(PublishedExposure row, String process, String agent) {
        return row.process().equals(process) && metal(row.agent()).equals(metal(agent));
    }

    static String metal(String agent) {
        return agent.replaceFirst("-(inhalable|respirable)$", "");
    }

    private Optional<Joined> studies(Stream<PublishedExposure> found) {
        return means(found).entrySet().stream()
                .map(e -> new Joined(e.getValue(), between(), Set.of(e.getKey())))
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
