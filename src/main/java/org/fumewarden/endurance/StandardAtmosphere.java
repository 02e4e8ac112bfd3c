package org.fumewarden.endurance;

import java.util.Optional;
import org.fumewarden.model.Reckoning;

/**
 * Air pressure by altitude, first layer of the standard atmosphere.
 *
 * @param seaLevelPressure pascals
 * @param seaLevelTemperature kelvin
 * @param lapseRate kelvin per metre
 * @param exponent of the pressure ratio
 * @param highestAltitude metres above which nothing is reckoned
 */
public record StandardAtmosphere(
        double seaLevelPressure,
        double seaLevelTemperature,
        double lapseRate,
        double exponent,
        double highestAltitude) {
    private static final double LOWEST_ALTITUDE = -500;

    /** Pascals at an altitude in metres, for 0 to 11000 m. */
    public double pressure(double altitude) {
        return seaLevelPressure * Math.pow(1 - lapseRate * altitude / seaLevelTemperature, exponent);
    }

    /** Air a wearer must move for the same oxygen, over that at sea level; never below 1. */
    public Reckoning<Double> breathingFactor(double altitude) {
        Optional<Reckoning<Double>> bad = new Inputs()
                .within("The altitude in m", altitude, LOWEST_ALTITUDE, highestAltitude)
                .refusal();
        return bad.orElseGet(() -> Reckoning.of(Math.max(1, seaLevelPressure / pressure(altitude))));
    }
}
