package org.fumewarden.endurance;

import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * How often the pre-filter and the particle filter are replaced.
 *
 * @param mainFilterMinutes wear minutes until the clogged-filter warning, low end of the model
 * @param preFiltersPerShift pre-filters to have at hand for one shift, the fitted one included
 * @param says for the reader
 */
public record FilterCadence(double mainFilterMinutes, long preFiltersPerShift, String says) {
    private static final double LONGEST_MINUTES = 60_000;

    /**
     * Cadence of one filter set; never cleaned, always replaced, and the pre-filter at least as often as the main filter.
     *
     * @param load dust by blower flow
     * @param pressure of one main filter
     * @param mainFilters equal main filters in parallel
     * @param litresPerMinute of the whole unit
     * @param warningPascals pressure at which the unit first warns of a clogged filter
     * @param preFilterHolds milligrams at which the manufacturer has the pre-filter replaced, empty when not stated: then one a shift
     * @param shiftMinutes wear time in one shift
     */
    public static Reckoning<FilterCadence> of(
            DustLoad load,
            FilterPressure pressure,
            int mainFilters,
            double litresPerMinute,
            double warningPascals,
            Optional<Double> preFilterHolds,
            double shiftMinutes) {
        Optional<Reckoning<FilterCadence>> bad = new Inputs()
                .positive("The number of filters", mainFilters)
                .positive("The flow in L/min", litresPerMinute)
                .positive("The warning pressure in Pa", warningPascals)
                .positive("The wear time in a shift", shiftMinutes)
                .positive("The load the pre-filter holds", preFilterHolds.orElse(1.0))
                .refusal();
        if (bad.isPresent()) {
            return bad.get();
        }
        double perFilter = litresPerMinute / mainFilters;
        if (pressure.clean(perFilter) >= warningPascals) {
            return Reckoning.refuse(
                    Soundness.OUTSIDE_TABLE,
                    "A clean filter already gives " + WrittenNumbers.plain(pressure.clean(perFilter))
                            + " Pa, not below the"
                            + " clogged-filter warning at " + WrittenNumbers.plain(warningPascals)
                            + " Pa.",
                    "Give the pressure at the flow that goes through it.");
        }
        double main = Math.min(
                LONGEST_MINUTES,
                pressure.minutesTo(warningPascals, perFilter, Math.max(1e-12, load.onMainFilter() / mainFilters))
                        .low());
        Optional<Double> pre = load.preFilterShare() > 0
                ? Optional.of(Math.min(
                        main,
                        preFilterHolds
                                .map(holds -> Math.min(LONGEST_MINUTES, holds / Math.max(1e-12, load.onPreFilter())))
                                .orElse(shiftMinutes)))
                : Optional.empty();
        long perShift = pre.map(minutes -> (long) Math.ceil(shiftMinutes / Math.max(1, Math.floor(minutes))))
                .orElse(0L);
        return Reckoning.of(
                new FilterCadence(main, perShift, words(pre, main, perShift)),
                List.of("The rise in pressure is modelled, because no published curve for welding fume was found."
                        + " The unit's own warning takes precedence."));
    }

    private static String words(Optional<Double> pre, double main, long perShift) {
        String mainWords = "Replace the particle filter at the clogged-filter warning, by the model after about "
                + WrittenNumbers.about(main) + " of wear.";
        return pre.map(minutes -> "Replace the pre-filter after every " + WrittenNumbers.about(minutes) + " of wear: "
                                + perShift + " in a shift. ")
                        .orElse("")
                + mainWords + " Never clean, tap or blow out a filter.";
    }
}
