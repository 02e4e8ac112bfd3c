package org.fumewarden.endurance;

import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Run time of a blower that holds its flow, from power and energy.
 *
 * <p>{@code P = Q dp / efficiency + electronics}, dp growing with the dust. The run ends when the pack is at its reserve or
 * when the filter needs more pressure than the blower can give at the minimum design flow, whichever is first.
 *
 * @param litresPerMinute that the unit delivers and holds
 * @param mainFilters equal filters in parallel
 * @param startPascals pressure drop over the filters now
 * @param largestPascals most the blower gives at the minimum design flow
 * @param efficiency air power over electric power of fan and motor
 * @param electronics watts besides the fan
 */
public record BlowerModel(
        double litresPerMinute,
        int mainFilters,
        double startPascals,
        double largestPascals,
        CaseRange efficiency,
        CaseRange electronics) {

    /** Air power in watts at a pressure drop. */
    public double airPower(double pascals) {
        return litresPerMinute * FilterPressure.CUBIC_METRES_PER_SECOND * pascals;
    }

    /** Electric power in watts at a pressure drop, for one case. */
    public double electricPower(double pascals, double caseEfficiency, double caseElectronics) {
        return airPower(pascals) / caseEfficiency + caseElectronics;
    }

    /**
     * The run time.
     *
     * @param wattHours usable down to the reserve
     * @param load dust on the set
     * @param pressure how one main filter loads
     */
    public Reckoning<RunTime> runTime(Span wattHours, DustLoad load, FilterPressure pressure) {
        Optional<Reckoning<RunTime>> bad = new Inputs()
                .positive("The flow in L/min", litresPerMinute)
                .positive("The number of filters", mainFilters)
                .positive("The pressure drop in Pa", startPascals)
                .positive("The largest pressure of the blower in Pa", largestPascals)
                .within("The longest efficiency", efficiency.longRun(), 0.01, 1)
                .notNegative("The usable energy in Wh", wattHours.low())
                .notNegative("The dust in mg/min", load.milligramsPerMinute())
                .refusal();
        if (bad.isPresent()) {
            return bad.get();
        }
        if (startPascals >= largestPascals) {
            return Reckoning.refuse(
                    Soundness.BELOW_MINIMUM_FLOW,
                    "The filters already need " + WrittenNumbers.plain(startPascals) + " Pa, all of the "
                            + WrittenNumbers.plain(largestPascals)
                            + " Pa the blower gives at its minimum design flow: do not use it.",
                    "Fit new filters.");
        }
        double perFilterFlow = litresPerMinute / mainFilters;
        double perFilterLoad = load.onMainFilter() / mainFilters;
        double shortGrowth = perFilterLoad
                * pressure.perMilligram(perFilterFlow, pressure.cakeResistance().shortRun());
        double likelyGrowth = perFilterLoad
                * pressure.perMilligram(perFilterFlow, pressure.cakeResistance().likely());
        double longGrowth = perFilterLoad
                * pressure.perMilligram(perFilterFlow, pressure.cakeResistance().longRun());
        Span reserve = new Span(
                toReserve(wattHours.low(), efficiency.shortRun(), electronics.shortRun(), shortGrowth),
                toReserve(wattHours.likely(), efficiency.likely(), electronics.likely(), likelyGrowth),
                toReserve(wattHours.high(), efficiency.longRun(), electronics.longRun(), longGrowth));
        double room = largestPascals - startPascals;
        Span flow = new Span(room / shortGrowth, room / likelyGrowth, room / longGrowth);
        return Reckoning.of(
                RunTime.earlier(reserve, flow, RunTime.Basis.MODELLED),
                List.of("Modelled from power and energy: a curve measured on this unit takes precedence."));
    }

    /** Solves draw * t + growth * t * t / 2 = energy; exact also without growth. */
    private double toReserve(double wattHours, double caseEfficiency, double caseElectronics, double growth) {
        double draw = electricPower(startPascals, caseEfficiency, caseElectronics);
        double rise = airPower(growth) / caseEfficiency;
        double energy = wattHours * 60;
        return 2 * energy / (draw + Math.sqrt(draw * draw + 2 * rise * energy));
    }
}
