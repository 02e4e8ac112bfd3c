package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * A level that nobody stated and that alone cannot matter, since something bounds it below what would ask for more protection.
 * In a sum it counts at that bound.
 *
 * @param question the question that need not be asked
 * @param kind {@code FLOORED} when a floor of the code covers it, {@code BOUNDED} when another figure does
 * @param by what bounds it: an agent, an averaging time or a floor
 * @param level the most that the air can hold, in {@code unit}
 * @param limit the limit or benchmark that it was held against
 * @param factor what is worn in any case; the level is at most so many times the limit
 * @param keeps the floor that has to be kept for it to hold, or nothing
 * @param scale whether the level is held against a limit or a benchmark, or is no level that adds up
 */
public record Bound(
        String agent,
        String question,
        Settlement kind,
        String by,
        BigDecimal level,
        BigDecimal limit,
        BigDecimal factor,
        String unit,
        String keeps,
        Scale scale)
        implements Conclusion {
    private static final String NO_FLOOR = "";

    /** What a level was held against. */
    public enum Scale {
        LIMIT,
        BENCHMARK,
        NONE
    }

    public Bound {
        Checks.text("agent", agent);
        Checks.text("question", question);
        Checks.text("by", by);
        Checks.notNegative("level", level);
        Checks.positive("limit", limit);
        Checks.positive("factor", factor);
    }

    /** A bound by a stated level: so many times that level, against the limit times what is worn in any case. */
    public static Bound by(
            OpenNeed open,
            Exposure stated,
            Threshold times,
            Limit limit,
            Cover worn,
            Agent agent,
            Threshold molarVolume) {
        return new Bound(
                open.agent(),
                open.question(),
                Settlement.BOUNDED,
                stated.agent().equals(open.agent()) ? stated.averaging().words() : stated.agent(),
                Cover.most(stated, times, limit, agent, molarVolume),
                worn.left(limit),
                worn.factor(),
                limit.unit().symbol(),
                worn.keeps(),
                Scale.LIMIT);
    }

    /** A bound by a stated level, against a benchmark. */
    public static Bound by(
            OpenNeed open,
            Exposure stated,
            Threshold times,
            Benchmark benchmark,
            Cover worn,
            Agent agent,
            Threshold molarVolume) {
        return by(open, stated, times, benchmark.asLimit(), worn, agent, molarVolume)
                .noLaw();
    }

    /** A bound by what a judgement of the whole assumes: so many times that, against the limit times what is worn in any case. */
    public static Bound by(OpenNeed open, Ratio judged, Threshold times, Limit limit, Cover worn) {
        return new Bound(
                open.agent(),
                open.question(),
                Settlement.BOUNDED,
                judged.agent(),
                judged.level().multiply(times.value()),
                worn.left(limit),
                worn.factor(),
                limit.unit().symbol(),
                worn.keeps(),
                Scale.LIMIT);
    }

    /** The same against a benchmark. */
    public static Bound by(OpenNeed open, Ratio judged, Threshold times, Benchmark benchmark, Cover worn) {
        return by(open, judged, times, benchmark.asLimit(), worn).noLaw();
    }

    /** A floor that covers the highest published level, against the limit times the floor. */
    public static Bound floored(OpenNeed open, PublishedHigh published, Limit limit, Cover floor) {
        return new Bound(
                open.agent(),
                open.question(),
                Settlement.FLOORED,
                floor.by(),
                published.value(),
                floor.left(limit),
                floor.factor(),
                limit.unit().symbol(),
                floor.keeps(),
                Scale.LIMIT);
    }

    /** A floor that covers so many times the highest published level. */
    public static Bound floored(OpenNeed open, PublishedHigh published, Threshold times, Limit limit, Cover floor) {
        Bound once = floored(open, published, limit, floor);
        return new Bound(
                once.agent,
                once.question,
                once.kind,
                once.by,
                once.level.multiply(times.value()),
                once.limit,
                once.factor,
                once.unit,
                once.keeps,
                once.scale);
    }

    /** A floor that covers the highest published level, against a benchmark times the floor. */
    public static Bound floored(OpenNeed open, PublishedHigh published, Benchmark benchmark, Cover floor) {
        return floored(open, published, benchmark.asLimit(), floor).noLaw();
    }

    private Bound noLaw() {
        return new Bound(agent, question, kind, by, level, limit, factor, unit, keeps, Scale.BENCHMARK);
    }

    /** The level of the whole, for a part that asks for no more than the whole does. */
    public static Bound whole(OpenNeed open, Ratio counted, String whole) {
        return new Bound(
                open.agent(),
                open.question(),
                Settlement.BOUNDED,
                whole,
                counted.level(),
                counted.limit(),
                BigDecimal.ONE,
                counted.unit().symbol(),
                NO_FLOOR,
                Scale.BENCHMARK);
    }

    /** The share of its limit at which an agent counts in a sum that the process usually gives off little of. */
    public static Bound usual(Hazard minor, Limit limit, Threshold share) {
        return new Bound(
                minor.agent(),
                limit.question(),
                Settlement.BOUNDED,
                Account.MINOR,
                limit.value().multiply(share.value()),
                limit.value(),
                BigDecimal.ONE,
                limit.unit().symbol(),
                NO_FLOOR,
                Scale.LIMIT);
    }

    /** A floor that stands for an agent without any limit. */
    public static Bound floor(OpenNeed open, String by, Threshold floor) {
        return new Bound(
                open.agent(),
                open.question(),
                Settlement.FLOORED,
                by,
                floor.value(),
                floor.value(),
                BigDecimal.ONE,
                floor.unit(),
                NO_FLOOR,
                Scale.NONE);
    }

    /** Oxygen that was measured, for a gas that harms only by taking its place. */
    public static Bound byOxygen(OpenNeed open, Measure oxygen, Threshold ordinary) {
        return new Bound(
                open.agent(),
                open.question(),
                Settlement.BOUNDED,
                "measured-oxygen",
                oxygen.value(),
                ordinary.value(),
                BigDecimal.ONE,
                ordinary.unit(),
                NO_FLOOR,
                Scale.NONE);
    }

    /** What the code's own guidance settles for controlled work, at its benchmark. */
    public static Bound byGuidance(OpenNeed open, String by, Benchmark benchmark) {
        return new Bound(
                open.agent(),
                open.question(),
                Settlement.FLOORED,
                by,
                benchmark.value(),
                benchmark.value(),
                BigDecimal.ONE,
                benchmark.unit().symbol(),
                NO_FLOOR,
                Scale.NONE);
    }

    /** True when this one is told before the other: what needs no floor kept first, then floors, then by what bounds. */
    public boolean toldBefore(Bound other) {
        if (keeps.isEmpty() != other.keeps.isEmpty()) {
            return keeps.isEmpty();
        }
        if (kind != other.kind) {
            return kind.compareTo(other.kind) < 0;
        }
        int byName = by.compareTo(other.by);
        return byName < 0 || byName == 0 && against().compareTo(other.against()) > 0;
    }

    /** True when it is a shift average that a stated level bounds: no practice, and no published level. */
    boolean physical() {
        return kind == Settlement.BOUNDED && ofShift();
    }

    /** True when this one says before the other what is worn until the level is measured: what is physical, then the higher. */
    public boolean keptBefore(Bound other) {
        if (physical() != other.physical()) {
            return physical();
        }
        int higher = factor.compareTo(other.factor);
        return higher > 0 || higher == 0 && toldBefore(other);
    }

    /** The limit times what is worn in any case. */
    public BigDecimal against() {
        return limit.multiply(factor);
    }

    /** True when it bounds the average of a shift. */
    public boolean ofShift() {
        return question.equals(OpenNeed.shift(agent).question());
    }

    /** True when it is a level that adds up with others. */
    public boolean counted() {
        return scale != Scale.NONE;
    }

    /** True when it is no more than what the process usually gives off. */
    public boolean usual() {
        return by.equals(Account.MINOR);
    }

    /** True when the level is held against a benchmark. */
    public boolean benchmark() {
        return scale == Scale.BENCHMARK;
    }

    @Override
    public String subject() {
        return agent;
    }
}
