package org.fumewarden.task;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.Located;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.NoneStated;
import org.fumewarden.model.StatedLimit;

/** Reads the limits that an officer states. They count with the document they were read in, and are taken from nowhere else. */
final class StatedLimits {
    private static final Set<String> CELLS = Set.of("limit-twa", "limit-stel", "limit-ceiling");

    private static final String NONE = "limit-none";

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
        if (from.isPresent()
                && !cells.containsKey(NONE)
                && cells.keySet().stream().noneMatch(CELLS::contains)) {
            item.complain("names limit-from, but no limit.", "add limit-twa, limit-stel, limit-ceiling or limit-none.");
        }
        return limits;
    }

    /** That a document was searched on a day, up to that of the task, and names no limit. */
    static Optional<NoneStated> none(String agent, Map<String, Located> cells, LocalDate day) {
        Located place = cells.get(NONE);
        Optional<String> from = ExposureReader.said(cells.get("limit-from"));
        if (place == null) {
            return Optional.empty();
        }
        if (from.isEmpty()) {
            place.complain("stands without limit-from.", "name the document that was searched, as limit-from.");
            return Optional.empty();
        }
        Optional<LocalDate> on = place.day();
        if (on.isPresent() && on.get().isAfter(day)) {
            place.complain(
                    Fault.AFTER,
                    "is after the day of the task, " + day + ".",
                    "give the day on which it was looked up.");
        }
        return on.map(d -> new NoneStated(agent, d.toString(), from.get(), place.path()));
    }

    private static boolean aboveZero(Quantities.Level level, Located place) {
        if (level.value().signum() > 0) {
            return true;
        }
        place.complain("is no limit: \"" + Located.shown(place.text()) + "\".", "give a level above zero.");
        return false;
    }
}
