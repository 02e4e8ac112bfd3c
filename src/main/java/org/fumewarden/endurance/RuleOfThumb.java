package org.fumewarden.endurance;

import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Published rule of thumb for organic vapours, read on its safe side.
 *
 * <p>Never longer than the reference life; longer only by whole decades below the reference concentration; shortened in
 * proportion above it and above the reference flow; shortened in humid air. May not stand alone.
 *
 * @param lowestBoilingPoint degrees Celsius; the agent must boil above it
 * @param referencePpm concentration of the rule
 * @param referenceMinutes life of the rule
 * @param referenceFlow litres per minute the rule is taken to mean
 * @param lifePerDecadeDown factor of life for a tenth of the concentration
 * @param humidFrom percent relative humidity above which life is shortened
 * @param humidShare share of life left then
 */
public record RuleOfThumb(
        double lowestBoilingPoint,
        double referencePpm,
        double referenceMinutes,
        double referenceFlow,
        double lifePerDecadeDown,
        double humidFrom,
        double humidShare) {
    public RuleOfThumb {
        new Inputs()
                .positive("reference-concentration", referencePpm)
                .positive("reference-life", referenceMinutes)
                .positive("reference-flow", referenceFlow)
                .within("life-per-decade-down", lifePerDecadeDown, 1, 10)
                .within("humid-share", humidShare, 0.01, 1)
                .orThrow("Rule of thumb");
    }

    /** Minutes for a boiling point in degrees Celsius and a use. */
    public Reckoning<TimeBound> bound(double boilingPoint, GasUse use) {
        Optional<Reckoning<TimeBound>> refusal = use.refusal();
        if (refusal.isPresent()) {
            return refusal.get();
        }
        if (!(boilingPoint > lowestBoilingPoint)) {
            return Reckoning.refuse(
                    Soundness.OUTSIDE_PUBLISHED_RANGE,
                    "The rule of thumb holds above " + WrittenNumbers.plain(lowestBoilingPoint)
                            + " C; the agent boils at " + WrittenNumbers.plain(boilingPoint)
                            + " C.",
                    "Use an AX filter by its group, or supplied air.");
        }
        double minutes = minutes(use.ppm(), use.flow().litresPerMinute() / referenceFlow, use.humidity());
        return Reckoning.of(
                new TimeBound(
                        BoundKind.RULE_OF_THUMB,
                        minutes,
                        "Rule of thumb: " + WrittenNumbers.plain(referenceMinutes) + " min below "
                                + WrittenNumbers.plain(referencePpm) + " ppm at " + WrittenNumbers.plain(referenceFlow)
                                + " L/min, less in proportion to flow and concentration and in humid air.",
                        false),
                List.of("The rule of thumb may only be used together with another method."));
    }

    /**
     * Minutes by the rule alone.
     *
     * @param workFactor flow over the flow of the rule; below 1 counts as 1
     */
    public double minutes(double ppm, double workFactor, double humidity) {
        double humid = humidity > humidFrom ? humidShare : 1;
        double life = referenceMinutes * concentrationFactor(ppm) / Math.max(1, workFactor) * humid;
        return Math.min(referenceMinutes, life);
    }

    private double concentrationFactor(double ppm) {
        return ppm > referencePpm
                ? referencePpm / ppm
                : Math.pow(lifePerDecadeDown, Math.floor(Math.log10(referencePpm / ppm)));
    }
}
