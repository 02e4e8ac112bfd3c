package org.fumewarden.endurance;

import java.util.List;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Share of its charge that a pack gives by temperature, straight lines between rows.
 *
 * @param rows by rising temperature
 */
public record ColdTable(List<Row> rows) {

    /** One temperature in degrees Celsius and the share there. */
    public record Row(double temperature, Span share) {}

    public ColdTable {
        rows = List.copyOf(rows);
        boolean rising = rows.size() > 1;
        for (int i = 1; i < rows.size(); i++) {
            rising &= rows.get(i - 1).temperature() < rows.get(i).temperature();
        }
        if (!rising) {
            throw new BadFigure("A cold table needs two rows or more by rising temperature.", "Sort its rows.");
        }
    }

    /** The share at a temperature, refused outside the table. */
    public Reckoning<Span> share(double temperature) {
        for (int i = 1; i < rows.size(); i++) {
            Row below = rows.get(i - 1);
            Row above = rows.get(i);
            if (temperature >= below.temperature() && temperature <= above.temperature()) {
                double part = (temperature - below.temperature()) / (above.temperature() - below.temperature());
                return Reckoning.of(new Span(
                        line(below.share().low(), above.share().low(), part),
                        line(below.share().likely(), above.share().likely(), part),
                        line(below.share().high(), above.share().high(), part)));
            }
        }
        return Reckoning.refuse(
                Soundness.OUTSIDE_TEMPERATURE,
                WrittenNumbers.plain(temperature) + " C is outside the table of the pack, "
                        + WrittenNumbers.plain(rows.get(0).temperature()) + " C to "
                        + WrittenNumbers.plain(rows.get(rows.size() - 1).temperature())
                        + " C.",
                "Keep the pack warm and see the manufacturer's figures.");
    }

    private static double line(double from, double to, double part) {
        return from + (to - from) * part;
    }
}
