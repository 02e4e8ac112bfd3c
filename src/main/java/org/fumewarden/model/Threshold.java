package org.fumewarden.model;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/** A single number that a rule compares with. */
public record Threshold(RowRef ref, String id, BigDecimal value, String unit) implements Row {

    /** True when the amount lies above the threshold. */
    public boolean below(BigDecimal amount) {
        return amount.compareTo(value) > 0;
    }

    /** True when the level, given in the unit of the threshold, lies above it. */
    public boolean passedBy(Exposure exposure) {
        return exposure.unit().symbol().equals(unit) && below(exposure.level());
    }

    /** True when the level, given in the unit of the threshold, does not lie above it. */
    public boolean keptBy(Exposure exposure) {
        return exposure.unit().symbol().equals(unit) && !below(exposure.level());
    }

    /** True when the level of the ratio, in its own unit, is at or above the threshold; what is judged to be below a figure only above it. */
    public boolean reachedBy(Ratio ratio) {
        return ratio.level().compareTo(value) >= (ratio.basis().equals(Ratio.JUDGED) ? 1 : 0);
    }

    /** True when the level of a ratio, in the unit of its limit, is above the threshold. */
    public boolean passedBy(Ratio ratio) {
        return below(ratio.level());
    }

    /** True when an exposure is at or above this level, whatever its averaging time, or in a unit that this level cannot be compared with. */
    public boolean reachedBy(Exposure exposure) {
        return !exposure.unit().symbol().equals(unit) || exposure.level().compareTo(value) >= 0;
    }

    /** True when it is the one of a name for agent and averaging time of an exposure: name, agent and time joined by a hyphen. */
    public boolean isFor(String name, Exposure exposure) {
        return id.equals(
                name + "-" + exposure.agent() + "-" + exposure.averaging().key());
    }

    /** True when a gas that takes the place of air leaves less than this of a share of ordinary air. */
    public boolean undercutBy(Threshold ordinary, Exposure gas, Agent about, Threshold molarVolume) {
        return ordinary.leftBy(gas, about, molarVolume).compareTo(value) < 0;
    }

    /**
     * True when a stated share of the air lies further than this above what a gas that takes its place leaves of it. What is
     * above ordinary air is no work of that gas.
     */
    public boolean parts(Measure stated, Threshold ordinary, Exposure gas, Agent about, Threshold molarVolume) {
        return below(stated.value().min(ordinary.value()).subtract(ordinary.leftBy(gas, about, molarVolume)));
    }

    /** True when a stated peak is more than so many times the average of the shift that holds it. */
    public boolean cannotHold(Exposure average, Exposure peak, Agent about, Threshold molarVolume) {
        return peak.statistic().equals(Exposure.AS_GIVEN)
                && Concentrations.convert(peak.level(), peak.unit(), average.unit(), about, molarVolume)
                                .compareTo(average.level().multiply(value))
                        > 0;
    }

    /** True when so many times the limit of a shift is stricter than a limit of short time in the same unit. */
    public boolean tightens(Limit shift, Limit peak) {
        return shift.unit() == peak.unit() && shift.value().multiply(value).compareTo(peak.value()) < 0;
    }

    /** True when the sum of what was compared passes this only together with the bounds of what nobody stated. */
    public boolean passedOnlyWith(List<Bound> most, List<Ratio> ratios) {
        return below(Need.sum(ratios, most)) && !below(Need.sum(ratios, List.of()));
    }

    /** True when an index passes this only together with the bounds of gases that nobody measured. */
    public boolean passedOnlyWith(List<Bound> gases, List<Bound> dust, List<Ratio> ratios, List<Member> sets) {
        List<Bound> both = Stream.concat(dust.stream(), gases.stream()).toList();
        return Need.index(id, ratios, both, sets).above(value)
                && !Need.index(id, ratios, dust, sets).above(value);
    }

    /** True when an agent of a sum is one of the small gases of it that may pass a filter, within this share of the common limit. */
    public boolean letsThrough(String agent, Need sum, List<Ratio> gases, List<Bound> most) {
        boolean gas = gases.stream().anyMatch(r -> r.agent().equals(agent))
                || most.stream().anyMatch(b -> b.agent().equals(agent));
        return gas && new Passing(sum, this, gases, most).passes(agent);
    }

    /** True when a gas of a sum may pass a filter within this share. */
    public boolean letsSomeThrough(Need sum, List<Ratio> gases, List<Bound> most) {
        return new Passing(sum, this, gases, most).together().signum() > 0;
    }

    private BigDecimal leftBy(Exposure gas, Agent about, Threshold molarVolume) {
        BigDecimal taken = Concentrations.convert(gas.level(), gas.unit(), Unit.PPM, about, molarVolume)
                .movePointLeft(6)
                .min(BigDecimal.ONE);
        return value.multiply(BigDecimal.ONE.subtract(taken));
    }
}
