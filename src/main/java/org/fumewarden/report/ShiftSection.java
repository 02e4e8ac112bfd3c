package org.fumewarden.report;

import java.util.OptionalDouble;
import org.fumewarden.assessment.Assessment;
import org.fumewarden.exposure.Ceiling;
import org.fumewarden.exposure.Period;
import org.fumewarden.exposure.ShortTerm;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Reckoning;
import org.fumewarden.task.Reading;

/** What stretches of one shift say: 8 hour average, highest 15 minutes, highest stretch. */
final class ShiftSection {
    private final Reading.Shift shift;
    private final LimitsUsed limits;

    ShiftSection(Reading.Shift shift, LimitsUsed limits) {
        this.shift = shift;
        this.limits = limits;
    }

    void write(Page page, Assessment assessment) {
        String unit = shift.unit().symbol();
        assessment
                .exposure()
                .ifPresent(x -> page.paragraph("The advice rests on: " + x.statistic() + ", "
                        + Page.number(x.level().doubleValue()) + " " + unit
                        + ratio(x.level().doubleValue(), limits.of(assessment, shift.unit())) + "."));
        shortTerm(page, unit);
        Reckoning<Double> highest = Ceiling.highest(shift.periods());
        highest.value()
                .ifPresent(v -> page.paragraph("Highest period: " + Page.number(v) + " " + unit
                        + ratio(v, limits.of(shift.agent(), Averaging.CEILING, shift.unit()))
                        + ". A period hides the peaks inside it, so a ceiling may still have been exceeded."));
    }

    private void shortTerm(Page page, String unit) {
        OptionalDouble limit = limits.of(shift.agent(), Averaging.STEL, shift.unit());
        boolean coarse = shift.periods().stream().anyMatch(p -> p.minutes() > ShortTerm.QUARTER_HOUR);
        ShortTerm.highest(shift.periods(), ShortTerm.QUARTER_HOUR)
                .value()
                .ifPresent(v -> page.paragraph("Highest 15 min of the sampled time: " + (coarse ? "at least " : "")
                        + Page.number(v) + " " + unit + ratio(v, limit)
                        + (coarse
                                ? ". Periods longer than 15 min hide peaks, so this gives no short-term level."
                                : ".")));
        if (limit.isEmpty()) {
            page.paragraph("This code has no 15 min limit for it.");
            return;
        }
        for (Period period : shift.periods()) {
            if (period.minutes() > ShortTerm.QUARTER_HOUR && period.concentration() > limit.getAsDouble()) {
                Reckoning<Double> inferred = ShortTerm.fromSample(
                        period.concentration(), period.minutes(), ShortTerm.QUARTER_HOUR, limit.getAsDouble());
                page.paragraph("- " + inferred.sentence());
            }
        }
    }

    private static String ratio(double level, OptionalDouble limit) {
        return limit.isPresent()
                ? " = " + Page.number(level / limit.getAsDouble()) + " x the limit of "
                        + Page.number(limit.getAsDouble())
                : "";
    }
}
