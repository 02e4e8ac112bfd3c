package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fumewarden.assessment.PublishedLevels.Joined;
import org.fumewarden.exposure.Prior;
import org.fumewarden.exposure.Screening;
import org.fumewarden.exposure.Spread;
import org.fumewarden.exposure.TimeWeightedAverage;
import org.fumewarden.exposure.TwoZoneRoom;
import org.fumewarden.model.Agent;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.PublishedExposure;
import org.fumewarden.model.QuantityRange;
import org.fumewarden.model.Unit;
import org.fumewarden.task.Reading;
import org.fumewarden.task.Task;

/**
 * An exposure estimated from what others measured, moved by the room, the arc time and the extraction of the task; for
 * screening only.
 *
 * <p>The room moves the published level by a ratio: up as far as a model of the air at the arc says, down no further than
 * field studies that give both. Where nothing published is held there is no estimate.
 */
public final class RoomEstimate {
    private static final double MINUTES = 60;
    private static final double PERCENT = 100;
    private static final double MILLIGRAMS = 1000;
    private static final double SECONDS = 60;
    private static final String ANY = "any";

    private final Task task;
    private final Figures figures;
    private final PublishedLevels published;
    private final List<String> lacks = new ArrayList<>();
    private final List<String> steps = new ArrayList<>();

    private RoomEstimate(Task task, Figures figures) {
        this.task = task;
        this.figures = figures;
        this.published = new PublishedLevels(figures);
    }

    /**
     * What came of it.
     *
     * @param screening the distribution of shift averages, empty when something is lacking
     * @param lacks why there is no estimate, one sentence each
     * @param unit of the level
     */
    public record Result(Optional<Screening> screening, List<String> lacks, Unit unit) {
        public Result {
            lacks = List.copyOf(lacks);
        }
    }

    /** Estimates the level of an agent in the air that the worker breathes without a respirator. */
    public static Result of(Task task, Figures figures, String agent) {
        return new RoomEstimate(task, figures).estimate(agent);
    }

    /** What published studies lead to expect of a shift average; nothing for shorter times. */
    public static Optional<Prior> prior(Reading.Samples group, Task task, Figures figures) {
        Result estimate = of(task, figures, group.agent());
        return estimate.screening()
                .filter(s -> group.averaging() == Averaging.TWA)
                .flatMap(s -> figures.in(group.unit(), BigDecimal.ONE, estimate.unit(), group.agent())
                        .map(one -> s.prior().scaled(one.doubleValue())));
    }

    private Result estimate(String agent) {
        Unit unit = gas(agent) ? Unit.PPM : Unit.MG_M3;
        Optional<String> process = needed("process", "task.process").map(this::kin);
        Optional<String> place = needed("place", "task.place");
        if (place.filter("confined-space"::equals).isPresent()) {
            lacks.add("An estimate opens no confined space. Measure before entry and during the work.");
        }
        if (!lacks.isEmpty()) {
            return new Result(Optional.empty(), lacks, unit);
        }
        boolean enclosed = place.orElseThrow().equals("enclosed");
        Optional<Joined> fume = enclosed ? published.enclosedFume(process.get()) : published.fume(process.get());
        Optional<Joined> level = agent.equals(PublishedLevels.FUME)
                ? fume
                : published.agent(fume, process.get(), agent, answer("consumable"));
        if (level.isEmpty()) {
            lack(agent, process.get(), fume.isPresent());
            return new Result(Optional.empty(), lacks, unit);
        }
        return new Result(moved(agent, process.get(), place.get(), level.get(), fume, unit), lacks, unit);
    }

    private void lack(String agent, String process, boolean fume) {
        if (gas(agent)) {
            lacks.add("No published exposure to " + agent + " is held for the process " + process
                    + ". Measure it with a direct-reading instrument.");
        } else if (!fume) {
            lacks.add("No estimate is offered for the process " + process
                    + ": no published exposure and no fume rate is held. Measure it.");
        } else if (answer("consumable").isEmpty()) {
            lacks.add("No published exposure to " + agent + " is held for the process " + process
                    + ". Name the wire or electrode in estimate.consumable, or measure.");
        } else {
            lacks.add("No emission of " + agent + " is held for "
                    + answer("consumable").orElse("?") + " with the process " + process
                    + ". Correct estimate.consumable, or measure.");
        }
    }

    private Optional<Screening> moved(
            String agent, String process, String place, Joined level, Optional<Joined> fume, Unit unit) {
        boolean enclosed = place.equals("enclosed");
        boolean gas = gas(agent);
        from(level, agent, process);
        Spread room = gas ? Spread.exactly(1) : room(place);
        Spread arc = arc(process);
        Spread use = gas ? Spread.exactly(1) : use(process);
        Spread extraction = gas ? Spread.exactly(1) : extraction();
        Spread all = room.times(arc).times(use).times(extraction);
        if (!lacks.isEmpty()) {
            return Optional.empty();
        }
        double daily = Math.log(published.figure(enclosed ? "daily-enclosed" : "daily-open"));
        double unsure = Math.sqrt(
                level.variance() + published.variance("study-spread") + all.deviationLog() * all.deviationLog());
        OptionalDouble floor = OptionalDouble.empty();
        if (enclosed && !gas && amount("air-changes").isEmpty()) {
            double share = agent.equals(PublishedLevels.FUME)
                    ? 1
                    : Math.exp(level.log() - fume.orElse(level).log());
            floor = published.highestEnclosed().stream()
                    .map(h -> h * Math.min(1, share))
                    .findFirst();
            floor.ifPresent(f -> steps.add("Ventilation unknown in an enclosed place: never below the highest published"
                    + " 95th percentile, " + Words.number(f) + " " + unit.symbol() + "."));
        }
        steps.add("A welding helmet without supplied air gets no credit. Time outside the task counts like the task.");
        return Optional.of(new Screening(
                level.log() + Math.log(all.median()),
                unsure,
                daily,
                floor,
                unit.symbol(),
                provenance(level, all.median()),
                steps));
    }

    private void from(Joined level, String agent, String process) {
        figures.all(PublishedExposure.class)
                .filter(r -> level.studies().contains(r.study())
                        && r.process().equals(process)
                        && PublishedLevels.metal(r.agent()).equals(PublishedLevels.metal(agent)))
                .forEach(r -> steps.add(name(r.study()) + ": geometric mean "
                        + r.centre().toPlainString() + " "
                        + r.unit().symbol() + ", geometric standard deviation "
                        + r.deviation().toPlainString() + ", " + r.place() + "; sampler: " + r.sampler() + "."));
        if (level.studies().isEmpty()) {
            steps.add(
                    "No published study of this process and agent is held: the level is taken from what other processes"
                            + " show, by emission, share of the fume, or figures of the trade (from memory).");
        }
        steps.add("Together: median " + Words.number(Math.exp(level.log())) + ", which may be off by a factor of "
                + Words.number(Math.exp(Math.sqrt(level.variance() + published.variance("study-spread"))))
                + " for one place.");
    }

    private static String name(String study) {
        String[] parts = study.split("-");
        return parts[0].substring(0, 1).toUpperCase(java.util.Locale.ROOT) + parts[0].substring(1) + " "
                + parts[parts.length - 1];
    }

    private static String provenance(Joined level, double by) {
        int n = level.studies().size();
        String from = n == 0
                ? "From other processes, since no published study of this one is held"
                : "From " + n + " published " + (n == 1 ? "study" : "studies") + " of this process ("
                        + new TreeSet<>(level.studies())
                                .stream().map(RoomEstimate::name).collect(Collectors.joining(", "))
                        + ")";
        return from + ", moved by your room, arc time and extraction (times " + Words.number(by) + ").";
    }

    /** The room of the task over the usual one of such a place, by the air at the arc. */
    private Spread room(String place) {
        if (place.equals("outdoors")) {
            double ratio = published.figure("outdoors-over-indoors");
            steps.add("Outdoors over indoors: times " + Words.number(ratio) + ".");
            return Spread.exactly(ratio);
        }
        OptionalDouble volume = amount("room-volume");
        OptionalDouble changes = amount("air-changes");
        Optional<String> movement = answer("air-movement").filter(m -> !m.equals("unknown"));
        if (volume.isEmpty() && changes.isEmpty() && movement.isEmpty()) {
            return Spread.exactly(1);
        }
        double usualVolume = middle("volume", place);
        double usualChanges = middle("air-changes", place);
        double usual = near(usualVolume, usualChanges, middle("exchange", "unknown"));
        double here = near(
                volume.orElse(usualVolume),
                changes.orElse(usualChanges),
                middle("exchange", movement.orElse("unknown")));
        if (!lacks.isEmpty()) {
            return Spread.exactly(1);
        }
        double ratio = Math.max(here / usual, published.figure("least-room-ratio"));
        steps.add("This room over the usual one: times " + Words.number(ratio) + ".");
        return Spread.exactly(ratio);
    }

    /** The average at the arc over the task, for one unit of fume per minute. */
    private double near(double volume, double changes, double exchange) {
        double radius = middle("near-radius", ANY);
        double near = new TwoZoneRoom.HalfSphere(radius, 1).volume();
        if (!(volume > near) || !(changes >= 0)) {
            lacks.add("A room of " + Words.number(volume) + " m3 with " + Words.number(changes)
                    + " air changes an hour is not possible. Correct estimate.room-volume or estimate.air-changes.");
            return 1;
        }
        double minutes = amount("time-on-task").orElse(TimeWeightedAverage.EIGHT_HOURS);
        return new TwoZoneRoom(1, changes * volume / MINUTES, exchange, near, volume - near)
                .average(Math.max(minutes, 1), TwoZoneRoom.Fields.CLEAN)
                .near();
    }

    private double middle(String quantity, String of) {
        return published
                .range(quantity, of, ANY)
                .map(PublishedLevels::middle)
                .map(Math::exp)
                .orElseThrow(() -> new IllegalStateException("No row for " + quantity + " of " + of + "."));
    }

    private Spread arc(String process) {
        OptionalDouble given = amount("arc-time");
        if (given.isEmpty()) {
            return Spread.exactly(1);
        }
        if (given.getAsDouble() <= 0) {
            lacks.add("The arc burns for 0 % of the time. Leave estimate.arc-time out.");
            return Spread.exactly(1);
        }
        double ratio = given.getAsDouble() / PERCENT / Math.exp(PublishedLevels.middle(published.arc(process)));
        steps.add("Arc time over the usual one: times " + Words.number(ratio) + ".");
        return Spread.exactly(ratio);
    }

    /** The fume of the wire that melts here over the usual rate of the process. */
    private Spread use(String process) {
        OptionalDouble rate = amount("consumable-rate");
        if (rate.isEmpty()) {
            return Spread.exactly(1);
        }
        Optional<QuantityRange> content = answer("consumable").flatMap(c -> published
                .range("fume-per-consumable", c, answer("process").orElse(process))
                .or(() -> published.range("fume-per-consumable", c, process)));
        Optional<QuantityRange> usual = published.range("fume-rate", process, ANY);
        if (content.isEmpty() || usual.isEmpty()) {
            lacks.add("The use of consumable is given, but no fume of it is held. Answer estimate.consumable, or leave"
                    + " estimate.consumable-rate out.");
            return Spread.exactly(1);
        }
        double here = content.get().high().doubleValue() * rate.getAsDouble() * MILLIGRAMS / MINUTES / SECONDS;
        double ratio = here / Math.exp(PublishedLevels.middle(usual.get()));
        steps.add("Wire or electrode melted here over the usual fume rate: times " + Words.number(ratio) + ".");
        return Spread.exactly(ratio);
    }

    private Spread extraction() {
        return answer("extraction")
                .flatMap(word -> published.range("extraction-left", word, ANY))
                .map(r -> {
                    Spread left = Spread.between(r.low().doubleValue(), r.high().doubleValue());
                    steps.add("Extraction leaves " + r.low().toPlainString() + " to "
                            + r.high().toPlainString() + " in field studies: times " + Words.number(left.median())
                            + ".");
                    return left;
                })
                .orElse(Spread.exactly(1));
    }

    /** The process whose studies stand for this one, where its own are of other metals. */
    private String kin(String process) {
        Optional<String> metal = answer("base-metal");
        boolean own = metal.isEmpty()
                || figures.all(PublishedExposure.class)
                        .anyMatch(r -> r.process().equals(process)
                                && (r.metal().equals(metal.get()) || r.metal().equals(ANY)));
        return own
                ? process
                : figures.all(QuantityRange.class)
                        .filter(r ->
                                r.quantity().equals("stands-for") && r.with().equals(process))
                        .map(QuantityRange::of)
                        .findFirst()
                        .orElse(process);
    }

    private boolean gas(String agent) {
        return figures.all(Agent.class)
                .anyMatch(a -> a.id().equals(agent) && !a.form().equals("particle"));
    }

    private Optional<String> needed(String question, String path) {
        Optional<String> found = answer(question);
        if (found.isEmpty()) {
            lacks.add("Without an answer to " + path + " there is no estimate. Give it, or measure.");
        }
        return found;
    }

    private Optional<String> answer(String question) {
        return task.inputs().stream()
                .filter(i -> i instanceof Answer a && a.question().equals(question))
                .map(i -> ((Answer) i).value())
                .findFirst();
    }

    private OptionalDouble amount(String question) {
        return ShiftAssessment.amount(task, question);
    }
}
