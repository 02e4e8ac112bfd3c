package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fumewarden.assessment.PublishedLevels.Joined;
import org.fumewarden.exposure.Prior;
import org.fumewarden.exposure.Screening;
import org.fumewarden.exposure.Spread;
import org.fumewarden.model.Agent;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Figures;
import org.fumewarden.model.Member;
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
    private static final String ANY = "any";

    private final Task task;
    private final Answers answers;
    private final ExposureTables figures;
    private final PublishedLevels published;
    private final List<String> lacks = new ArrayList<>();
    private final List<String> steps = new ArrayList<>();

    private RoomEstimate(Task task, ExposureTables figures) {
        this.task = task;
        this.answers = new Answers(task);
        this.figures = figures;
        this.published = figures.published();
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
    public static Result of(Task task, ExposureTables figures, String agent) {
        return new RoomEstimate(task, figures).estimate(agent);
    }

    /** What published studies lead to expect of a shift average; nothing for shorter times. */
    public static Optional<Prior> prior(Reading.Samples group, Task task, ExposureTables figures) {
        Result estimate = of(task, figures, group.agent());
        return estimate.screening()
                .filter(s -> group.averaging() == Averaging.TWA)
                .flatMap(s -> figures.in(group.unit(), BigDecimal.ONE, estimate.unit(), group.agent())
                        .map(one ->
                                s.prior().scaled(one.doubleValue() * new ReferencePeriod(task, figures).times(group))));
    }

    private Result estimate(String agent) {
        Unit unit = gas(agent) ? Unit.PPM : Unit.MG_M3;
        Optional<String> process = needed("process", "task.process").map(this::kin);
        Optional<String> place = needed("place", "task.place");
        needed("base-metal", "task.base-metal");
        if (place.filter("confined-space"::equals).isPresent()) {
            lacks.add("An estimate never permits entry to a confined space. Test the air before entry and throughout.");
        }
        if (!lacks.isEmpty()) {
            return new Result(Optional.empty(), lacks, unit);
        }
        boolean enclosed = place.orElseThrow().equals("enclosed");
        Optional<String> named = answers.word("consumable");
        String base = answers.word("base-metal").orElse(ANY);
        Optional<Joined> fume = published.level(process.get(), PublishedLevels.FUME, enclosed, named, base);
        Optional<Joined> level = published.level(process.get(), agent, enclosed, named, base);
        if (named.isEmpty() && !agent.equals(PublishedLevels.FUME) && !gas(agent)) {
            published
                    .consumables()
                    .usual(process.get(), base)
                    .ifPresent(c -> steps.add("No wire or electrode is named: " + c.toUpperCase(Locale.ROOT)
                            + " is assumed, as is usual. Name it in estimate.consumable."));
        }
        if (level.isEmpty()) {
            lack(agent, process.get(), fume.isPresent());
            return new Result(Optional.empty(), lacks, unit);
        }
        from(level.get(), agent, process.get());
        steps.add("A welding helmet without supplied air gets no credit. Time outside the task counts like the task.");
        RoomRatio ratio = new RoomRatio(answers, published, steps, lacks, false);
        Joined most = named.isEmpty() ? worst(process.get(), agent, enclosed, base, level.get()) : level.get();
        Optional<Screening> whole = whole(agent);
        Optional<Screening> found = moved(agent, process.get(), place.get(), level.get(), fume, ratio)
                .map(f -> whole.map(f::within).orElse(f))
                .map(f -> atWorst(f, most, fume, agent, process.get(), place.get()));
        return new Result(found, lacks, unit);
    }

    /** What counts is not below the figure that the worst answers to the open lines would give, as far as the whole allows. */
    private Screening atWorst(
            Screening usual, Joined level, Optional<Joined> fume, String agent, String process, String place) {
        RoomRatio ratio = new RoomRatio(answers, published, steps, lacks, true);
        double worst = moved(agent, process, place, level, fume, ratio)
                .flatMap(w -> w.governing().value())
                .map(w -> usual.whole()
                        .flatMap(all -> all.governing().value())
                        .map(all -> Math.min(all, w))
                        .orElse(w))
                .orElseThrow();
        if (usual.governing().value().orElseThrow() >= worst) {
            return usual;
        }
        List<String> open = new ArrayList<>(ratio.open());
        if (answers.word("consumable").isEmpty() && !agent.equals(PublishedLevels.FUME)) {
            open.add("wire or electrode used");
        }
        return usual.atLeast(
                worst,
                "Counted: " + Figures.shown(worst) + " " + usual.unit() + ", since the task does not state: "
                        + String.join(", ", open) + ". ",
                steps.stream().distinct().toList());
    }

    /** The level with the wire or electrode that gives most of the agent. */
    private Joined worst(String process, String agent, boolean enclosed, String base, Joined usual) {
        return published
                .consumables()
                .all()
                .flatMap(c -> published.level(process, agent, enclosed, Optional.of(c), base).stream())
                .filter(l -> l.log() > usual.log())
                .max(Comparator.comparingDouble(Joined::log))
                .orElse(usual);
    }

    /** The fume that the agent is a part of. */
    private Optional<Screening> whole(String agent) {
        return figures.all(Member.class)
                .filter(m ->
                        m.set().equals(PublishedLevels.PART_OF_FUME) && m.item().equals(agent))
                .findFirst()
                .flatMap(m -> of(task, figures, PublishedLevels.FUME).screening());
    }

    private void lack(String agent, String process, boolean fume) {
        if (gas(agent)) {
            lacks.add("No published exposure to " + agent + " is held for the process " + process
                    + ". Measure it with a direct-reading instrument.");
        } else if (!fume) {
            lacks.add("No estimate is offered for the process " + process
                    + ": no published exposure and no fume rate is held. Measure it.");
        } else if (answers.word("consumable").isEmpty()) {
            lacks.add("No published exposure to " + agent + " is held for the process " + process
                    + ". Name the wire or electrode in estimate.consumable, or measure.");
        } else {
            lacks.add("No emission of " + agent + " is held for "
                    + answers.word("consumable").orElse("?") + " with the process " + process
                    + ". Correct estimate.consumable, or measure.");
        }
    }

    private Optional<Screening> moved(
            String agent, String process, String place, Joined level, Optional<Joined> fume, RoomRatio ratio) {
        boolean enclosed = place.equals("enclosed");
        boolean gas = gas(agent);
        Unit unit = gas ? Unit.PPM : Unit.MG_M3;
        // Field studies of room and extraction are of fume; a gas is moved by the arc time alone.
        Spread all = gas ? ratio.arc(process) : ratio.all(place, process);
        if (!lacks.isEmpty()) {
            return Optional.empty();
        }
        double daily = Math.log(published.figure(
                enclosed ? "daily-enclosed" : agent.equals(PublishedLevels.FUME) ? "daily-fume" : "daily-part"));
        // The samples from enclosed places are of many places, so their spread holds that between places already.
        double unsure = Math.sqrt(
                level.variance() + (enclosed ? 0 : published.between()) + all.deviationLog() * all.deviationLog());
        OptionalDouble floor = OptionalDouble.empty();
        if (!gas && ratio.beyond()) {
            double share = agent.equals(PublishedLevels.FUME)
                    ? 1
                    : Math.exp(level.log() - fume.orElse(level).log());
            floor = published.highestEnclosed().stream()
                    .map(h -> h * Math.min(1, share))
                    .findFirst();
            floor.ifPresent(f -> steps.add(
                    "A room worse than any that was studied: never below the highest published 95th percentile, "
                            + Figures.shown(f) + " " + unit.symbol() + "."));
        }
        return Optional.of(new Screening(
                level.log() + Math.log(all.median()),
                unsure,
                daily,
                floor,
                Optional.empty(),
                unit.symbol(),
                provenance(level, gas ? Optional.empty() : fume, all.median()),
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
        steps.add("Together: median " + Figures.shown(Math.exp(level.log())) + ", which may be off by a factor of "
                + Figures.shown(Math.exp(Math.sqrt(level.variance() + published.between())))
                + " for one place.");
    }

    private static String name(String study) {
        String[] parts = study.split("-");
        return parts[0].substring(0, 1).toUpperCase(Locale.ROOT) + parts[0].substring(1) + " "
                + parts[parts.length - 1];
    }

    private static String provenance(Joined level, Optional<Joined> fume, double by) {
        Set<String> own = level.studies();
        Set<String> ofFume = fume.map(Joined::studies).orElse(Set.of());
        String from = !own.isEmpty()
                ? "From " + studies(own) + " of this process"
                : !ofFume.isEmpty()
                        ? "From the fume in " + studies(ofFume) + " of this process and the share of this agent in it"
                        : "From other processes, since no published study of this one is held";
        return from + ", moved by your room, arc time and extraction (times " + Figures.shown(by) + ").";
    }

    private static String studies(Set<String> found) {
        return found.size() + " published " + (found.size() == 1 ? "study" : "studies") + " ("
                + new TreeSet<>(found).stream().map(RoomEstimate::name).collect(Collectors.joining(", ")) + ")";
    }

    /** The process whose studies stand for this one, where its own are of other metals. */
    private String kin(String process) {
        Optional<String> metal = answers.word("base-metal");
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
        Optional<String> found = answers.word(question);
        if (found.isEmpty()) {
            lacks.add("Without an answer to " + path + " there is no estimate. Give it, or measure.");
        }
        return found;
    }
}
