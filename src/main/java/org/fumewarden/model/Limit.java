package org.fumewarden.model;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * An exposure limit of a code.
 *
 * @param inMass the same limit in mg/m3, where the list prints it beside parts per million; its rounding is the list's own
 */
public record Limit(
        RowRef ref,
        String agent,
        Averaging averaging,
        BigDecimal value,
        Unit unit,
        String fraction,
        Optional<BigDecimal> inMass)
        implements Row {
    private static final int LOWERED_DIGITS = 12;
    private static final MathContext SHARE = new MathContext(20, RoundingMode.DOWN);
    private static final BigDecimal DAY = BigDecimal.valueOf(1440);

    public Limit {
        Checks.positive("value", value);
        inMass.ifPresent(v -> Checks.positive("inMass", v));
    }

    public Limit(RowRef ref, String agent, Averaging averaging, BigDecimal value, Unit unit, String fraction) {
        this(ref, agent, averaging, value, unit, fraction, Optional.empty());
    }

    /** The list that it stands in. */
    public String listed() {
        return ref.table();
    }

    /** The limit as the list prints it in a unit; as it is where the list prints it in its own unit alone. */
    public Limit in(Unit asked) {
        return asked == Unit.MG_M3 && inMass.isPresent()
                ? new Limit(ref, agent, averaging, inMass.get(), asked, fraction)
                : this;
    }

    /** The same limit for a shift that is longer than the one it was made for: the dose stays as it was. */
    public Limit lowered(Measure shift, Threshold reference) {
        return at(value.multiply(reference.value()).divide(shift.value(), LOWERED_DIGITS, RoundingMode.FLOOR));
    }

    /** The share of a limit that {@link #lowered} leaves. */
    static BigDecimal share(Measure shift, Threshold reference) {
        return reference.value().divide(shift.value(), SHARE);
    }

    /**
     * The same limit for a longer shift, where the day leaves less time to recover: limit x reference x (24 h - shift) /
     * ((24 h - reference) x shift), both in minutes; source: Brief and Scala 1975. A shift that leaves no rest counts as one
     * that leaves a minute.
     */
    public Limit loweredForRest(Measure shift, Threshold reference) {
        return at(value.multiply(restShare(shift, reference)).setScale(LOWERED_DIGITS, RoundingMode.FLOOR));
    }

    /** The share of a limit that such a shift leaves, above 0 and at most 1. */
    static BigDecimal restShare(Measure shift, Threshold reference) {
        BigDecimal rest = DAY.subtract(shift.value()).max(BigDecimal.ONE);
        return reference
                .value()
                .multiply(rest)
                .divide(DAY.subtract(reference.value()).multiply(shift.value()), SHARE);
    }

    private Limit at(BigDecimal lower) {
        return new Limit(ref, agent, averaging, lower, unit, fraction);
    }

    /** The limit of 15 min that a code derives from this limit of a shift. */
    public Limit times(Threshold multiple) {
        return new Limit(ref, agent, Averaging.STEL, value.multiply(multiple.value()), unit, fraction);
    }

    /** The question of a task file that asks for the level of this limit. */
    public String question() {
        return "exposures." + agent + "." + averaging.key();
    }

    /** True when the exposure, in whatever unit it was given, is above this limit times the multiple. */
    public boolean passedBy(Exposure exposure, Threshold multiple, Agent about, Threshold molarVolume) {
        Limit held = in(exposure.unit());
        return held.level(exposure, about, molarVolume).compareTo(held.value.multiply(multiple.value())) > 0;
    }

    /** True when the exposure, in whatever unit it was given, is above this limit. */
    public boolean passedBy(Exposure exposure, Agent about, Threshold molarVolume) {
        Limit held = in(exposure.unit());
        return held.level(exposure, about, molarVolume).compareTo(held.value) > 0;
    }

    /** True when so many times a shift average is above this limit times the multiple. */
    public boolean passedByPeak(
            Exposure average, Threshold times, Threshold multiple, Agent about, Threshold molarVolume) {
        Limit held = in(average.unit());
        return held.level(average, about, molarVolume)
                        .multiply(times.value())
                        .compareTo(held.value.multiply(multiple.value()))
                > 0;
    }

    private BigDecimal level(Exposure exposure, Agent about, Threshold molarVolume) {
        return Concentrations.convert(exposure.level(), exposure.unit(), unit, about, molarVolume);
    }
}
