package org.fumewarden.shift;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.fumewarden.endurance.AirflowCheck;
import org.fumewarden.endurance.AirflowVerdict;
import org.fumewarden.endurance.BreathDemand;
import org.fumewarden.endurance.ChangeTime;
import org.fumewarden.endurance.DustLoad;
import org.fumewarden.endurance.FilterCadence;
import org.fumewarden.endurance.RunTime;
import org.fumewarden.endurance.ShiftNeeds;
import org.fumewarden.endurance.ShiftPlan;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Row;
import org.fumewarden.model.Soundness;
import org.fumewarden.task.Task;

/** Reckons one shift with the unit in use. */
public final class ShiftReckoner {
    private static final double HOUR = 60;
    private static final double PERCENT = 100;

    private final Task task;
    private final UnitAnswers given;
    private final ShiftTables tables;
    private final List<Row> rows;
    private final Dust dust;
    private final GasFilters filters;
    private final Battery battery;
    private final List<String> remarks = new ArrayList<>();

    /**
     * A reckoner for a task.
     *
     * @param rows of the code in force on the day of the task
     * @param demanded ids of the gases that the rules want held by a filter
     */
    public ShiftReckoner(Task task, List<Row> rows, ShiftTables tables, Set<String> demanded) {
        Air air = new Air(task, rows);
        this.task = task;
        this.given = new UnitAnswers(task);
        this.tables = tables;
        this.rows = List.copyOf(rows);
        this.dust = new Dust(given, air, tables);
        this.filters = new GasFilters(task, given, air, tables, demanded);
        this.battery = new Battery(task, given, dust, tables);
    }

    /**
     * The sheet of the shift.
     *
     * @throws org.fumewarden.codes.InputException when the task file gives a figure that cannot be
     */
    public ShiftSheet reckon() {
        Reckoning<Stretches> stretches = Stretches.of(given);
        OptionalDouble wear = stretches.value().map(Stretches::total).stream()
                .mapToDouble(Double::doubleValue)
                .findFirst();
        Reckoning<AirflowVerdict> airflow = airflow();
        List<GasLife> gases = filters.lives();
        Reckoning<FilterCadence> cadence =
                wear.isPresent() ? dust.cadence(wear.getAsDouble()) : ((Refused<Stretches>) stretches).as();
        Reckoning<RunTime> run = battery.now();
        Reckoning<ShiftPlan> plan = plan(stretches, airflow, gases, cadence, run);
        remarks.addAll(battery.remarks());
        oilMist();
        remarks.addAll(filters.remarks());
        return new ShiftSheet(
                airflow,
                gases,
                milligrams(wear),
                cadence,
                run,
                plan,
                task.curves(),
                wear.isPresent() ? OptionalDouble.of(wear.getAsDouble() / HOUR) : OptionalDouble.empty(),
                battery.filterNow(),
                Eyes.shade(given, tables, rows),
                remarks);
    }

    private Reckoning<AirflowVerdict> airflow() {
        if (given.word("blower").filter("false"::equals).isPresent()) {
            return Reckoning.refuse(
                    Soundness.NOT_GIVEN,
                    "The unit has no blower, so there is neither flow nor battery to plan with.",
                    "Change any filters by the times below, and follow the advice on this task.");
        }
        if (given.word("work-rate").isEmpty()) {
            remarks.add("task.work-rate is not given: very hard work is assumed.");
        }
        if (given.number("altitude").isEmpty()) {
            remarks.add("atmosphere.altitude is not given: sea level is assumed. Higher up the wearer needs more air.");
        }
        thinAir();
        BreathDemand demand = Breathing.demand(given, tables);
        return given.<AirflowVerdict>missing("The air flow", "kit.minimum-design-flow")
                .orElseGet(() -> AirflowCheck.compare(
                        given.number("measured-flow"),
                        given.number("minimum-design-flow").getAsDouble(),
                        demand.work(),
                        demand.speech(),
                        demand.factor()));
    }

    private void thinAir() {
        long more = Math.round((Breathing.demand(given, tables).factor() - 1) * PERCENT);
        if (more >= 1) {
            remarks.add(
                    "At this height the wearer needs " + more + " % more air. That is allowed for. What thin"
                            + " air does to the blower is not, because no source was found. Check the flow where the work is done.");
        }
    }

    private void oilMist() {
        if (given.word("oil-mist").filter("false"::equals).isEmpty()) {
            remarks.add((given.yes("oil-mist") ? "There is oil mist" : "Unknown: whether there is oil mist")
                    + ". How oil loads the filter is not calculated. A loaded filter lets more of it through without"
                    + " getting harder to breathe through (J. Aerosol Sci. 23 (1992) 723-735, abstract). Change the"
                    + " particle filter at a written time, not by the time above.");
        }
    }

    private Reckoning<Double> milligrams(OptionalDouble wear) {
        Reckoning<DustLoad> load = dust.load();
        if (load instanceof Refused<DustLoad> refused) {
            return refused.as();
        }
        return wear.isEmpty()
                ? Reckoning.refuse(Soundness.NOT_GIVEN, "The time of wear is not given.", "Add task.time-on-task.")
                : Reckoning.of(load.value().orElseThrow().milligrams(wear.getAsDouble()));
    }

    private Reckoning<ShiftPlan> plan(
            Reckoning<Stretches> stretches,
            Reckoning<AirflowVerdict> airflow,
            List<GasLife> gases,
            Reckoning<FilterCadence> cadence,
            Reckoning<RunTime> run) {
        Optional<Refused<?>> refused = List.<Reckoning<?>>of(stretches, airflow, run).stream()
                .filter(Refused.class::isInstance)
                .<Refused<?>>map(each -> (Refused<?>) each)
                .findFirst();
        Optional<Refused<?>> gas = gases.stream()
                .map(GasLife::time)
                .filter(Refused.class::isInstance)
                .<Refused<?>>map(each -> (Refused<?>) each)
                .findFirst();
        if (refused.or(() -> gas).isPresent()) {
            return refused.or(() -> gas).get().as();
        }
        if (cadence instanceof Refused<FilterCadence> dust && dust.status() != Soundness.NOT_GIVEN) {
            return dust.as();
        }
        Reckoning<RunTime> full = battery.full();
        if (full instanceof Refused<RunTime> none) {
            return none.as();
        }
        double fullPack = full.value().orElseThrow().minutes().low();
        double start = Math.min(fullPack, run.value().orElseThrow().minutes().low());
        Stretches found = stretches.value().orElseThrow();
        return ShiftPlan.of(new ShiftNeeds(
                found.work(),
                found.breaks(),
                fullPack,
                start,
                given.count("spare-packs").orElse(0),
                filterMinutes(gases, cadence),
                given.count("spare-filters").orElse(0),
                given.yes("charge-in-breaks"),
                chargePerMinute(),
                tables.packRules()));
    }

    /** The filter is changed for gas or at the clogged-filter warning, whichever comes first. */
    private static double filterMinutes(List<GasLife> gases, Reckoning<FilterCadence> cadence) {
        double forGas = gases.stream()
                .flatMap(gas -> gas.time().value().stream())
                .mapToDouble(ChangeTime::minutes)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        double forDust = cadence instanceof Reckoned<FilterCadence> found
                ? found.result().mainFilterMinutes()
                : Double.POSITIVE_INFINITY;
        return Math.min(forGas, forDust);
    }

    private double chargePerMinute() {
        OptionalDouble time = given.number("charge-time");
        OptionalDouble warmth = given.number("temperature");
        if (time.isEmpty() || !(time.getAsDouble() >= 1)) {
            return 0;
        }
        if (warmth.isEmpty() || !tables.packRules().mayCharge(warmth.getAsDouble())) {
            remarks.add("The place is too cold or too hot to charge the pack there: charging is not counted.");
            return 0;
        }
        return 1 / time.getAsDouble();
    }
}
