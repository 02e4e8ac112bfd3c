package org.fumewarden.endurance;

/**
 * One line of an approval test: what the filter had to hold, and for how long.
 *
 * @param mark type and class, or kind of cartridge
 * @param gas test gas
 * @param ppm test concentration
 * @param breakthroughPpm concentration behind the filter at which the test ends
 * @param minutes shortest time to that
 * @param flow litres per minute through the filter, or through the pair where a pair is tested
 * @param humidity relative humidity of the test, percent
 * @param temperature of the test, degrees Celsius
 */
public record TestCapacity(
        String mark,
        String gas,
        double ppm,
        double breakthroughPpm,
        double minutes,
        double flow,
        double humidity,
        double temperature) {

    private static final double PARTS = 1e-6;
    private static final double MILLILITRES_PER_LITRE = 1e3;

    public TestCapacity {
        new Inputs()
                .positive("ppm", ppm)
                .positive("breakthrough-ppm", breakthroughPpm)
                .positive("minutes", minutes)
                .positive("flow", flow)
                .within("humidity", humidity, 0, 100)
                .within("temperature", temperature, 0, 50)
                .orThrow("Test of " + mark + " with " + gas);
    }

    /** Vapour that the filter had to hold, in millilitres of gas at the temperature of the test. */
    public double millilitresOfVapour() {
        return ppm * PARTS * flow * minutes * MILLILITRES_PER_LITRE;
    }

    /** The test gas as people write it. */
    String gasName() {
        return gas.replace('-', ' ').replace("sulfur", "sulphur");
    }
}
