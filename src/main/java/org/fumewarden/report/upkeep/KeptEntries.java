package org.fumewarden.report.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.Duty;
import org.fumewarden.upkeep.Entry;
import org.fumewarden.upkeep.Store;

/** What every printed record draws from the store and cites in the same way. */
final class KeptEntries {
    private KeptEntries() {}

    /** The entries of an item that no later one took the place of, newest first. */
    static List<Entry> holding(Store store, String item, Predicate<Details> wanted) {
        List<Long> superseded = store.superseded(item);
        List<Entry> held = new ArrayList<>();
        for (Entry entry : store.entriesOf(item)) {
            if (!superseded.contains(entry.sequence())
                    && entry.effective().filter(wanted).isPresent()) {
                held.add(0, entry);
            }
        }
        return held;
    }

    /** Which duties order the record, and for how long it is kept. */
    static List<Sheet.Block> orderedBy(List<Duty> duties, Predicate<Duty> sure) {
        return duties.isEmpty()
                ? List.of()
                : List.of(
                        new Sheet.Heading("Ordered by"),
                        new Sheet.Points(duties.stream()
                                .map(d -> d.id() + ": " + DueSheet.clause(d) + "; keep: "
                                        + d.keep().text()
                                        + (sure.test(d) ? "" : "; only if it applies, which the register does not say"))
                                .toList()));
    }
}
