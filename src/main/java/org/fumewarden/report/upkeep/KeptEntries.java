package org.fumewarden.report.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.model.Duty;
import org.fumewarden.report.html.DutyTerms;
import org.fumewarden.report.html.Speech;
import org.fumewarden.upkeep.Details;
import org.fumewarden.upkeep.LogEntry;
import org.fumewarden.upkeep.Store;

/** What every printed record draws from the store and cites in the same way. */
final class KeptEntries {
    private KeptEntries() {}

    /** The entries of an item that no later one took the place of, newest first. */
    static List<LogEntry> holding(Store store, String item, Predicate<Details> wanted) {
        List<Long> superseded = store.superseded(item);
        List<LogEntry> held = new ArrayList<>();
        for (LogEntry entry : store.entriesOf(item)) {
            if (!superseded.contains(entry.sequence())
                    && entry.effective().filter(wanted).isPresent()) {
                held.add(0, entry);
            }
        }
        return held;
    }

    /** Which duties order the record, and for how long it is kept. */
    static List<RegisterSheet.Block> orderedBy(List<Duty> duties, Predicate<Duty> sure, Speech speech) {
        return duties.isEmpty()
                ? List.of()
                : List.of(
                        new RegisterSheet.Heading(speech.say("What orders this record")), points(duties, sure, speech));
    }

    static RegisterSheet.Points points(List<Duty> duties, Predicate<Duty> sure, Speech speech) {
        return new RegisterSheet.Points(
                duties.stream().map(d -> point(d, sure.test(d), speech)).toList());
    }

    private static String point(Duty duty, boolean sure, Speech speech) {
        String keep = speech.say("Keep the record: {0}.", new DutyTerms(speech).keep(duty.keep()));
        String open = sure ? "" : " " + speech.say("The register does not say whether this applies.");
        return StringUtils.removeEnd(speech.told(duty.what()), ".") + " [" + DueSheet.clause(duty, speech) + "]. "
                + keep + open;
    }
}
