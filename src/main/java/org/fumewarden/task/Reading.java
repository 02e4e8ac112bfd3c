package org.fumewarden.task;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.exposure.NonDetects;
import org.fumewarden.exposure.Period;
import org.fumewarden.exposure.Sample;
import org.fumewarden.exposure.Statistic;
import org.fumewarden.exposure.TimeWeightedAverage;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Unit;

/** What a task file tells about an agent when the level itself is still to be reckoned. */
public sealed interface Reading {

    /** The agent. */
    String agent();

    /** Averaging time of the level that comes of it. */
    Averaging averaging();

    /** Place in the task file. */
    String path();

    /**
     * Samples of one group of workers.
     *
     * @param samples all in {@code unit}, all above zero
     * @param highest the highest result or detection limit as written, in {@code unit}
     * @param desired a statistic that counts when it is higher than the usual one
     * @param error sampling and analytical error as a share, such as 0.23
     */
    record Samples(
            String agent,
            Averaging averaging,
            Unit unit,
            List<Sample> samples,
            BigDecimal highest,
            NonDetects nonDetects,
            Optional<Statistic> desired,
            OptionalDouble error,
            String path)
            implements Reading {
        public Samples {
            samples = List.copyOf(samples);
        }
    }

    /**
     * Stretches of one shift, back to back in the order worked.
     *
     * @param rest how the part of the shift is counted that nobody sampled
     * @param error sampling and analytical error of each stretch as a share
     */
    record Shift(
            String agent,
            Unit unit,
            List<Period> periods,
            TimeWeightedAverage.Unsampled rest,
            OptionalDouble error,
            String path)
            implements Reading {
        public Shift {
            periods = List.copyOf(periods);
        }

        @Override
        public Averaging averaging() {
            return Averaging.TWA;
        }
    }

    /** A level that is to be estimated from process, room and ventilation. */
    record RoomModel(String agent, String path) implements Reading {
        @Override
        public Averaging averaging() {
            return Averaging.TWA;
        }
    }
}
