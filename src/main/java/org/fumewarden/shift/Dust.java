package org.fumewarden.shift;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.endurance.DustLoad;
import org.fumewarden.endurance.FilterCadence;
import org.fumewarden.endurance.FilterPressure;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;

/** The dust that the filter set takes up. */
final class Dust {
    private static final double SQUARE_METRES = 1e-4;
    private static final double PERCENT = 100;
    private static final double MILLIGRAMS = 1000;

    private final UnitAnswers given;
    private final Air air;
    private final ShiftTables tables;

    Dust(UnitAnswers given, Air air, ShiftTables tables) {
        this.given = given;
        this.air = air;
        this.tables = tables;
    }

    /** All of the dust in the air that the blower moves; nothing is taken to pass or to fall out before. */
    Reckoning<DustLoad> load() {
        OptionalDouble dust = air.dust();
        if (dust.isEmpty()) {
            return Reckoning.refuse(
                    Soundness.NOT_GIVEN,
                    "The dust on the filter cannot be calculated: no particle has a level.",
                    "Add welding-fume or" + " dust-inhalable to exposures.");
        }
        return given.<DustLoad>missing("The dust on the filter", "kit.measured-flow")
                .orElseGet(() -> DustLoad.of(
                        dust.getAsDouble(),
                        given.number("measured-flow").getAsDouble(),
                        1,
                        given.number("pre-filter-share").orElse(0) / PERCENT));
    }

    /** How one main filter loads, from its clean pressure at the flow through it. */
    Reckoning<FilterPressure> pressure() {
        Optional<Reckoning<FilterPressure>> missing = given.missing(
                "The pressure of the filter",
                "kit.filter-clean-pressure",
                "kit.filter-area",
                "kit.filters-fitted",
                "kit.measured-flow");
        return missing.orElseGet(() -> Reckoning.of(given.sound(
                "kit.filter-clean-pressure",
                () -> from(given.number("filter-clean-pressure").getAsDouble()))));
    }

    FilterPressure from(double pascals) {
        return new FilterPressure(
                pascals,
                given.number("measured-flow").getAsDouble() / filters(),
                given.number("filter-area").getAsDouble() * SQUARE_METRES,
                tables.blower().get("cake-resistance"));
    }

    int filters() {
        return Math.max(1, given.count("filters-fitted").orElse(1));
    }

    Reckoning<FilterCadence> cadence(double wearMinutes) {
        Reckoning<DustLoad> load = load();
        Reckoning<FilterPressure> pressure = pressure();
        if (load instanceof Refused<DustLoad> refused) {
            return refused.as();
        }
        if (pressure instanceof Refused<FilterPressure> refused) {
            return refused.as();
        }
        OptionalDouble holds = given.number("pre-filter-holds");
        return given.<FilterCadence>missing("The cadence of the filters", "kit.warning-pressure")
                .orElseGet(() -> FilterCadence.of(
                        load.value().orElseThrow(),
                        pressure.value().orElseThrow(),
                        filters(),
                        given.number("measured-flow").getAsDouble(),
                        given.number("warning-pressure").getAsDouble(),
                        holds.isPresent() ? Optional.of(holds.getAsDouble() * MILLIGRAMS) : Optional.empty(),
                        wearMinutes));
    }
}
