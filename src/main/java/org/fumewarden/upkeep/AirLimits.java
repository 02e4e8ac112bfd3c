package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a standard allows in breathing air.
 *
 * @param oxygenLow lowest oxygen content, % by volume
 * @param oxygenHigh highest oxygen content, % by volume
 * @param carbonMonoxide highest carbon monoxide, ppm
 * @param carbonDioxide highest carbon dioxide, ppm
 * @param oil highest oil mist and vapour, mg/m3
 * @param clause source and clause
 */
public record AirLimits(
        BigDecimal oxygenLow,
        BigDecimal oxygenHigh,
        BigDecimal carbonMonoxide,
        BigDecimal carbonDioxide,
        BigDecimal oil,
        String clause) {
    /** Oxygen, carbon monoxide, carbon dioxide and oil. */
    private static final int LIMITED = 4;

    /** What a test found beyond the limits, in words; a value at the limit is within it. */
    public List<String> breaches(AirTest test) {
        List<String> breaches = new ArrayList<>();
        test.oxygen()
                .filter(o -> o.compareTo(oxygenLow) < 0)
                .ifPresent(o -> breaches.add("oxygen " + o + " % is below " + oxygenLow + " %"));
        above(breaches, "oxygen", test.oxygen(), oxygenHigh, "%");
        above(breaches, "carbon monoxide", test.carbonMonoxide(), carbonMonoxide, "ppm");
        above(breaches, "carbon dioxide", test.carbonDioxide(), carbonDioxide, "ppm");
        above(breaches, "oil", test.oil(), oil, "mg/m3");
        return List.copyOf(breaches);
    }

    private static void above(
            List<String> breaches, String what, Optional<BigDecimal> measured, BigDecimal limit, String unit) {
        measured.filter(m -> m.compareTo(limit) > 0)
                .ifPresent(m -> breaches.add(what + " " + m + " " + unit + " is above " + limit + " " + unit));
    }

    /** A test as its figures judge it, with the sentence that says why; empty when there was nothing to judge. */
    public record Judgement(AirTest test, String says) {}

    /**
     * Judges a test, never milder than the person who made it.
     *
     * @param whole true for a test of breathing air: it is open until there is a figure for everything that has a limit
     */
    public Judgement judged(AirTest test, boolean whole) {
        List<String> breaches = breaches(test);
        List<String> lacking = test.lacking();
        if (!breaches.isEmpty()) {
            String why = String.join("; ", breaches);
            return new Judgement(
                    test.judged(Result.FAILED, test.standard().isEmpty() ? clause : test.standard(), why),
                    "Failed: " + why + " [" + clause + "]. Take this air out of use.");
        }
        if (test.result() == Result.FAILED) {
            return new Judgement(test, "Failed as entered. Take this air out of use.");
        }
        if (whole && !lacking.isEmpty()) {
            String why = "not judged: no figure for " + String.join(", ", lacking);
            return new Judgement(
                    test.judged(Result.OPEN, test.standard(), why),
                    "The test is open, " + why + " [" + clause + "]. Enter it again with every figure.");
        }
        return new Judgement(
                test,
                lacking.size() == LIMITED
                        ? "No figure is given: it counts as entered."
                        : "The figures given keep the limits of breathing air [" + clause + "].");
    }
}
