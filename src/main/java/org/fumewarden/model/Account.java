package org.fumewarden.model;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * How one hazard is settled for one averaging time. Every principal hazard of a task ends in one for each averaging time that
 * matters; a hazard without an account is a fault of the program.
 *
 * @param averaging key of the averaging time, {@code any}, or the id of a question that is not of its level
 * @param level what the air holds or can hold at most; empty when nobody knows
 * @param against the limit, benchmark or bound that the level was held against; empty when there is none
 * @param unit symbol of the unit of both
 * @param by what settles it: the address of a row, what bounds it, or the question that is open
 */
public record Account(
        String agent,
        String averaging,
        Settlement kind,
        Optional<BigDecimal> level,
        Optional<BigDecimal> against,
        String unit,
        String by)
        implements Conclusion {
    /** What settles an agent that the process usually gives off little of. */
    public static final String MINOR = "minor-emission";

    private static final MathContext PRINT = new MathContext(2, RoundingMode.CEILING);

    public Account {
        Checks.text("agent", agent);
        Checks.text("averaging", averaging);
        Checks.text("by", by);
    }

    /** The account of a level that was held against a limit or a benchmark. */
    public static Account of(Ratio ratio) {
        return of(ratio, ratio.settlement());
    }

    /** The account of a level that was held against a limit of a list that the code borrows. */
    public static Account borrowed(Ratio ratio) {
        return of(ratio, Settlement.BORROWED);
    }

    private static Account of(Ratio ratio, Settlement kind) {
        return new Account(
                ratio.agent(),
                ratio.averaging().key(),
                kind,
                Optional.of(ratio.level()),
                Optional.of(ratio.limit()),
                ratio.unit().symbol(),
                ratio.limitRow());
    }

    /** The account of a level that nobody stated and that something bounds. */
    public static Account of(Bound bound) {
        return new Account(
                bound.agent(),
                averaging(bound.question()),
                bound.kind(),
                Optional.of(bound.level()),
                Optional.of(bound.against()),
                bound.unit(),
                bound.by());
    }

    /** The account of a hazard that is usually small where it is given off and of which no level is stated. */
    public static Account minor(Hazard hazard) {
        return new Account(hazard.agent(), "any", Settlement.BOUNDED, Optional.empty(), Optional.empty(), "", MINOR);
    }

    /** The account that a question leaves open. */
    public static Account open(OpenNeed open) {
        return new Account(
                open.agent(),
                averaging(open.question()),
                Settlement.OPEN,
                Optional.empty(),
                Optional.empty(),
                "",
                open.question());
    }

    private static String averaging(String question) {
        String last = question.substring(question.lastIndexOf('.') + 1);
        for (Averaging averaging : Averaging.values()) {
            if (averaging.key().equals(last)) {
                return last;
            }
        }
        return question.startsWith("exposures.") ? "any" : last;
    }

    /** True when the hazard is not settled. */
    public boolean open() {
        return kind == Settlement.OPEN;
    }

    /** Level over limit, to two figures and rounded up, for printing only; empty without both. */
    public Optional<BigDecimal> factor() {
        return level.flatMap(l -> against.map(a -> l.divide(a, PRINT).stripTrailingZeros()));
    }

    @Override
    public String subject() {
        return agent;
    }
}
