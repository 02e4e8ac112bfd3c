package org.fumewarden.endurance;

/**
 * Pressure drop over one filter as dust builds a cake on it.
 *
 * <p>{@code dp = dp0 (Q / Q0) + K (m / A) v}. Modelled: no published curve of deposited welding fume against pressure was
 * found. The first dust lodges inside the medium and raises the pressure more slowly than this line; oil mist behaves
 * otherwise and is not covered.
 *
 * @param cleanPascals pressure drop of the clean filter
 * @param atLitresPerMinute flow of that figure, through this filter
 * @param areaSquareMetres of filter medium, not of the frame
 * @param cakeResistance K per second, pascals per (kilogram per square metre) per (metre per second)
 */
public record FilterPressure(
        double cleanPascals, double atLitresPerMinute, double areaSquareMetres, CaseRange cakeResistance) {
    static final double CUBIC_METRES_PER_SECOND = 1.0 / 60_000;
    private static final double KILOGRAMS = 1e-6;

    public FilterPressure {
        new Inputs()
                .positive("clean pressure in Pa", cleanPascals)
                .positive("flow in L/min", atLitresPerMinute)
                .positive("area in m2", areaSquareMetres)
                .orThrow("Filter pressure");
    }

    /** Pascals of the clean filter at a flow through it. */
    public double clean(double litresPerMinute) {
        return cleanPascals * litresPerMinute / atLitresPerMinute;
    }

    /** Pascals that one more milligram adds at a flow through it, for one of the three cases. */
    public double perMilligram(double litresPerMinute, double resistance) {
        double velocity = litresPerMinute * CUBIC_METRES_PER_SECOND / areaSquareMetres;
        return resistance * KILOGRAMS / areaSquareMetres * velocity;
    }

    /** Minutes until a pressure is reached at a constant load; infinite places mean never. */
    public Span minutesTo(double pascals, double litresPerMinute, double milligramsPerMinute) {
        double room = Math.max(0, pascals - clean(litresPerMinute));
        if (room == 0) {
            return Span.exactly(0);
        }
        return new Span(
                room / (milligramsPerMinute * perMilligram(litresPerMinute, cakeResistance.shortRun())),
                room / (milligramsPerMinute * perMilligram(litresPerMinute, cakeResistance.likely())),
                room / (milligramsPerMinute * perMilligram(litresPerMinute, cakeResistance.longRun())));
    }
}
