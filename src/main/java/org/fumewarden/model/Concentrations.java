package org.fumewarden.model;

import java.math.BigDecimal;
import java.math.MathContext;

/** Conversion between volume and mass concentration. */
public final class Concentrations {
    private Concentrations() {}

    /**
     * Converts a level to another unit.
     *
     * @param molarVolume litres a mole on the temperature basis of the code's list, for example 24.05526 at 20 degrees C and 101.325 kPa
     * @throws IllegalArgumentException when the units differ and the agent has no molar mass
     */
    public static BigDecimal convert(BigDecimal level, Unit from, Unit to, Agent agent, Threshold molarVolume) {
        if (from == to) {
            return level;
        }
        BigDecimal molarMass = agent.molarMass()
                .orElseThrow(() -> new IllegalArgumentException(
                        "no molar mass for " + agent.id() + ", so " + from.symbol() + " cannot become " + to.symbol()));
        if (to == Unit.PPM) {
            return level.multiply(molarVolume.value()).divide(molarMass, MathContext.DECIMAL64);
        }
        return level.multiply(molarMass).divide(molarVolume.value(), MathContext.DECIMAL64);
    }

    /** True when a level is above a bound that is given in a unit of its own. */
    static boolean above(BigDecimal level, Unit from, BigDecimal bound, Unit to, Agent agent, Threshold molarVolume) {
        return convert(level, from, to, agent, molarVolume).compareTo(bound) > 0;
    }
}
