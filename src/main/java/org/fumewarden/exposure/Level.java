package org.fumewarden.exposure;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A concentration with its unit.
 *
 * @param amount zero or more
 */
public record Level(double amount, Unit unit) {

    /** The units of air concentrations. */
    public enum Unit {
        PPM,
        MILLIGRAM_PER_CUBIC_METRE,
        MICROGRAM_PER_CUBIC_METRE;

        boolean mass() {
            return this != PPM;
        }

        double milligrams() {
            return this == MICROGRAM_PER_CUBIC_METRE ? 1e-3 : 1;
        }
    }

    /** What the agent is in the air. */
    public enum Form {
        GAS_OR_VAPOUR,
        AEROSOL
    }

    /**
     * The same concentration in another unit.
     *
     * @param form aerosols have no ppm
     * @param molarMass g/mol, needed between ppm and mass units
     * @param basis molar volume of the list of limits
     */
    public Outcome<Level> in(Unit target, Form form, OptionalDouble molarMass, MolarVolume basis) {
        if (!(amount >= 0) || !Double.isFinite(amount)) {
            return Outcome.none(Status.INVALID_VALUE, "The concentration is " + amount + ". Check the signs.");
        }
        if (form == Form.AEROSOL && !(unit.mass() && target.mass())) {
            return Outcome.none(
                    Status.INVALID_UNIT, "Fume and dust have no ppm; " + amount + " ppm was found. Write mg/m3.");
        }
        if (unit.mass() == target.mass()) {
            return Outcome.of(new Level(amount * unit.milligrams() / target.milligrams(), target));
        }
        if (molarMass.isEmpty() || !SampleSet.isConcentration(molarMass.getAsDouble())) {
            return Outcome.none(
                    Status.UNIT_MISMATCH, "Between ppm and mg/m3 stands the molar mass. Add it to the agent.");
        }
        double mass = molarMass.getAsDouble();
        double converted = unit.mass()
                ? basis.ppmFromMilligrams(amount * unit.milligrams(), mass)
                : basis.milligramsFromPpm(amount, mass) / target.milligrams();
        return Outcome.finite(converted).map(c -> new Level(c, target));
    }

    /** The common unit of some levels; ppm and mass are never added without molar mass and basis. */
    public static Outcome<Unit> commonUnit(List<Level> levels) {
        List<Unit> units = levels.stream().map(Level::unit).distinct().toList();
        return units.size() == 1
                ? Outcome.of(units.get(0))
                : Outcome.none(
                        Status.UNIT_MISMATCH,
                        "The values are in " + units.size() + " units. Convert them to the unit of the limit.");
    }
}
