package org.fumewarden.model;

import java.math.BigDecimal;

/**
 * One exposure against one limit, both in the unit of the limit. Nothing is rounded.
 *
 * @param statistic how the level was obtained
 * @param basis {@code measured}, {@code benchmark}, {@code recommended}, {@code stated}, {@code estimated}, {@code judged},
 *     {@code judged-by-benchmark}, {@code assumed} or {@code of-the-whole}
 */
public record Ratio(
        String agent,
        Averaging averaging,
        BigDecimal level,
        BigDecimal limit,
        Unit unit,
        String statistic,
        String basis,
        String limitRow)
        implements Conclusion {
    /** The basis of a part that counts at the level of the whole that holds it. */
    public static final String OF_THE_WHOLE = "of-the-whole";

    /** What a sentence names to tell the level beside the limit. */
    public static final String COMPARED = "compared";

    private static final String PRESUMED = "assumed";
    static final String JUDGED = "judged";
    private static final String JUDGED_BY_BENCHMARK = "judged-by-benchmark";

    /** The ratio for a measured or estimated exposure. */
    public static Ratio of(Exposure exposure, Limit listed, Agent agent, Threshold molarVolume) {
        Limit limit = listed.in(exposure.unit());
        return of(
                exposure,
                limit.value(),
                limit.unit(),
                agent,
                molarVolume,
                "measured",
                limit.ref().address());
    }

    /** The ratio that a shift average proves for a limit of shorter time: the highest part is at least the average. */
    public static Ratio atLeast(Exposure shift, Limit shorter, Agent agent, Threshold molarVolume) {
        return of(shift.as(shift.agent(), shorter.averaging()), shorter, agent, molarVolume);
    }

    private static Ratio of(
            Exposure exposure,
            BigDecimal limit,
            Unit unit,
            Agent agent,
            Threshold molarVolume,
            String basis,
            String limitRow) {
        return new Ratio(
                exposure.agent(),
                exposure.averaging(),
                Concentrations.convert(exposure.level(), exposure.unit(), unit, agent, molarVolume),
                limit,
                unit,
                exposure.statistic(),
                exposure.estimated() ? "estimated" : basis,
                limitRow);
    }

    private Ratio against(BigDecimal other) {
        return new Ratio(agent, averaging, level, other, unit, statistic, basis, limitRow);
    }

    /** The ratio against a limit that a code derives by multiplying the limit of another averaging time. */
    public static Ratio against(
            Exposure exposure, Limit limit, Threshold multiple, Agent agent, Threshold molarVolume) {
        Ratio plain = of(exposure, limit, agent, molarVolume);
        return plain.against(plain.limit.multiply(multiple.value()));
    }

    /** As {@link #against}, where the code itself has no such rule: a benchmark, which is not law. */
    public static Ratio noLaw(Exposure exposure, Limit listed, Threshold multiple, Agent agent, Threshold molarVolume) {
        Limit limit = listed.in(exposure.unit());
        return of(
                exposure,
                limit.value().multiply(multiple.value()),
                limit.unit(),
                agent,
                molarVolume,
                "benchmark",
                limit.ref().address());
    }

    /**
     * The ratio against a limit that a code lowers for shifts longer than the one it was set for: limit x reference / shift.
     * The lowered limit is rounded down, so it is never overstated.
     *
     * @param shift length of the shift, in the unit of {@code reference}, above zero
     * @param reference shift for which the limit was set
     */
    public static Ratio longShift(
            Exposure exposure, Limit limit, Measure shift, Threshold reference, Agent agent, Threshold molarVolume) {
        return of(exposure, limit.lowered(shift, reference), agent, molarVolume);
    }

    /** The ratio that a code tells people to assume, as a multiple of the limit, until the exposure has been assessed. */
    public static Ratio assumed(Limit limit, Threshold multiple) {
        return assumed(
                limit.value().multiply(multiple.value()),
                limit,
                "assumed by the code until the exposure is assessed",
                PRESUMED);
    }

    /** True where the law presumes a multiple of the limit and nobody measured. */
    public boolean presumed() {
        return basis.equals(PRESUMED);
    }

    /** The ratio for an agent that somebody judged: the share of its limit that the judgement says, the limit itself at most. */
    public static Ratio judged(Threshold share, Limit limit) {
        return assumed(limit.value().multiply(share.value()), limit, "judged at or below the limit", JUDGED);
    }

    /** As {@link #judged(Threshold, Limit)}, where the code has no limit of its own. */
    public static Ratio judged(Threshold share, Benchmark benchmark) {
        return assumed(
                benchmark.value().multiply(share.value()),
                benchmark.asLimit(),
                "judged at or below the limit",
                JUDGED_BY_BENCHMARK);
    }

    /** As {@link #judged(Threshold, Limit)}, for a limit that the officer states. */
    public static Ratio judged(Threshold share, StatedLimit stated) {
        return new Ratio(
                stated.agent(),
                stated.averaging(),
                stated.value().multiply(share.value()),
                stated.value(),
                stated.unit(),
                "judged at or below the limit",
                JUDGED,
                stated.path());
    }

    private static Ratio assumed(BigDecimal level, Limit limit, String statistic, String basis) {
        return new Ratio(
                limit.agent(),
                limit.averaging(),
                level,
                limit.value(),
                limit.unit(),
                statistic,
                basis,
                limit.ref().address());
    }

    /** The ratio against a benchmark, where the code has no limit of its own. */
    public static Ratio benchmark(Exposure exposure, Benchmark benchmark, Agent agent, Threshold molarVolume) {
        return of(
                exposure,
                benchmark.value(),
                benchmark.unit(),
                agent,
                molarVolume,
                "benchmark",
                benchmark.ref().address());
    }

    /** As {@link #benchmark}, for a shift that lowers limits: see {@link Limit#loweredForRest}. */
    public static Ratio benchmark(
            Exposure exposure,
            Benchmark benchmark,
            Measure shift,
            Threshold reference,
            Agent agent,
            Threshold molarVolume) {
        return benchmark(exposure, benchmark, agent, molarVolume)
                .against(benchmark.asLimit().loweredForRest(shift, reference).value());
    }

    /** As {@link #benchmark}, beside a limit of the law: it counts for the factor and in no sum. */
    public static Ratio recommended(Exposure exposure, Benchmark benchmark, Agent agent, Threshold molarVolume) {
        Ratio r = benchmark(exposure, benchmark, agent, molarVolume);
        return new Ratio(r.agent, r.averaging, r.level, r.limit, r.unit, r.statistic, "recommended", r.limitRow);
    }

    /** The ratio of a part that nobody measured, taken at the level of the whole that holds it, against its benchmark. */
    public static Ratio ofPart(Exposure whole, Benchmark benchmark, Agent part, Threshold molarVolume) {
        Ratio plain = benchmark(whole.as(part.id(), benchmark.averaging()), benchmark, part, molarVolume);
        return new Ratio(
                plain.agent,
                plain.averaging,
                plain.level,
                plain.limit,
                plain.unit,
                plain.statistic,
                OF_THE_WHOLE,
                plain.limitRow);
    }

    /** The ratio against a limit that the officer states, in the unit of that limit. */
    public static Ratio stated(Exposure exposure, StatedLimit stated, Agent agent, Threshold molarVolume) {
        return of(exposure, stated.value(), stated.unit(), agent, molarVolume, "stated", stated.path());
    }

    /** The ratio against a multiple of the benchmark of another averaging time. */
    public static Ratio benchmark(
            Exposure exposure, Benchmark benchmark, Threshold multiple, Agent agent, Threshold molarVolume) {
        return benchmark(exposure, benchmark, agent, molarVolume)
                .against(benchmark.value().multiply(multiple.value()));
    }

    /** The question of a task file that this level answers. */
    public String question() {
        return "exposures." + agent + "." + averaging.key();
    }

    /** The list that the limit stands in; a path of the task file for a stated one. */
    public String listed() {
        return limitRow.split("#", 2)[0];
    }

    /** How this settles its hazard. */
    public Settlement settlement() {
        return switch (basis) {
            case "benchmark", "recommended" -> Settlement.BENCHMARKED;
            case "estimated" -> Settlement.ESTIMATED;
            case JUDGED, JUDGED_BY_BENCHMARK -> Settlement.JUDGED;
            case PRESUMED, OF_THE_WHOLE -> Settlement.ASSUMED;
            default -> Settlement.COMPARED;
        };
    }

    /** True when this one speaks for the agent and averaging time rather than the other: the higher, then by its row. */
    public boolean speaksBefore(Ratio other) {
        int higher = level.multiply(other.limit).compareTo(other.level.multiply(limit));
        if (higher != 0) {
            return higher > 0;
        }
        int byRow = limitRow.compareTo(other.limitRow);
        return byRow < 0 || byRow == 0 && basis.compareTo(other.basis) < 0;
    }

    /** True when nobody stated a level and a judgement stands in its place. */
    public boolean judged() {
        return settlement() == Settlement.JUDGED;
    }

    /** True when the level lies above the limit. */
    public boolean exceeded() {
        return level.compareTo(limit) > 0;
    }

    /** True when the level was held against no more than this benchmark. */
    public boolean noLooserThan(Benchmark benchmark) {
        return unit == benchmark.unit() && limit.compareTo(benchmark.value()) <= 0;
    }

    /** True when the level was held against the same figure as this limit. */
    public boolean heldAgainst(Limit other) {
        return unit == other.unit() && limit.compareTo(other.value()) == 0;
    }

    /** True when the level lies above a threshold that is given in the unit of the limit. */
    public boolean above(Threshold threshold) {
        return threshold.unit().equals(unit.symbol()) && threshold.below(level);
    }

    /** True when the level is more than so many times what it was held against. */
    public boolean fillsMoreThan(Threshold share) {
        return level.compareTo(limit.multiply(share.value())) > 0;
    }

    @Override
    public String subject() {
        return agent;
    }
}
