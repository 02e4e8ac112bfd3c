package org.fumewarden.task;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Numbers;
import org.fumewarden.endurance.EnduranceCurve;
import org.fumewarden.endurance.Refused;

/** Reads the run times that somebody measured on the unit: for each pack, hours by clogging stage. */
final class CurveReader {
    static final String NAME = "endurance";
    static final String PATH = "kit." + NAME;
    private static final Set<String> CELLS = Set.of("pack", "ends-at", "hours");
    private static final Set<String> ENDS = Set.of("reserve", "empty");

    private CurveReader() {}

    static List<EnduranceCurve> read(Located list) {
        List<EnduranceCurve> curves = new ArrayList<>();
        Set<String> packs = new HashSet<>();
        for (Located item : list.items()) {
            Map<String, Located> cells = item.entries(CELLS);
            if (!cells.keySet().containsAll(CELLS)) {
                item.complain(
                        "needs pack, ends-at and hours.",
                        "{pack: long, ends-at: reserve, hours: {0: 9, 1: 7.5, 2: 6}}.");
                continue;
            }
            String pack = Located.shown(cells.get("pack").text());
            if (!packs.add(pack)) {
                cells.get("pack").complain("names the pack \"" + pack + "\" twice.", "keep one of the two curves.");
            }
            Optional<String> ends = cells.get("ends-at").oneOf(ENDS);
            List<EnduranceCurve.Point> points = points(cells.get("hours"));
            if (ends.isPresent() && item.problems().isEmpty()) {
                curve(pack, points, ends.get().equals("reserve"), cells.get("hours"))
                        .ifPresent(curves::add);
            }
        }
        return List.copyOf(curves);
    }

    private static Optional<EnduranceCurve> curve(
            String pack, List<EnduranceCurve.Point> points, boolean toReserve, Located place) {
        var checked = EnduranceCurve.of(pack, points, toReserve);
        if (checked instanceof Refused<EnduranceCurve> refused) {
            int maybe = refused.sentence().indexOf(" Maybe ");
            place.complain(
                    "cannot be used. " + refused.sentence().substring(0, maybe),
                    refused.sentence().substring(maybe + " Maybe ".length()));
        }
        return checked.value();
    }

    private static List<EnduranceCurve.Point> points(Located hours) {
        List<EnduranceCurve.Point> points = new ArrayList<>();
        hours.entries().forEach((stage, place) -> {
            try {
                double at = Numbers.decimal(stage).doubleValue();
                place.decimal().ifPresent(value -> points.add(new EnduranceCurve.Point(at, value.doubleValue())));
            } catch (NumberFormatException e) {
                place.complain(
                        "must be a clogging stage but is \"" + Located.shown(stage) + "\".",
                        "write the number that the display shows, such as 2.");
            }
        });
        return points;
    }
}
