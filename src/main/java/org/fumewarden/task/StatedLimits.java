package org.fumewarden.task;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.fumewarden.codes.Located;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.StatedLimit;

/** Reads the limits that an officer states. They count with the document they were read in, and are taken from nowhere else. */
final class StatedLimits {
    private static final Set<String> CELLS = Set.of("limit-twa", "limit-stel", "limit-ceiling");

    private StatedLimits() {}

    /** The limits of one entry, in the order of averaging times; what is wrong is complained of at its place. */
    static List<StatedLimit> of(
            String agent, Located item, Map<String, Located> cells, BiPredicate<Quantities.Level, Located> possible) {
        List<StatedLimit> limits = new ArrayList<>();
        Optional<String> from = ExposureReader.said(cells.get("limit-from"));
        for (Averaging averaging : Averaging.values()) {
            Located place = cells.get("limit-" + averaging.key());
            if (place != null && from.isEmpty()) {
                place.complain(
                        "stands without limit-from.", "name the document, its edition and the place, as limit-from.");
            } else if (place != null) {
                Quantities.level(place, place.text())
                        .filter(l -> possible.test(l, place) && aboveZero(l, place))
                        .ifPresent(l -> limits.add(
                                new StatedLimit(agent, averaging, l.value(), l.unit(), from.get(), place.path())));
            }
        }
        if (from.isPresent() && cells.keySet().stream().noneMatch(CELLS::contains)) {
            item.complain("names limit-from, but no limit.", "add limit-twa, limit-stel or limit-ceiling.");
        }
        return limits;
    }

    private static boolean aboveZero(Quantities.Level level, Located place) {
        if (level.value().signum() > 0) {
            return true;
        }
        place.complain("is no limit: \"" + Located.shown(place.text()) + "\".", "give a level above zero.");
        return false;
    }
}
