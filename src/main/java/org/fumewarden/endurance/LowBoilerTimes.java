package org.fumewarden.endurance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * Longest use of an AX filter by low-boiler group and concentration.
 *
 * @param rows the published lines
 */
public record LowBoilerTimes(List<Row> rows) {

    /** One line: up to this concentration, this long. */
    public record Row(int group, double ppm, double minutes) {}

    public LowBoilerTimes {
        rows = List.copyOf(rows);
    }

    /**
     * Minutes for a group and a concentration; between two lines the stricter one.
     *
     * @param minutesUsed earlier use of the same filter in the same shift
     */
    public Reckoning<TimeBound> bound(int group, GasUse use, double minutesUsed) {
        Optional<Reckoning<TimeBound>> refusal = use.refusal();
        if (refusal.isPresent()) {
            return refusal.get();
        }
        if (rows.stream().noneMatch(row -> row.group() == group)) {
            return Reckoning.refuse(
                    Soundness.NOT_HELD,
                    "An AX filter is for low-boiler groups 1 and 2 only; this is group " + group + ".",
                    "Ask the manufacturer for another filter type (group 3), or use supplied air.");
        }
        return rows.stream()
                .filter(row -> row.group() == group && row.ppm() >= use.ppm())
                .min(Comparator.comparingDouble(Row::ppm))
                .map(row -> new CodeCap(
                                row.minutes(),
                                "AX, group " + group + ", up to " + WrittenNumbers.plain(row.ppm())
                                        + " ppm, within one shift",
                                "group time")
                        .fixedUseTime(minutesUsed))
                .orElseGet(() -> Reckoning.refuse(
                        Soundness.ABOVE_CLASS_LIMIT,
                        WrittenNumbers.plain(use.ppm()) + " ppm is above every line of group " + group + ".",
                        "Use supplied air."));
    }
}
