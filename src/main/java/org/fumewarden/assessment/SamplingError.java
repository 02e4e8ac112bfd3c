package org.fumewarden.assessment;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fumewarden.exposure.AnalyticalError;
import org.fumewarden.exposure.Period;
import org.fumewarden.model.Figures;
import org.fumewarden.model.SampleNote;
import org.fumewarden.task.Reading;

/**
 * The sampling and analytical error that a task states, laid over a level.
 *
 * <p>The upper 95 % limit of the result drives the advice: a result just below its limit proves nothing. Source of the band:
 * OSHA Technical Manual, section II chapter 1. That the upper limit sizes the respirator is our own choice, towards more
 * protection.
 */
final class SamplingError {
    private final Reading reading;
    private final double share;
    private final double limit;

    private SamplingError(Reading reading, double share, double limit) {
        this.reading = reading;
        this.share = share;
        this.limit = limit;
    }

    /** The error of a reading; empty when none is stated or there is no limit to hold the level against. */
    static Optional<SamplingError> of(Reading reading, OptionalDouble stated, OptionalDouble limit) {
        return stated.isPresent() && limit.isPresent()
                ? Optional.of(new SamplingError(reading, stated.getAsDouble(), limit.getAsDouble()))
                : Optional.empty();
    }

    /**
     * A level with its error.
     *
     * @param upper upper 95 % limit, never below the level, in the unit of the reading
     * @param words to stand behind the name of the statistic
     */
    record Raised(BigDecimal upper, String words, SampleNote note) {}

    /** One result over the whole averaging time. */
    Optional<Raised> single(BigDecimal level) {
        return AnalyticalError.single(level.doubleValue(), limit, share).value().map(band -> raised(level, band));
    }

    /** The average of stretches, whose errors partly cancel; time that nobody sampled carries the same relative error. */
    Optional<Raised> average(BigDecimal level, List<Period> sampled) {
        return AnalyticalError.consecutive(sampled, limit, share).value().map(part -> {
            double ratio = level.doubleValue() / limit;
            double half = part.ratio() > 0 ? (part.upper() - part.ratio()) * ratio / part.ratio() : 0;
            return raised(level, new AnalyticalError.Band(ratio, Math.max(0, ratio - half), ratio + half));
        });
    }

    private Raised raised(BigDecimal level, AnalyticalError.Band band) {
        String percent = Figures.shown(100 * share) + " %";
        String sentence = "With a sampling and analytical error of " + percent + " the result lies between "
                + Figures.shown(band.lower()) + " and " + Figures.shown(band.upper()) + " times the limit (95 %): "
                + finding(band);
        return new Raised(
                ExposureTables.level(band.upper() * limit).max(level),
                ", upper 95 % limit with an error of " + percent,
                Assessor.note(reading, "sampling-error", sentence));
    }

    private static String finding(AnalyticalError.Band band) {
        return switch (band.finding()) {
            case VIOLATION -> "above it beyond the error.";
            case NO_VIOLATION -> "not above it, error included.";
            case POSSIBLE -> "neither above nor below it is proven. Sample again.";
        };
    }
}
