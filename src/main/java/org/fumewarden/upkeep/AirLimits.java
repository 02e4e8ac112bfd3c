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

    /** The judgement in a sentence; empty when no figure was given. */
    public String says(AirTest test) {
        if (!test.hasFigures()) {
            return "";
        }
        List<String> breaches = breaches(test);
        return breaches.isEmpty()
                ? "The figures given keep the limits of breathing air [" + clause + "]."
                : "Failed: " + String.join("; ", breaches) + " [" + clause + "]. Take this air out of use.";
    }

    /** The test with the result that its figures give, never milder than the person who made it. */
    public AirTest judged(AirTest test) {
        List<String> breaches = breaches(test);
        if (breaches.isEmpty()) {
            return test;
        }
        String others = test.others().isEmpty() ? "" : test.others() + "; ";
        return new AirTest(
                Result.FAILED,
                test.topic(),
                test.place(),
                test.standard().isEmpty() ? clause : test.standard(),
                test.oxygen(),
                test.carbonMonoxide(),
                test.carbonDioxide(),
                test.oil(),
                test.water(),
                test.odour(),
                others + String.join("; ", breaches),
                test.methods(),
                test.laboratory());
    }
}
