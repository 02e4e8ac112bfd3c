package org.fumewarden.exposure;

import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * The time-weighted average over a reference time.
 *
 * <p>Sum of concentration times time, divided by the reference time and not by the length of the shift. Source: 29 CFR
 * 1910.1000(d)(1)(i); EH40/2005 approved method, which counts all exposure in any 24 hours.
 */
public final class TimeWeightedAverage {
    /** Minutes of the usual reference time, 8 hours. */
    public static final double EIGHT_HOURS = 480;

    private TimeWeightedAverage() {}

    /** By how much an average of so many minutes of work counts over the reference time; a shorter one is not thinned out. */
    public static double times(double minutes, double referenceMinutes) {
        return Math.max(1, minutes / referenceMinutes);
    }

    /** How the part of the shift that nobody sampled is counted. */
    public enum Unsampled {
        /** As the highest sampled period: the choice when nothing is known. */
        AS_HIGHEST,
        /** As the average of the sampled time: the choice when the work is the same all shift. */
        AS_SAMPLED,
        /** As no exposure: only when that is known. */
        AS_UNEXPOSED
    }

    /** The average of periods that cover all exposure of the day. */
    public static Reckoning<Double> of(List<Period> periods, double referenceMinutes) {
        Optional<String> fault = fault(periods, referenceMinutes);
        if (fault.isPresent()) {
            return Reckoning.none(Soundness.INVALID_VALUE, fault.get());
        }
        return Reckoning.of(dose(periods) / referenceMinutes);
    }

    /**
     * The average of a shift of which only a part was sampled.
     *
     * @param exposedMinutes length of the shift, at least the sampled time
     */
    public static Reckoning<Double> ofShift(
            List<Period> sampled, double exposedMinutes, Unsampled rest, double referenceMinutes) {
        Optional<String> fault = fault(sampled, referenceMinutes);
        if (fault.isPresent()) {
            return Reckoning.none(Soundness.INVALID_VALUE, fault.get());
        }
        double covered = sampled.stream().mapToDouble(Period::minutes).sum();
        if (!(exposedMinutes >= covered) || !Double.isFinite(exposedMinutes)) {
            return Reckoning.none(
                    Soundness.INVALID_VALUE,
                    "The periods last " + Math.round(covered) + " minutes in all, more than the "
                            + Math.round(exposedMinutes) + " minutes of the shift. Correct the length of the shift.");
        }
        double concentration =
                switch (rest) {
                    case AS_HIGHEST ->
                        sampled.stream()
                                .mapToDouble(Period::concentration)
                                .max()
                                .orElse(0);
                    case AS_SAMPLED -> dose(sampled) / covered;
                    case AS_UNEXPOSED -> 0;
                };
        return Reckoning.of((dose(sampled) + concentration * (exposedMinutes - covered)) / referenceMinutes);
    }

    private static double dose(List<Period> periods) {
        return periods.stream()
                .mapToDouble(p -> p.concentration() * p.minutes())
                .sum();
    }

    static Optional<String> fault(List<Period> periods, double referenceMinutes) {
        if (periods.isEmpty()) {
            return Optional.of("There is no period to average. Enter at least one.");
        }
        if (!SampleSet.isConcentration(referenceMinutes)) {
            return Optional.of("The reference time is " + referenceMinutes + " min. Write 480 for 8 hours.");
        }
        return periods.stream()
                .filter(p -> !p.valid())
                .findFirst()
                .map(p ->
                        "A period has " + p.concentration() + " over " + p.minutes() + " min. Check signs and times.");
    }
}
