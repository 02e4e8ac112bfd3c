package org.fumewarden.endurance;

import java.util.List;
import java.util.stream.Collectors;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Soundness;

/**
 * The user's own curves, one for each pack.
 *
 * @param curves checked curves
 */
public record EnduranceTable(List<EnduranceCurve> curves) {
    public EnduranceTable {
        curves = List.copyOf(curves);
    }

    /** The curve of a pack; never one between two packs. */
    public Reckoning<EnduranceCurve> curve(String pack) {
        return curves.stream()
                .filter(curve -> curve.pack().equals(pack))
                .findFirst()
                .map(Reckoning::of)
                .orElseGet(() -> Reckoning.refuse(
                        Soundness.OUTSIDE_TABLE,
                        "There is no curve for the pack \"" + pack + "\".",
                        "Name a pack that has one: "
                                + curves.stream().map(EnduranceCurve::pack).collect(Collectors.joining(" or ")) + "."));
    }
}
