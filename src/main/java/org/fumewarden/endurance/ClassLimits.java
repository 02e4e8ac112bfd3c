package org.fumewarden.endurance;

import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Highest use concentration by filter type and class.
 *
 * @param rows the published lines
 */
public record ClassLimits(List<Row> rows) {

    /** One line; class 0 stands for a type without classes. */
    public record Row(String type, int filterClass, double ppm) {}

    public ClassLimits {
        rows = List.copyOf(rows);
    }

    /** The limit in ppm, empty where the maker states it. */
    public Optional<Double> limit(GasPart part) {
        return rows.stream()
                .filter(row -> row.type().equals(part.type().letters()) && row.filterClass() == part.grade())
                .map(Row::ppm)
                .findFirst();
    }

    /** The limit when the concentration is at or below it, else a refusal. */
    public Reckoning<Double> check(GasPart part, double ppm) {
        Optional<Reckoning<Double>> bad =
                new Inputs().positive("The concentration in ppm", ppm).refusal();
        if (bad.isPresent()) {
            return bad.get();
        }
        return limit(part)
                .map(limit -> ppm <= limit
                        ? Reckoning.of(limit)
                        : Reckoning.<Double>refuse(
                                Soundness.ABOVE_CLASS_LIMIT,
                                WrittenNumbers.plain(ppm) + " ppm is above the " + WrittenNumbers.plain(limit)
                                        + " ppm of " + part.written() + ".",
                                "Use a higher class, or supplied air."))
                .orElseGet(() -> Reckoning.refuse(
                        Soundness.OUTSIDE_TABLE,
                        "No figure for " + part.written() + " in the table: the manufacturer states it.",
                        "See the filter's" + " instructions."));
    }
}
