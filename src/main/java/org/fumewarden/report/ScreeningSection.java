package org.fumewarden.report;

import java.util.List;
import java.util.OptionalDouble;
import org.fumewarden.assessment.RoomEstimate;
import org.fumewarden.exposure.Screening;

/** An estimated level as a distribution, for screening only. */
final class ScreeningSection {
    private static final List<Double> SHARES = List.of(0.05, 0.5, 0.84, 0.95, 0.99);

    private ScreeningSection() {}

    static void write(Page page, String name, RoomEstimate.Result result, OptionalDouble limit) {
        page.head(name + ", estimated shift average");
        if (result.screening().isEmpty()) {
            page.paragraph("No estimate.");
            result.lacks().forEach(lack -> page.paragraph("- " + lack));
            return;
        }
        Screening screening = result.screening().get();
        page.paragraph(screening.sentence());
        for (double share : SHARES) {
            screening
                    .percentile(share)
                    .value()
                    .ifPresent(v -> page.paragraph("- " + Page.percent(share) + " of shifts below " + Page.number(v)
                            + " " + screening.unit() + ratio(v, limit)));
        }
        screening
                .mean()
                .value()
                .ifPresent(v -> page.paragraph("- mean " + Page.number(v) + " " + screening.unit() + ratio(v, limit)));
        if (limit.isPresent()) {
            page.paragraph("Share of shifts above the limit of " + Page.number(limit.getAsDouble()) + " "
                    + screening.unit() + ": "
                    + Page.percent(1 - screening.below(limit.getAsDouble())) + ".");
        }
        screening.assumptions().forEach(a -> page.paragraph("- " + a));
        page.paragraph(Screening.QUESTION);
    }

    private static String ratio(double level, OptionalDouble limit) {
        return limit.isPresent() ? " = " + Page.number(level / limit.getAsDouble()) + " x the limit" : "";
    }
}
