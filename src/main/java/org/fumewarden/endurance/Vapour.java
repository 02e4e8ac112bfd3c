package org.fumewarden.endurance;

/**
 * An organic vapour as the adsorption model sees it.
 *
 * @param id of the substance
 * @param molarMass grams per mole
 * @param density of the liquid, grams per cubic centimetre
 * @param refractiveIndex of the liquid at the sodium line
 * @param boilingPoint degrees Celsius at one atmosphere
 * @param antoineA of log10 p = a - b / (c + t), p in mmHg, t in degrees Celsius
 * @param antoineB of the same
 * @param antoineC of the same
 * @param modelHolds false where measurements show that the model runs long beyond its allowance
 */
public record Vapour(
        String id,
        double molarMass,
        double density,
        double refractiveIndex,
        double boilingPoint,
        double antoineA,
        double antoineB,
        double antoineC,
        boolean modelHolds) {
    public Vapour {
        new Inputs()
                .positive("molar-mass", molarMass)
                .positive("density", density)
                .within("refractive-index", refractiveIndex, 1.0001, 3)
                .within("boiling-point", boilingPoint, -270, 600)
                .orThrow("Vapour " + id);
    }

    /** Vapour pressure in mmHg. */
    public double saturation(double temperature) {
        return Math.pow(10, antoineA - antoineB / (antoineC + temperature));
    }

    /** Molar polarizability in cubic centimetres per mole, from the refractive index. */
    public double polarizability() {
        double square = refractiveIndex * refractiveIndex;
        return (square - 1) / (square + 2) * molarMass / density;
    }

    /** The vapour as people write it. */
    String name() {
        return id.replace('-', ' ');
    }
}
