package org.fumewarden.endurance;

/**
 * Published coefficients of the capacity and rate equations.
 *
 * @param microporeVolume cubic centimetres per gram of carbon
 * @param affinity coefficient of the Dubinin-Radushkevich exponent
 * @param gasConstant calories per mole and kelvin
 * @param polarizabilityExponent of the same exponent
 * @param rateOffset minutes
 * @param rateBase of the rate equation
 * @param rateSlope of the rate equation, per unit of the breakthrough logarithm
 * @param velocityOffset seconds per centimetre
 * @param molarVolumeAtZero litres per mole at 0 C
 * @param standardPressure mmHg
 */
public record AdsorptionConstants(
        double microporeVolume,
        double affinity,
        double gasConstant,
        double polarizabilityExponent,
        double rateOffset,
        double rateBase,
        double rateSlope,
        double velocityOffset,
        double molarVolumeAtZero,
        double standardPressure) {
    public AdsorptionConstants {
        new Inputs()
                .positive("micropore-volume", microporeVolume)
                .positive("affinity", affinity)
                .positive("gas-constant", gasConstant)
                .positive("rate-base", rateBase)
                .positive("molar-volume-at-zero", molarVolumeAtZero)
                .positive("standard-pressure", standardPressure)
                .orThrow("Adsorption coefficients");
    }
}
