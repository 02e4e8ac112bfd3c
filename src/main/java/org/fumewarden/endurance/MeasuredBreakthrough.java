package org.fumewarden.endurance;

import java.util.Optional;

/**
 * A breakthrough time measured or stated by the maker for this agent and filter.
 *
 * @param minutes until the exit reached {@code exitPpm}
 * @param ppm before the filter
 * @param exitPpm behind it
 * @param litresPerMinute through the filter
 * @param humidity percent
 * @param temperature degrees Celsius
 * @param document where it stands
 */
public record MeasuredBreakthrough(
        double minutes,
        double ppm,
        double exitPpm,
        double litresPerMinute,
        double humidity,
        double temperature,
        String document) {

    /** The measured time where the use is no harder in any respect; never scaled. */
    public Reckoning<Bound> bound(GasUse use) {
        Optional<Reckoning<Bound>> refusal = use.<Bound>refusal().or(() -> new Inputs()
                .positive("The measured time", minutes)
                .positive("The measured concentration", ppm)
                .positive("The measured flow", litresPerMinute)
                .<Bound>refusal());
        if (refusal.isPresent()) {
            return refusal.get();
        }
        boolean noHarder = use.ppm() <= ppm
                && use.exitPpm() >= exitPpm
                && use.flow().litresPerMinute() <= litresPerMinute
                && use.humidity() <= humidity
                && use.temperature() <= temperature;
        return noHarder
                ? Reckoning.of(new Bound(
                        BoundKind.MEASURED,
                        minutes,
                        Figures.plain(minutes) + " min measured at conditions at least as hard (" + document + ").",
                        true))
                : Reckoning.refuse(
                        Refusal.OUTSIDE_TABLE,
                        "The use is harder than the measurement in " + document
                                + " in concentration, exit limit, flow, humidity or warmth. Maybe another line of it.");
    }
}
