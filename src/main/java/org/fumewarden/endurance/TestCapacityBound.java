package org.fumewarden.endurance;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.model.Soundness;

/**
 * Use time from the capacity that an approval test proves.
 *
 * <p>{@code t = C(test) Q(test) t(test) / (C Q)}. A lower bound only for a new filter, for the test gas or a gas held at
 * least as well, at most at the test's concentration, humidity and temperature, and for the test's end point. At a flow
 * above the test's the bed is used less fully; there the bound is given but may not stand alone.
 */
public final class TestCapacityBound {
    private TestCapacityBound() {}

    /**
     * Minutes by the bare formula, without any check of its conditions.
     *
     * @param millilitresOfVapour that the filter had to hold
     * @param ppm in use, above zero
     * @param litresPerMinute through this filter, above zero
     */
    public static double minutes(double millilitresOfVapour, double ppm, double litresPerMinute) {
        return millilitresOfVapour / (ppm * litresPerMinute / 1e3);
    }

    /**
     * The bound, or why there is none.
     *
     * @param severalTypes true for a US cartridge that covers more than one type of gas, whose minimum life is halved
     */
    public static Reckoning<TimeBound> bound(TestCapacity test, GasUse use, HeldLike held, boolean severalTypes) {
        Optional<Reckoning<TimeBound>> refusal = use.refusal();
        if (refusal.isPresent()) {
            return refusal.get();
        }
        double share = held.share() * (severalTypes ? 0.5 : 1);
        double minutes = share
                * minutes(
                        test.millilitresOfVapour(),
                        Math.max(use.ppm(), held.floorPpm()),
                        use.flow().litresPerMinute());
        if (!held.shown() || !(minutes > 0)) {
            return Reckoning.refuse(
                    Soundness.HOLDING_NOT_SHOWN,
                    "Nothing shows that " + test.mark() + " holds this agent as well as " + test.gasName() + ".",
                    "Ask the manufacturer for it.");
        }
        boolean withinFlow = use.flow().litresPerMinute() <= test.flow();
        TimeBound bound = new TimeBound(BoundKind.TEST_CAPACITY, minutes, says(test, use, held), withinFlow);
        return outside(test, use, held, bound)
                .orElseGet(() -> Reckoning.of(bound, withinFlow ? List.of() : List.of(overFlow(test, use))));
    }

    private static String says(TestCapacity test, GasUse use, HeldLike held) {
        return String.format(
                Locale.ROOT,
                "Test of %s: %s ppm of %s at %s L/min for %s min. Here: %s ppm at %s L/min (%s).",
                test.mark(),
                WrittenNumbers.plain(test.ppm()),
                test.gasName(),
                WrittenNumbers.plain(test.flow()),
                WrittenNumbers.plain(test.minutes()),
                WrittenNumbers.plain(use.ppm()),
                WrittenNumbers.plain(use.flow().litresPerMinute()),
                held.because());
    }

    private static String overFlow(TestCapacity test, GasUse use) {
        return "The filter was tested at " + WrittenNumbers.plain(test.flow()) + " L/min and meets "
                + WrittenNumbers.plain(use.flow().litresPerMinute())
                + " L/min, where its bed is used less fully. Do not rely on this time alone. Ask the manufacturer for a"
                + " test at the flow of this unit.";
    }

    private static Optional<Reckoning<TimeBound>> outside(TestCapacity test, GasUse use, HeldLike held, TimeBound cap) {
        if (use.ppm() > test.ppm()) {
            return refuse(
                    cap,
                    Soundness.ABOVE_TEST_CONCENTRATION,
                    WrittenNumbers.plain(use.ppm()) + " ppm is more than the " + WrittenNumbers.plain(test.ppm())
                            + " ppm of the test of " + test.mark() + ".",
                    "Use a higher class, or supplied air.");
        }
        if (use.humidity() > test.humidity()) {
            return refuse(
                    cap,
                    Soundness.TOO_HUMID,
                    WrittenNumbers.plain(use.humidity()) + " % relative humidity is above the "
                            + WrittenNumbers.plain(test.humidity())
                            + " % of the test.",
                    "Ask the manufacturer for data in humid air.");
        }
        if (use.temperature() > test.temperature() && !held.warmAirCounted()) {
            return refuse(
                    cap,
                    Soundness.OUTSIDE_TEMPERATURE,
                    WrittenNumbers.plain(use.temperature()) + " C is above the "
                            + WrittenNumbers.plain(test.temperature()) + " C of the test.",
                    "Ask the manufacturer for data in warm air.");
        }
        if (use.exitPpm() < test.breakthroughPpm()) {
            return refuse(
                    cap,
                    Soundness.EXIT_LIMIT_TOO_LOW,
                    "The test ends at " + WrittenNumbers.plain(test.breakthroughPpm())
                            + " ppm behind the filter, above the "
                            + WrittenNumbers.plain(use.exitPpm())
                            + " ppm allowed here.",
                    "Ask the manufacturer for data with a lower end point.");
        }
        return Optional.empty();
    }

    private static Optional<Reckoning<TimeBound>> refuse(TimeBound cap, Soundness reason, String found, String remedy) {
        return Optional.of(new Refused<>(reason, found, remedy, Optional.of(cap)));
    }
}
