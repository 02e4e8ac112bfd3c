package org.fumewarden.model;

/** A row of a rule table. */
public sealed interface Row extends Fact
        permits Act,
                Agent,
                AssignedFactor,
                Band,
                Benchmark,
                BreathingRate,
                ClauseFor,
                DangerLevel,
                DeviceClass,
                Duty,
                DutyCondition,
                Emitter,
                EyeShade,
                Figure,
                FilterMatch,
                Lever,
                Limit,
                Member,
                NoneListed,
                PublishedExposure,
                PublishedHigh,
                QuantityRange,
                Term,
                Threshold {

    /** Where the row stands and which clause it repeats. */
    RowRef ref();

    /** What it repeats. */
    default Citation citation() {
        return ref().citation();
    }
}
