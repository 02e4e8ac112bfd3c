package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * A factor that is worn in any case, so that a level below that many times its limit need not be asked for.
 *
 * @param form the form of agent that it covers, or {@code any}
 * @param factor 1 for no respirator at all
 * @param by the floor that orders it, or {@code nothing}
 * @param keeps the floor that nothing orders yet and that would have to be kept, or nothing
 * @param lowers the agent whose limit of a shift a long one lowers, {@code any}, or nothing
 * @param share what the shift leaves of that limit; limits of shorter times stay as they are
 */
public record Cover(String form, BigDecimal factor, String by, String keeps, String lowers, BigDecimal share)
        implements Conclusion {
    private static final String ANY = "any";
    private static final String PARTICLE = "particle";
    private static final String NONE = "";

    public Cover {
        Checks.positive("factor", factor);
        Checks.positive("share", share);
    }

    private Cover(String form, BigDecimal factor, String by, String keeps) {
        this(form, factor, by, keeps, NONE, BigDecimal.ONE);
    }

    /** Nothing is worn. */
    public static Cover none() {
        return new Cover(ANY, BigDecimal.ONE, "nothing", NONE);
    }

    /** A floor is worn, which holds particles. */
    public static Cover floor(Need floor) {
        return new Cover(PARTICLE, floor.level(), floor.subject(), NONE);
    }

    /** Nothing is worn, in a shift that lowers every limit: see {@link Limit#loweredForRest}. */
    public static Cover noneInShift(Measure shift, Threshold reference) {
        return none().lowering(ANY, Limit.restShare(shift, reference));
    }

    /** A floor is worn, in a shift that lowers every limit. */
    public static Cover floorInShift(Need floor, Measure shift, Threshold reference) {
        return floor(floor).lowering(ANY, Limit.restShare(shift, reference));
    }

    /** Nothing is worn, in a shift that lowers the limit of one agent: see {@link Limit#lowered}. */
    public static Cover noneFor(String agent, Measure shift, Threshold reference) {
        return none().lowering(agent, Limit.share(shift, reference));
    }

    /** A floor is worn, in a shift that lowers the limit of one agent. */
    public static Cover floorFor(Need floor, String agent, Measure shift, Threshold reference) {
        return floor(floor).lowering(agent, Limit.share(shift, reference));
    }

    private Cover lowering(String agents, BigDecimal left) {
        return new Cover(form, factor, by, keeps, agents, left);
    }

    /** A floor that is worn only if a level needs it. */
    public static Cover kept(String floor, BigDecimal factor) {
        return new Cover(PARTICLE, factor, floor, floor);
    }

    /** True when it covers agents of the form. */
    public boolean covers(String other) {
        return form.equals(ANY) || form.equals(other);
    }

    /** True when so many times the level is at or below the limit, times this factor. */
    public boolean holds(Exposure exposure, Threshold times, Limit listed, Agent agent, Threshold molarVolume) {
        Limit limit = listed.in(exposure.unit());
        return most(exposure, times, limit, agent, molarVolume).compareTo(most(limit)) <= 0;
    }

    /** True when so many times the level is at or below the benchmark, times this factor. */
    public boolean holds(Exposure exposure, Threshold times, Benchmark benchmark, Agent agent, Threshold molarVolume) {
        return holds(exposure, times, benchmark.asLimit(), agent, molarVolume);
    }

    /** True when a published level is at or below the limit, times this factor. */
    public boolean holds(PublishedHigh published, Limit limit) {
        return published.unit() == limit.unit() && published.value().compareTo(most(limit)) <= 0;
    }

    /** True when so many times a published level is at or below the limit, times this factor. */
    public boolean holds(PublishedHigh published, Threshold times, Limit limit) {
        return published.unit() == limit.unit()
                && published.value().multiply(times.value()).compareTo(most(limit)) <= 0;
    }

    /** True when a published level is at or below the benchmark, times this factor. */
    public boolean holds(PublishedHigh published, Benchmark benchmark) {
        return holds(published, benchmark.asLimit());
    }

    /** True when so many times what a judgement assumes is at or below the limit, times this factor. */
    public boolean holds(Ratio judged, Threshold times, Limit limit) {
        return judged.unit() == limit.unit()
                && judged.level().multiply(times.value()).compareTo(most(limit)) <= 0;
    }

    /** True when so many times what a judgement assumes is at or below the benchmark, times this factor. */
    public boolean holds(Ratio judged, Threshold times, Benchmark benchmark) {
        return holds(judged, times, benchmark.asLimit());
    }

    /** What the length of the shift leaves of the limit. */
    BigDecimal left(Limit limit) {
        boolean falls = limit.averaging() == Averaging.TWA && (lowers.equals(ANY) || lowers.equals(limit.agent()));
        return falls ? limit.value().multiply(share) : limit.value();
    }

    private BigDecimal most(Limit limit) {
        return left(limit).multiply(factor);
    }

    /** So many times the level, in the unit of the limit. */
    static BigDecimal most(Exposure exposure, Threshold times, Limit limit, Agent agent, Threshold molarVolume) {
        return Concentrations.convert(exposure.level(), exposure.unit(), limit.unit(), agent, molarVolume)
                .multiply(times.value());
    }

    @Override
    public String subject() {
        return by;
    }
}
