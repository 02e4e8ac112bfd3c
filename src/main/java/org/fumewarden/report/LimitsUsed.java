package org.fumewarden.report;

import java.util.Comparator;
import java.util.OptionalDouble;
import org.fumewarden.advice.Advice;
import org.fumewarden.assessment.Assessment;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Ratio;
import org.fumewarden.model.Unit;

/** The limits that the advice compared with, in the unit of the samples. */
record LimitsUsed(Advice advice, ExposureTables figures) {

    /** The limit of an assessment: the lowest one the advice used, or else the lowest one that is held. */
    OptionalDouble of(Assessment assessment, Unit unit) {
        OptionalDouble used =
                used(assessment.reading().agent(), assessment.reading().averaging(), unit);
        return used.isPresent() ? used : assessment.limit();
    }

    /** The limit of any averaging time: the lowest one the advice used, or else the lowest one that is held. */
    OptionalDouble of(String agent, Averaging averaging, Unit unit) {
        OptionalDouble used = used(agent, averaging, unit);
        return used.isPresent()
                ? used
                : figures.lowestLimit(agent, averaging, unit).stream()
                        .mapToDouble(Number::doubleValue)
                        .findFirst();
    }

    /** A code may have lowered the limit, for a long shift for example; then the lowered one counts. */
    private OptionalDouble used(String agent, Averaging averaging, Unit unit) {
        return advice.trail().all(Ratio.class).stream()
                .filter(r -> r.agent().equals(agent) && r.averaging() == averaging)
                .flatMap(r -> figures.in(unit, r.limit(), r.unit(), agent).stream())
                .min(Comparator.naturalOrder())
                .stream()
                .mapToDouble(Number::doubleValue)
                .findFirst();
    }
}
