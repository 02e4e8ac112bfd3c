package org.fumewarden.task;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Numbers;
import org.fumewarden.endurance.EnduranceCurve;
import org.fumewarden.model.Refused;

/** Reads the run times that somebody measured on the unit: for each pack, hours by filter resistance. */
final class CurveReader {
    static final String NAME = "endurance";
    static final String PATH = "kit." + NAME;
    private static final Set<String> CELLS = Set.of("pack", "ends-at", "hours");
    private static final Pattern POINT = Pattern.compile("(\\S+)\\s*(Pa|%)");
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
                        "write {pack: P-07, ends-at: reserve, hours: {200 Pa: 9, 300 Pa: 7.5, 400 Pa: 6}}.");
                continue;
            }
            String pack = Located.shown(cells.get("pack").text());
            if (!packs.add(pack)) {
                cells.get("pack").complain("names the pack \"" + pack + "\" twice.", "keep one of the two curves.");
            }
            Optional<String> ends = cells.get("ends-at").oneOf(ENDS);
            Set<EnduranceCurve.Scale> scales = EnumSet.noneOf(EnduranceCurve.Scale.class);
            List<EnduranceCurve.Point> points = points(cells.get("hours"), scales);
            if (scales.size() > 1) {
                cells.get("hours")
                        .complain("mixes points in Pa, in % and without a unit.", "write all of them in one way.");
            }
            if (ends.isPresent() && item.problems().isEmpty()) {
                EnduranceCurve.Scale scale = scales.stream().findFirst().orElse(EnduranceCurve.Scale.OWN);
                curve(pack, points, scale, ends.get().equals("reserve"), cells.get("hours"))
                        .ifPresent(curves::add);
            }
        }
        return List.copyOf(curves);
    }

    private static Optional<EnduranceCurve> curve(
            String pack,
            List<EnduranceCurve.Point> points,
            EnduranceCurve.Scale scale,
            boolean toReserve,
            Located place) {
        var checked = EnduranceCurve.of(pack, points, scale, toReserve);
        if (checked instanceof Refused<EnduranceCurve> refused) {
            place.complain("cannot be used. " + refused.found(), refused.remedy());
        }
        return checked.value();
    }

    private static List<EnduranceCurve.Point> points(Located hours, Set<EnduranceCurve.Scale> scales) {
        List<EnduranceCurve.Point> points = new ArrayList<>();
        hours.entries().forEach((text, place) -> {
            Matcher point = POINT.matcher(text.strip());
            try {
                double at =
                        Numbers.decimal(point.matches() ? point.group(1) : text).doubleValue();
                scales.add(scale(point.matches() ? point.group(2) : ""));
                place.decimal().ifPresent(value -> points.add(new EnduranceCurve.Point(at, value.doubleValue())));
            } catch (NumberFormatException e) {
                place.complain(
                        Fault.AMOUNT,
                        "must be a filter resistance but is \"" + Located.shown(text) + "\".",
                        "write it in Pa or in % of the warning pressure, such as 300 Pa or 60 %, or number your own points.");
            }
        });
        return points;
    }

    private static EnduranceCurve.Scale scale(String unit) {
        return switch (unit) {
            case "Pa" -> EnduranceCurve.Scale.PASCAL;
            case "%" -> EnduranceCurve.Scale.SHARE;
            default -> EnduranceCurve.Scale.OWN;
        };
    }
}
