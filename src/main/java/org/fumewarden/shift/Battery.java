package org.fumewarden.shift;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fumewarden.endurance.BlowerModel;
import org.fumewarden.endurance.DustLoad;
import org.fumewarden.endurance.EnduranceCurve;
import org.fumewarden.endurance.EnduranceTable;
import org.fumewarden.endurance.Pack;
import org.fumewarden.endurance.PackShare;
import org.fumewarden.endurance.RunTime;
import org.fumewarden.endurance.Span;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.task.Task;

/** How long a pack runs the unit: by the user's own curve, else by power and energy. */
final class Battery {
    private static final double PERCENT = 100;

    private final Task task;
    private final UnitAnswers given;
    private final Dust dust;
    private final ShiftTables tables;
    private final List<String> remarks = new ArrayList<>();

    Battery(Task task, UnitAnswers given, Dust dust, ShiftTables tables) {
        this.task = task;
        this.given = given;
        this.dust = dust;
        this.tables = tables;
    }

    List<String> remarks() {
        return remarks.stream().distinct().toList();
    }

    /** The fitted pack as it is now. */
    Reckoning<RunTime> now() {
        return given.<RunTime>missing("The run time", "kit.battery-charge").orElseGet(() -> at(charge()));
    }

    /** A full pack of the same kind. */
    Reckoning<RunTime> full() {
        return at(1);
    }

    private double charge() {
        return given.number("battery-charge").getAsDouble() / PERCENT;
    }

    private Reckoning<RunTime> at(double charge) {
        return task.curves().isEmpty() ? modelled(charge) : byCurve(charge);
    }

    private Reckoning<RunTime> byCurve(double charge) {
        String only = task.curves().size() == 1 ? task.curves().get(0).pack() : "";
        String pack = given.word("pack").orElse(only);
        Reckoning<EnduranceCurve> curve = new EnduranceTable(task.curves()).curve(pack);
        if (curve instanceof Refused<EnduranceCurve> refused) {
            return refused.as();
        }
        EnduranceCurve found = curve.value().orElseThrow();
        boolean own = found.scale() == EnduranceCurve.Scale.OWN;
        boolean share = found.scale() == EnduranceCurve.Scale.SHARE;
        String name = own ? "filter-point" : "filter-pressure";
        double worst = found.points().get(found.points().size() - 1).at();
        OptionalDouble warning = given.number("warning-pressure");
        OptionalDouble end = onScale(given.number(name + "-end"), share, warning);
        if (end.isEmpty()) {
            remarks.add("kit." + name + "-end is not given: the last point of the curve is assumed.");
        }
        for (String old : List.of("kit.clogging-stage", "kit.clogging-stage-end")) {
            if (given.line(old) > 0) {
                remarks.add(old + " is an old name, read as " + old.replace("clogging-stage", "filter-point") + ".");
            }
        }
        double stage = Math.max(
                end.orElse(worst), onScale(given.number(name), share, warning).orElse(0));
        List<String> needed = new ArrayList<>(List.of("atmosphere.temperature"));
        if (share) {
            needed.add("kit.warning-pressure");
        }
        return given.<RunTime>missing("The run time", needed.toArray(String[]::new))
                .orElseGet(() -> {
                    remarks.add("The curve is assumed to be measured on this pack at its present age.");
                    Reckoning<Span> cold =
                            tables.cold().share(given.number("temperature").getAsDouble());
                    return cold instanceof Refused<Span> refused
                            ? refused.as()
                            : found.runTime(stage, charge, cold.value().orElseThrow(), tables.packRules());
                });
    }

    /** A pressure as the curve tells it; empty when it or the warning pressure that it is a share of is not given. */
    static OptionalDouble onScale(OptionalDouble pressure, boolean share, OptionalDouble warning) {
        if (!share || pressure.isEmpty()) {
            return pressure;
        }
        return warning.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(PERCENT * pressure.getAsDouble() / warning.getAsDouble());
    }

    /** Where the filter stands now on the curves, as they tell it. */
    OptionalDouble filterNow() {
        if (task.curves().isEmpty() || task.curves().get(0).scale() == EnduranceCurve.Scale.OWN) {
            return given.number("filter-point");
        }
        boolean share = task.curves().get(0).scale() == EnduranceCurve.Scale.SHARE;
        return onScale(given.number("filter-pressure"), share, given.number("warning-pressure"));
    }

    private Reckoning<RunTime> modelled(double charge) {
        OptionalDouble health = given.number("battery-health");
        List<String> needed = new ArrayList<>(List.of(
                "kit.battery-energy",
                "kit.filter-pressure",
                "kit.largest-pressure",
                "kit.measured-flow",
                "atmosphere.temperature"));
        if (health.isEmpty()) {
            needed.addAll(List.of("kit.battery-age", "kit.battery-cycles"));
        }
        return given.<RunTime>missing("The run time", needed.toArray(String[]::new))
                .orElseGet(() -> model(charge, health));
    }

    private Reckoning<RunTime> model(double charge, OptionalDouble health) {
        Pack pack = new Pack(
                given.number("battery-energy").getAsDouble(),
                charge,
                given.number("battery-age").orElse(0),
                given.number("battery-cycles").orElse(0),
                health.isPresent() ? OptionalDouble.of(health.getAsDouble() / PERCENT) : OptionalDouble.empty());
        Reckoning<Span> energy = PackShare.usable(
                pack,
                tables.packRules(),
                tables.cold(),
                given.number("temperature").getAsDouble());
        Reckoning<DustLoad> load = dust.load();
        var pressure = dust.pressure();
        if (energy instanceof Refused<Span> refused) {
            return refused.as();
        }
        if (load instanceof Refused<DustLoad> refused) {
            return refused.as();
        }
        if (pressure instanceof Refused<?> refused) {
            return refused.as();
        }
        remarks.addAll(((Reckoned<Span>) energy).remarks());
        return new BlowerModel(
                        given.number("measured-flow").getAsDouble(),
                        dust.filters(),
                        given.number("filter-pressure").getAsDouble(),
                        given.number("largest-pressure").getAsDouble(),
                        tables.blower().get("efficiency"),
                        tables.blower().get("electronics"))
                .runTime(
                        energy.value().orElseThrow(),
                        load.value().orElseThrow(),
                        pressure.value().orElseThrow());
    }
}
