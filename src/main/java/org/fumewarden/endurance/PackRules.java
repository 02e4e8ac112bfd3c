package org.fumewarden.endurance;

/**
 * Figures of lithium-ion packs.
 *
 * @param reserve share of charge at which nobody starts or goes on with work
 * @param quickCharge share of charge a quick charge may reach
 * @param endOfLife share of rated capacity at which a pack is replaced
 * @param yearlyHoldFull share of capacity left after a year stored full
 * @param yearlyHoldPart share of capacity left after a year stored part-charged
 * @param cyclesShort full cycles to end of life, low figure
 * @param cyclesLong the same, high figure
 * @param chargeFrom lowest temperature for charging, degrees Celsius
 * @param chargeTo highest temperature for charging, degrees Celsius
 */
public record PackRules(
        double reserve,
        double quickCharge,
        double endOfLife,
        double yearlyHoldFull,
        double yearlyHoldPart,
        double cyclesShort,
        double cyclesLong,
        double chargeFrom,
        double chargeTo) {
    public PackRules {
        new Inputs()
                .within("reserve", reserve, 0, 0.5)
                .within("quick-charge", quickCharge, reserve, 1)
                .within("end-of-life", endOfLife, 0, 1)
                .within("yearly-hold-full", yearlyHoldFull, 0, yearlyHoldPart)
                .within("yearly-hold-part", yearlyHoldPart, 0, 1)
                .within("cycles-short", cyclesShort, 1, cyclesLong)
                .within("charge-from", chargeFrom, -50, chargeTo)
                .orThrow("Pack rules");
    }

    /** True when a pack may be charged at this temperature. */
    public boolean mayCharge(double temperature) {
        return temperature >= chargeFrom && temperature <= chargeTo;
    }
}
