package org.fumewarden.exposure;

/**
 * The volume of one mole of ideal gas, which turns ppm into mg/m3.
 *
 * @param litresPerMole the basis of the list of limits: 24.05526 (20 C) in EH40, 24.45 (25 C) in US lists
 */
public record MolarVolume(double litresPerMole) {
    /** Molar gas constant in J/(mol K), exact since the 2019 revision of the SI. */
    private static final double GAS_CONSTANT = 8.314462618;

    private static final double ZERO_CELSIUS = 273.15;

    public MolarVolume {
        if (!SampleSet.isConcentration(litresPerMole)) {
            throw new IllegalArgumentException("A molar volume of " + litresPerMole + " L/mol is not possible.");
        }
    }

    /** The molar volume at a temperature in degrees Celsius and a pressure in kPa, V = R T / p. */
    public static Outcome<MolarVolume> at(double celsius, double kilopascal) {
        double kelvin = celsius + ZERO_CELSIUS;
        if (!SampleSet.isConcentration(kelvin) || !SampleSet.isConcentration(kilopascal)) {
            return Outcome.none(
                    Status.INVALID_VALUE,
                    "No gas has " + celsius + " C at " + kilopascal + " kPa. Check the unit of the pressure.");
        }
        return Outcome.of(new MolarVolume(GAS_CONSTANT * kelvin / kilopascal));
    }

    /** mg/m3 from ppm; {@code molarMass} in g/mol. */
    public double milligramsFromPpm(double ppm, double molarMass) {
        return ppm * molarMass / litresPerMole;
    }

    /** ppm from mg/m3; {@code molarMass} in g/mol. */
    public double ppmFromMilligrams(double milligrams, double molarMass) {
        return milligrams * litresPerMole / molarMass;
    }
}
