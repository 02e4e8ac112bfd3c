package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.fumewarden.codes.Fault;

/**
 * When a code wants the cylinder of a self-contained set refilled.
 *
 * @param share of the maker's full pressure, in percent, at and below which it is refilled
 * @param clause source and clause
 */
public record CylinderLevel(BigDecimal share, String clause) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /**
     * An examination as the code judges it, with the sentence that says why.
     *
     * @param says empty when no pressure was read
     */
    public record Judgement(Examination examination, String says) {}

    /**
     * Judges an examination, never milder than the person who made it.
     *
     * @throws StoreException when a pressure was read and nobody said what a full cylinder holds
     */
    public Judgement judged(Examination examination) {
        if (examination.cylinderPressure().isEmpty()) {
            return new Judgement(examination, "");
        }
        BigDecimal read = examination.cylinderPressure().get();
        BigDecimal full = examination
                .cylinderFullPressure()
                .filter(f -> f.signum() > 0)
                .orElseThrow(() -> StoreException.about(
                                "cylinder-full-pressure",
                                "is not given, so " + read.toPlainString() + " bar cannot be judged [" + clause + "].",
                                "cylinder-full-pressure=300, as the manufacturer gives it; registered with the unit, it is taken from"
                                        + " there.")
                        .as(Fault.MISSING));
        String stands = "The cylinder holds " + read.toPlainString() + " of " + full.toPlainString() + " bar, "
                + read.multiply(HUNDRED)
                        .divide(full, 1, RoundingMode.FLOOR)
                        .stripTrailingZeros()
                        .toPlainString()
                + " %";
        if (read.multiply(HUNDRED).compareTo(full.multiply(share)) > 0) {
            return new Judgement(examination, stands + " [" + clause + "].");
        }
        String order = stands + ": refill it, it is at or below " + share.toPlainString() + " % [" + clause + "].";
        String action = examination.action().isEmpty() ? order : examination.action() + "; " + order;
        return new Judgement(examination.with(Result.FAILED, action), order);
    }
}
