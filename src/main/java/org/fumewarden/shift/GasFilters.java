package org.fumewarden.shift;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.endurance.ChangeSchedule;
import org.fumewarden.endurance.ChangeTime;
import org.fumewarden.endurance.CurvePoint;
import org.fumewarden.endurance.FilterFlow;
import org.fumewarden.endurance.FilterMark;
import org.fumewarden.endurance.FilterMarks;
import org.fumewarden.endurance.GasUse;
import org.fumewarden.model.Agent;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;
import org.fumewarden.task.Task;

/** The change time of the gas filter for every gas of a task. */
final class GasFilters {
    private static final int POINTS = 8;
    private static final String CARTRIDGE = " cartridge";

    private final Task task;
    private final UnitAnswers given;
    private final Air air;
    private final ShiftTables tables;
    private final Bounds bounds;
    private final Set<String> demanded;

    GasFilters(Task task, UnitAnswers given, Air air, ShiftTables tables, Set<String> demanded) {
        this.demanded = Set.copyOf(demanded);
        this.task = task;
        this.given = given;
        this.air = air;
        this.tables = tables;
        this.bounds = new Bounds(task, given, tables);
    }

    List<GasLife> lives() {
        Optional<FilterMark> mark = europeanMark();
        List<Agent> gases = air.gases();
        long taken = gases.stream().filter(agent -> !passes(agent)).count();
        return gases.stream()
                .filter(this::needed)
                .map(agent -> life(agent, taken > 1, mark))
                .toList();
    }

    /** Whether a gas goes through every filter, so that it takes up no room in one meant for another. */
    private boolean passes(Agent agent) {
        return air.unadsorbed(agent);
    }

    /** What to know of gases for which no filter is calculated, or which none holds. */
    List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        for (Agent agent : air.gases()) {
            if (passes(agent)) {
                remarks.add("No filter here protects against " + agent.name()
                        + ", and the change times of the others do not cover it."
                        + " Keep it below its limit, watched by a direct-reading instrument, or use supplied air.");
            } else if (!needed(agent)) {
                remarks.add(
                        "No gas filter is calculated for " + agent.name() + ", which is at or below its lowest limit."
                                + " It still counts as another gas beside one that is above its limit.");
            }
        }
        return remarks;
    }

    /** True when the rules demand a filter for the gas, when it is above a limit, or when that cannot be told. */
    private boolean needed(Agent agent) {
        OptionalDouble ppm = air.ppm(agent);
        OptionalDouble limit = air.lowestLimit(agent);
        return demanded.contains(agent.id())
                || ppm.isEmpty()
                || limit.isEmpty()
                || ppm.getAsDouble() > limit.getAsDouble();
    }

    private GasLife life(Agent agent, boolean otherGases, Optional<FilterMark> mark) {
        Optional<FilterMatch> match = air.match(agent);
        if (match.isEmpty() || Set.of("none", "ask").contains(match.get().type())) {
            boolean none = match.isPresent() && match.get().type().equals("none");
            return refused(
                    agent,
                    "",
                    none ? Soundness.NOT_HELD : Soundness.HOLDING_NOT_SHOWN,
                    (none ? "No filter protects against " : "No filter type is listed for ") + agent.name() + ".",
                    none ? "Use supplied air." : "Ask the manufacturer in writing. Until then use supplied air.");
        }
        Fitted fitted = Fitted.of(match.get(), mark, given.word("filter-mark"));
        if (!fitted.holds()) {
            return refused(
                    agent,
                    fitted.written(),
                    Soundness.NOT_HELD,
                    "The filter marked " + fitted.written() + " does not protect against " + agent.name()
                            + ", which needs type " + match.get().type() + ".",
                    "Fit a filter of that type.");
        }
        return use(agent, otherGases)
                .value()
                .map(use -> reckoned(agent, match.get(), fitted, use))
                .orElseGet(() -> {
                    Refused<GasUse> why = (Refused<GasUse>) use(agent, otherGases);
                    return refused(agent, fitted.written(), why.status(), why.found(), why.remedy());
                });
    }

    private GasLife reckoned(Agent agent, FilterMatch match, Fitted fitted, GasUse use) {
        List<String> remarks = new ArrayList<>();
        if (!fitted.stated()) {
            remarks.add("kit.filter-mark is not given: the lowest class, " + fitted.written() + ", is assumed.");
        }
        if (given.word("filter-used").isEmpty()) {
            remarks.add("kit.filter-used is not given: the time holds only for a factory-fresh filter.");
        }
        if (given.day("filter-expiry").isEmpty()) {
            remarks.add("kit.filter-expiry is not given: read the date on the filter; past it there is no use time.");
        }
        Reckoning<ChangeTime> time = ChangeSchedule.shortest(bounds.of(agent, match, fitted, use));
        if (time instanceof Reckoned<ChangeTime> found) {
            remarks.addAll(found.remarks());
        }
        double share = use.exitPpm() / use.ppm();
        return new GasLife(
                agent.id(),
                agent.name(),
                fitted.written(),
                time,
                curve(agent, use),
                Optional.of(Math.min(1, share)),
                remarks.stream().distinct().toList());
    }

    private List<CurvePoint> curve(Agent agent, GasUse use) {
        return bounds.vapour(agent)
                .filter(vapour -> vapour.modelHolds())
                .flatMap(vapour -> bounds.bed().map(bed -> tables.model()
                        .curve(vapour, bed, use.ppm(), use.flow().litresPerMinute(), use.temperature(), POINTS)))
                .orElse(List.of());
    }

    private static GasLife refused(Agent agent, String filter, Soundness reason, String found, String remedy) {
        return new GasLife(
                agent.id(),
                agent.name(),
                filter,
                Reckoning.refuse(reason, found, remedy),
                List.of(),
                Optional.empty(),
                List.of());
    }

    /** What the filter meets; refused while a figure is missing that would only ever shorten the time. */
    private Reckoning<GasUse> use(Agent agent, boolean otherGases) {
        OptionalDouble ppm = air.ppm(agent);
        OptionalDouble exit = air.lowestLimit(agent);
        if (ppm.isEmpty() || exit.isEmpty()) {
            return Reckoning.refuse(
                    Soundness.NOT_GIVEN,
                    ppm.isEmpty()
                            ? agent.name() + " has no concentration in ppm and no molar mass to calculate it."
                            : "No limit is included for " + agent.name()
                                    + ", so what may come through the filter is not known.",
                    ppm.isEmpty() ? "Give it in ppm." : "Look up whether the local law has one.");
        }
        Reckoning<FilterFlow> flow = flow();
        Optional<Reckoning<GasUse>> missing =
                given.missing("The change time", "atmosphere.humidity", "atmosphere.temperature", "kit.filters-fitted");
        if (flow instanceof Refused<FilterFlow> refused) {
            return refused.as();
        }
        return missing.orElseGet(() -> Reckoning.of(new GasUse(
                ppm.getAsDouble(),
                exit.getAsDouble(),
                flow.value().orElseThrow(),
                given.number("humidity").getAsDouble(),
                given.number("temperature").getAsDouble(),
                otherGases,
                given.yes("filter-used"))));
    }

    /** What goes through one filter: the flow of the blower, or the breath where there is none. */
    private Reckoning<FilterFlow> flow() {
        int filters = Math.max(1, given.count("filters-fitted").orElse(1));
        if (given.word("blower").filter("false"::equals).isPresent()) {
            return Reckoning.of(
                    FilterFlow.ofBreathing(Breathing.demand(given, tables).mean(), filters));
        }
        return given.number("measured-flow").isPresent()
                ? Reckoning.of(FilterFlow.ofBlower(given.number("measured-flow").getAsDouble(), filters))
                : Reckoning.refuse(
                        Soundness.NOT_GIVEN,
                        "The air that goes through the filter is unknown: kit.measured-flow is not given.",
                        "Add it, or kit.blower: false for a mask without blower.");
    }

    /** The mark on the filter where it is written after the European standards; a wrong one is a fault of the file. */
    private Optional<FilterMark> europeanMark() {
        Optional<String> written = given.word("filter-mark");
        if (written.isEmpty() || Fitted.cartridges(written.get(), tables.cartridgeTests())) {
            return Optional.empty();
        }
        Reckoning<FilterMark> mark = FilterMarks.read(written.get());
        if (mark instanceof Refused<FilterMark> refused) {
            String known = tables.cartridgeTests().stream()
                    .map(test -> test.test().mark())
                    .distinct()
                    .collect(Collectors.joining(", "));
            throw new InputException(new Problem(
                    task.file(),
                    given.line("kit.filter-mark"),
                    "kit.filter-mark",
                    "cannot be used. " + refused.found(),
                    refused.remedy().replaceAll("\\.$", "") + ", or name the cartridge: " + known + "."));
        }
        return mark.value();
    }
}
