package org.fumewarden.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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

    /**
     * These rows with another in place of the one of this kind at this address, or beside them where there is none.
     *
     * @param instead the row in its place; none to leave it out
     */
    default List<Row> replacedIn(List<Row> rows, Optional<Row> instead) {
        return rows.stream().anyMatch(this::isReplacedBy)
                ? rows.stream()
                        .flatMap(row -> isReplacedBy(row) ? instead.stream() : Stream.of(row))
                        .toList()
                : Stream.concat(rows.stream(), instead.stream()).toList();
    }

    private boolean isReplacedBy(Row row) {
        return row.ref().isSameRow(ref()) && row.getClass() == getClass();
    }
}
