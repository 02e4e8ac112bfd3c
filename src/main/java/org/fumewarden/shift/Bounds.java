package org.fumewarden.shift;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fumewarden.endurance.CarbonBed;
import org.fumewarden.endurance.CodeCap;
import org.fumewarden.endurance.GasPart;
import org.fumewarden.endurance.GasType;
import org.fumewarden.endurance.GasUse;
import org.fumewarden.endurance.HeldLike;
import org.fumewarden.endurance.ShelfLife;
import org.fumewarden.endurance.TestCapacityBound;
import org.fumewarden.endurance.TimeBound;
import org.fumewarden.endurance.Vapour;
import org.fumewarden.model.Agent;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;
import org.fumewarden.task.Task;

/** Every bound on the use of a gas filter that the figures of a task allow, refusals included. */
final class Bounds {
    private final Task task;
    private final UnitAnswers given;
    private final ShiftTables tables;

    Bounds(Task task, UnitAnswers given, ShiftTables tables) {
        this.task = task;
        this.given = given;
        this.tables = tables;
    }

    List<Reckoning<TimeBound>> of(Agent agent, FilterMatch match, Fitted fitted, GasUse use) {
        List<Reckoning<TimeBound>> bounds = new ArrayList<>();
        classLimit(match, fitted, use).ifPresent(bounds::add);
        GasType type = fitted.part().map(GasPart::type).orElse(GasType.A);
        switch (type) {
            case AX -> bounds.add(lowBoiler(use));
            case NO ->
                measured(agent, use)
                        .ifPresentOrElse(
                                bounds::add,
                                () -> bounds.add(Reckoning.refuse(
                                        Soundness.NOT_HELD,
                                        "A filter against nitrous gases is single-use, and only the manufacturer can state its service life.",
                                        "Use supplied" + " air.")));
            case HG ->
                bounds.add(cap("mercury", "Longest use of a filter for mercury").bound());
            default -> {
                bounds.add(testCapacity(agent, fitted, use));
                if (type == GasType.A) {
                    organic(agent, use, bounds);
                }
            }
        }
        if (type != GasType.NO) {
            measured(agent, use).ifPresent(bounds::add);
        }
        bounds.add(cap("one-shift", "One shift").bound());
        shelfLife().ifPresent(bounds::add);
        return bounds;
    }

    /** What the maker measured; more gas shortens it only for a vapour for which the adsorption model holds. */
    private Optional<Reckoning<TimeBound>> measured(Agent agent, GasUse use) {
        boolean adsorbed = vapour(agent).filter(Vapour::modelHolds).isPresent();
        return Optional.ofNullable(task.breakthroughs().get(agent.id())).map(line -> line.bound(use, adsorbed));
    }

    private CodeCap cap(String id, String words) {
        CodeCap cap = tables.caps().get(id);
        return new CodeCap(cap.minutes(), words, cap.clause());
    }

    /** Above the highest use concentration nothing else matters. In a powered unit class 1 ends at the stricter figure. */
    private Optional<Reckoning<TimeBound>> classLimit(FilterMatch match, Fitted fitted, GasUse use) {
        if (fitted.part().isPresent()
                && tables.classLimits().check(fitted.part().get(), use.ppm()) instanceof Refused<Double> refused
                && refused.status() == Soundness.ABOVE_CLASS_LIMIT) {
            return Optional.of(refused.as());
        }
        boolean lowest = fitted.part().map(part -> part.grade() <= 1).orElse(true);
        return match.highest()
                .filter(highest -> lowest && use.ppm() > highest.doubleValue())
                .map(highest -> Reckoning.refuse(
                        Soundness.ABOVE_CLASS_LIMIT,
                        "The level is above the " + highest.toPlainString() + " ppm up to which " + fitted.written()
                                + " may be used here.",
                        "Use a higher class that the manufacturer names, or supplied air."));
    }

    private Reckoning<TimeBound> lowBoiler(GasUse use) {
        return given.word("low-boiler-group")
                .map(group -> tables.lowBoilers().bound(Integer.parseInt(group), use, 0))
                .orElseGet(() -> Reckoning.refuse(
                        Soundness.LOW_BOILER,
                        "A low boiler needs its group, and that is not given.",
                        "Ask the manufacturer, and add" + " kit.low-boiler-group."));
    }

    private Reckoning<TimeBound> testCapacity(Agent agent, Fitted fitted, GasUse use) {
        List<ShiftTables.TestGas> tests = (fitted.part().isPresent() ? tables.filterTests() : tables.cartridgeTests())
                .stream()
                        .filter(test -> test.test()
                                .mark()
                                .equals(fitted.part().map(GasPart::written).orElseGet(() -> fitted.cartridge()
                                        .orElseThrow())))
                        .toList();
        Optional<ShiftTables.TestGas> own =
                tests.stream().filter(test -> test.agent().equals(agent.id())).findFirst();
        if (own.isPresent()) {
            return TestCapacityBound.bound(own.get().test(), use, HeldLike.testGasBoundByReaction(), fitted.several());
        }
        if (tests.isEmpty()) {
            return Reckoning.refuse(
                    Soundness.HOLDING_NOT_SHOWN,
                    "No approval test is on record for " + fitted.written() + ".",
                    "Ask the manufacturer for data.");
        }
        ShiftTables.TestGas first = tests.get(0);
        return TestCapacityBound.bound(first.test(), use, isotherm(agent, use, first), fitted.several());
    }

    /** Held as the adsorption isotherm compares the vapour with the test gas; not shown for any other gas. */
    private HeldLike isotherm(Agent agent, GasUse use, ShiftTables.TestGas test) {
        Optional<Vapour> testGas = tables.vapours().values().stream()
                .filter(vapour -> vapour.id().equals(test.test().gas()))
                .findFirst();
        return vapour(agent)
                .flatMap(vapour -> testGas.map(
                        gas -> tables.model().heldLike(vapour, use.ppm(), use.temperature(), gas, test.test())))
                .orElse(HeldLike.notShown());
    }

    private void organic(Agent agent, GasUse use, List<Reckoning<TimeBound>> bounds) {
        Optional<Vapour> vapour = vapour(agent);
        if (vapour.isEmpty()) {
            bounds.add(Reckoning.refuse(
                    Soundness.NOT_GIVEN,
                    "Adsorption model and rule of thumb: " + agent.name() + " is not in the table of vapours.",
                    "Ask the manufacturer for data."));
            return;
        }
        bounds.add(
                bed().map(bed -> tables.model().bound(vapour.get(), bed, use)).orElseGet(() -> given.<TimeBound>missing(
                                "The time of the adsorption model",
                                "kit.filter-carbon",
                                "kit.carbon-density",
                                "kit.carbon-area")
                        .orElseThrow()));
        bounds.add(tables.thumb().bound(vapour.get().boilingPoint(), use));
    }

    Optional<Vapour> vapour(Agent agent) {
        return Optional.ofNullable(tables.vapours().get(agent.cas()));
    }

    /** The carbon of one filter; empty while a figure is missing or cannot be. */
    Optional<CarbonBed> bed() {
        if (given.missing("", "kit.filter-carbon", "kit.carbon-density", "kit.carbon-area")
                .isPresent()) {
            return Optional.empty();
        }
        return Optional.of(given.sound(
                "kit.filter-carbon",
                () -> new CarbonBed.Measured(
                        given.number("filter-carbon").getAsDouble(),
                        given.number("carbon-density").getAsDouble(),
                        given.number("carbon-area").getAsDouble())));
    }

    private Optional<Reckoning<TimeBound>> shelfLife() {
        return given.day("filter-expiry")
                .map(expires -> new ShelfLife(expires, given.day("filter-opened"), tables.opened()).bound(task.on()));
    }
}
