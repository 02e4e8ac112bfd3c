package org.fumewarden.exposure;

import java.util.ArrayList;
import java.util.List;

/**
 * Fume released into the room over the working time, arc pauses included.
 *
 * @param milligramsPerMinute rate, with its spread
 * @param assumptions what went into it, one sentence each
 */
public record FumeSource(Spread milligramsPerMinute, List<String> assumptions) {
    private static final double SECONDS = 60;
    private static final double MILLIGRAMS_PER_GRAM = 1000;
    private static final double MINUTES = 60;

    public FumeSource {
        assumptions = List.copyOf(assumptions);
    }

    /**
     * From an emission rate while the arc burns.
     *
     * @param milligramsPerSecond rate of the process
     * @param arcShare share of the working time with the arc on
     */
    public static FumeSource ofRate(Spread milligramsPerSecond, Spread arcShare) {
        return new FumeSource(
                milligramsPerSecond.times(arcShare).times(SECONDS),
                List.of("Emission " + words(milligramsPerSecond) + " mg/s while the arc burns, arc on for "
                        + words(arcShare) + " of the time."));
    }

    /**
     * From the use of wire or electrodes.
     *
     * @param gramsPerKilogram fume per consumable
     * @param kilogramsPerArcHour consumable melted per hour of arc
     * @param arcShare share of the working time with the arc on
     */
    public static FumeSource ofConsumable(Spread gramsPerKilogram, Spread kilogramsPerArcHour, Spread arcShare) {
        return new FumeSource(
                gramsPerKilogram.times(kilogramsPerArcHour).times(arcShare).times(MILLIGRAMS_PER_GRAM / MINUTES),
                List.of("Emission " + words(gramsPerKilogram) + " g per kg of consumable at "
                        + words(kilogramsPerArcHour) + " kg per hour of arc, arc on for " + words(arcShare)
                        + " of the time."));
    }

    /** One agent in the fume, by its mass share. */
    public FumeSource share(Spread massShare) {
        return with(massShare, "The agent is " + words(massShare) + " of the fume by mass.");
    }

    /**
     * With extraction at the source.
     *
     * @param captureLow lower end of the captured share, below 1
     * @param captureHigh upper end of the captured share, below 1
     */
    public FumeSource extracted(double captureLow, double captureHigh) {
        if (!(captureLow >= 0 && captureLow <= captureHigh && captureHigh < 1)) {
            throw new IllegalArgumentException("A capture from " + captureLow + " to " + captureHigh
                    + " is not possible. Maybe write 0.5 for 50 %.");
        }
        Spread escaping = Spread.between(1 - captureHigh, 1 - captureLow);
        return with(escaping, "Extraction leaves " + words(escaping) + " of the fume in the room.");
    }

    private FumeSource with(Spread factor, String sentence) {
        List<String> all = new ArrayList<>(assumptions);
        all.add(sentence);
        return new FumeSource(milligramsPerMinute.times(factor), all);
    }

    static String words(Spread spread) {
        return spread.deviationLog() == 0
                ? Sentences.number(spread.median())
                : Sentences.number(spread.quantile(0.05)) + " to " + Sentences.number(spread.quantile(0.95));
    }
}
