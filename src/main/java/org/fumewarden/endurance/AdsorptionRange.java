package org.fumewarden.endurance;

/**
 * Where the adsorption model was published and checked.
 *
 * @param lowestBoilingPoint degrees Celsius; the agent must boil above it
 * @param plainHumidity percent up to which no remark is needed
 * @param highestHumidity percent above which the model is refused
 * @param lowestTemperature degrees Celsius
 * @param highestTemperature degrees Celsius
 * @param lowestPpm below it the time at this concentration is used
 * @param highestPpm above it the model is refused
 * @param lowestExitFraction exit over inlet below which the model is refused
 * @param highestExitFraction above it the time at this fraction is used
 * @param worstOverrun most that the model ran longer than a measurement, as a ratio; every time is divided by it
 */
public record AdsorptionRange(
        double lowestBoilingPoint,
        double plainHumidity,
        double highestHumidity,
        double lowestTemperature,
        double highestTemperature,
        double lowestPpm,
        double highestPpm,
        double lowestExitFraction,
        double highestExitFraction,
        double worstOverrun) {
    public AdsorptionRange {
        new Inputs()
                .within("plain-humidity", plainHumidity, 0, highestHumidity)
                .within("lowest-temperature", lowestTemperature, -50, highestTemperature)
                .within("lowest-concentration", lowestPpm, 0, highestPpm)
                .within("lowest-exit-fraction", lowestExitFraction, 0, highestExitFraction)
                .within("highest-exit-fraction", highestExitFraction, 0, 0.5)
                .within("worst-overrun", worstOverrun, 1, 10)
                .orThrow("Range of the adsorption model");
    }
}
