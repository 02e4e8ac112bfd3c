package org.fumewarden.shift;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.model.Agent;
import org.fumewarden.model.Concentrations;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Member;
import org.fumewarden.model.Row;
import org.fumewarden.model.Threshold;
import org.fumewarden.model.Unit;
import org.fumewarden.task.Task;

/** The air of a task by the rows of its code. */
final class Air {
    private static final List<String> TOTALS =
            List.of("welding-fume", "dust-inhalable", "dust-respirable", "rosin-flux-fume", "diesel-exhaust");

    private final Task task;
    private final List<Row> rows;

    Air(Task task, List<Row> rows) {
        this.task = task;
        this.rows = rows;
    }

    private <R extends Row> List<R> rows(Class<R> type) {
        return rows.stream().filter(type::isInstance).map(type::cast).toList();
    }

    /** The gases that stand in the task file with a level, in its order. */
    List<Agent> gases() {
        return agents("gas");
    }

    private List<Agent> agents(String form) {
        return exposures().stream()
                .filter(exposure -> exposure.level().signum() > 0)
                .map(Exposure::agent)
                .distinct()
                .flatMap(id -> rows(Agent.class).stream()
                        .filter(agent -> agent.id().equals(id) && agent.form().equals(form)))
                .toList();
    }

    private List<Exposure> exposures() {
        return task.inputs().stream()
                .filter(Exposure.class::isInstance)
                .map(Exposure.class::cast)
                .toList();
    }

    /** Highest level of a gas in ppm over all averaging times, empty when it has no molar mass. */
    OptionalDouble ppm(Agent agent) {
        return exposures().stream()
                .filter(exposure -> exposure.agent().equals(agent.id()))
                .flatMap(exposure -> ppm(exposure.level(), exposure.unit(), agent).stream())
                .mapToDouble(BigDecimal::doubleValue)
                .max();
    }

    /** Lowest limit of a gas in ppm, of whichever averaging time; what may come through the filter is never more. */
    OptionalDouble lowestLimit(Agent agent) {
        return rows(Limit.class).stream()
                .filter(limit -> limit.agent().equals(agent.id()))
                .flatMap(limit -> ppm(limit.value(), limit.unit(), agent).stream())
                .mapToDouble(BigDecimal::doubleValue)
                .min();
    }

    private Optional<BigDecimal> ppm(BigDecimal level, Unit unit, Agent agent) {
        Optional<Threshold> molarVolume = rows(Threshold.class).stream()
                .filter(threshold -> threshold.id().equals("molar-volume"))
                .findFirst();
        if (unit != Unit.PPM && (agent.molarMass().isEmpty() || molarVolume.isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(
                unit == Unit.PPM ? level : Concentrations.convert(level, unit, Unit.PPM, agent, molarVolume.get()));
    }

    /** Whether carbon lets the gas through, so that it takes up no room in a filter. */
    boolean unadsorbed(Agent agent) {
        return rows(Member.class).stream()
                .anyMatch(m -> m.set().equals("passes-carbon") && m.item().equals(agent.id()));
    }

    /** What the marking system of the code holds the gas with. */
    Optional<FilterMatch> match(Agent agent) {
        List<String> systems = rows(Member.class).stream()
                .filter(member -> member.set().equals("systems"))
                .map(Member::item)
                .toList();
        return rows(FilterMatch.class).stream()
                .filter(match -> match.agent().equals(agent.id()) && systems.contains(match.system()))
                .findFirst();
    }

    /**
     * Dust in mg/m3: the larger of the highest total and the sum of the single metals, since a total may be missing and
     * parts may be missing too. Empty when no particle has a level.
     */
    OptionalDouble dust() {
        List<Agent> particles = agents("particle");
        if (particles.isEmpty()) {
            return OptionalDouble.empty();
        }
        double total = particles.stream()
                .filter(agent -> TOTALS.contains(agent.id()))
                .mapToDouble(this::milligrams)
                .max()
                .orElse(0);
        double parts = particles.stream()
                .filter(agent -> !TOTALS.contains(agent.id()))
                .mapToDouble(this::milligrams)
                .sum();
        return OptionalDouble.of(Math.max(total, parts));
    }

    private double milligrams(Agent agent) {
        return exposures().stream()
                .filter(exposure -> exposure.agent().equals(agent.id()) && exposure.unit() == Unit.MG_M3)
                .mapToDouble(exposure -> exposure.level().doubleValue())
                .max()
                .orElse(0);
    }
}
