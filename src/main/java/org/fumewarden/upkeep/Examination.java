package org.fumewarden.upkeep;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The thorough examination and test of a unit, mask, plant or air supply, with the fields that the clauses ask for.
 *
 * <p>It fails when the flow is below the maker's minimum, or when an extraction plant does not do what it is meant to do.
 *
 * @param cylinderPressure as read at the examination, in bar
 * @param cylinderFullPressure of the full cylinder as its maker gives it, in bar
 * @param flow measured, in litres per minute
 * @param minimumFlow of the maker, in litres per minute
 * @param operatingConditions of an extraction plant while it was tested: normal production, other, and what was running
 * @param intendedPerformance what an extraction plant must do to control the exposure
 * @param performanceMet whether it does so
 * @param designation of the examiner: post or qualification
 * @param examinerEmployer who employs the examiner
 */
public record Examination(
        Result result,
        String condition,
        String defects,
        String action,
        String filterCondition,
        String batteryCondition,
        Optional<BigDecimal> cylinderPressure,
        Optional<BigDecimal> cylinderFullPressure,
        Optional<BigDecimal> flow,
        Optional<BigDecimal> minimumFlow,
        String operatingConditions,
        String intendedPerformance,
        Optional<Boolean> performanceMet,
        String methods,
        String designation,
        String examinerEmployer,
        String signature)
        implements Details {
    public Examination {
        condition = Given.needed("condition", condition);
        defects = Given.optional("defects", defects);
        action = Given.optional("action", action);
        filterCondition = Given.optional("filter-condition", filterCondition);
        batteryCondition = Given.optional("battery-condition", batteryCondition);
        cylinderPressure = Given.amount("cylinder-pressure", cylinderPressure);
        cylinderFullPressure = Given.amount("cylinder-full-pressure", cylinderFullPressure);
        flow = Given.amount("flow", flow);
        minimumFlow = Given.amount("minimum-flow", minimumFlow);
        operatingConditions = Given.optional("operating-conditions", operatingConditions);
        intendedPerformance = Given.optional("intended-performance", intendedPerformance);
        performanceMet = Given.maybe(performanceMet);
        methods = Given.optional("methods", methods);
        designation = Given.optional("designation", designation);
        examinerEmployer = Given.optional("examiner-employer", examinerEmployer);
        signature = Given.optional("signature", signature);
        Result judged = Flows.judged(Result.ofCheck("result", result), List.of(), flow, minimumFlow);
        result = performanceMet.filter(met -> !met).isPresent() ? Result.FAILED : judged;
    }

    @Override
    public String whyFailed() {
        if (result != Result.FAILED) {
            return "";
        }
        String flows = performanceMet.filter(met -> !met).isPresent()
                ? "it does not do what it is meant to do"
                : Flows.why(result, flow, minimumFlow);
        return flows.isEmpty() ? defects : flows;
    }

    /** The same examination with another result and remedial action. */
    Examination with(Result result, String action) {
        return new Examination(
                result,
                condition,
                defects,
                action,
                filterCondition,
                batteryCondition,
                cylinderPressure,
                cylinderFullPressure,
                flow,
                minimumFlow,
                operatingConditions,
                intendedPerformance,
                performanceMet,
                methods,
                designation,
                examinerEmployer,
                signature);
    }
}
